using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Strength;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Strength;

/// <summary>What the forms of the strength page know.</summary>
/// <param name="Units">Measures.</param>
/// <param name="Kitchen">Pans and hobs.</param>
public sealed record StrengthView(UnitSystem Units, KitchenSetup Kitchen) : IFieldView
{
    string? IFieldView.Usual(FieldBinding field) => null;
}

/// <summary>A sum of the strength page: a form of its own, so that each answer is a short link.</summary>
/// <param name="Word">In the link.</param>
/// <param name="Title">Over the form.</param>
/// <param name="Now">What it answers.</param>
/// <param name="Fields">Its fields, in order.</param>
public sealed record StrengthWay(string Word, string Title, string Now, IReadOnlyList<ShownField<StrengthView>> Fields);

/// <summary>The strength page's fields, each told once, sum by sum.</summary>
internal static class StrengthFields
{
    public const string Way = "do";
    public const string Reduce = "reduce";
    public const string Dilute = "dilute";
    public const string Glace = "glace";
    public const string Blend = "blend";
    public const string Powder = "powder";
    public const string Reading = "reading";

    public static readonly NumberRow<Volume> ReduceVolume = Amount("reduce-volume", "Stock");
    public static readonly NumberRow<Volume> ReduceTo = Amount("reduce-to", "Boil down to");
    public static readonly NumberRow<Ratio> ReduceTarget = Wanted("reduce-target") with { Label = "or to a strength of", Unit = "% gelatin" };
    public static readonly NumberRow<Ratio> ReduceGelatin = Gelatin("reduce-gelatin", "Gelatin in it now") with { Hint = "Leave blank if you do not know; then only the volume counts." };
    public static readonly NumberRow<Ratio> ReduceSalt = Salt("reduce-salt") with { Hint = "10 g in a kilogram is 1 %." };
    public static readonly ChosenRow ReducePan = new("reduce-pan", "Pan, for the time") { Hint = "Without a lid." };
    public static readonly ChosenRow ReduceHob = new("reduce-hob", "Hob");

    public static readonly NumberRow<Ratio> ReduceSetting = NumberRow.Percent("reduce-setting", "Hob turned to", ReductionTime.SettingRange) with { Unit = "% of full", InputMode = "numeric", Blank = Ratio.FromPercent(100) };

    public static readonly NumberRow<Temperature> ReduceSimmer = NumberRow.Temperature("reduce-simmer", "Reduce at", ReductionTime.TemperatureRange) with { Placeholder = "the boil" };

    public static readonly NumberRow<Volume> DiluteVolume = Amount("dilute-volume", "Stock");
    public static readonly NumberRow<Ratio> DiluteGelatin = Gelatin("dilute-gelatin", "Gelatin in it now");
    public static readonly NumberRow<Ratio> DiluteTarget = Wanted("dilute-target");
    public static readonly NumberRow<Ratio> DiluteSalt = Salt("dilute-salt");

    public static readonly NumberRow<Volume> GlaceVolume = NumberRow.Volume("glace-volume", "Glace", Measure.Portion, StockAmount.GlaceRange);

    // What a glace usually holds, and a stock of some body, by weight.
    public static readonly NumberRow<Ratio> GlaceGelatin = Gelatin("glace-gelatin", "Gelatin in it") with { Told = "Gelatin in the glace", Blank = Ratio.FromPercent(25), Hint = "25 for a glace, 12 for a demi-glace." };
    public static readonly NumberRow<Ratio> GlaceTarget = Wanted("glace-target") with { Blank = Ratio.FromPercent(2) };

    public static readonly NumberRow<Ratio> BlendOne = Gelatin("blend-one", "Gelatin in one");
    public static readonly NumberRow<Ratio> BlendOther = Gelatin("blend-other", "Gelatin in the other");
    public static readonly NumberRow<Ratio> BlendTarget = Wanted("blend-target");
    public static readonly NumberRow<Volume> BlendTotal = Amount("blend-total", "Blend wanted");

    public static readonly NumberRow<Volume> PowderVolume = Amount("powder-volume", "Stock");
    public static readonly NumberRow<Ratio> PowderNow = NumberRow.Percent("powder-now", "Strength now", StockAmount.GelatinRange) with { Blank = Ratio.Zero, Hint = "From the plan's body, or from a reading." };
    public static readonly WordsRow<BodyClass> PowderTarget = new("powder-target", "It should be", BodyText.Bodies) { Told = "Body", IsList = true, Blank = BodyClass.SoftJelly };

    public static readonly NumberRow<double> PowderBloom = NumberRow.Plain("powder-bloom", "Bloom on the packet", Measure.Number, GelatinTopUp.BloomRange) with
    {
        Told = "Bloom",
        Unit = "g",
        InputMode = "numeric",
        Blank = GelStrength.ReferenceBloomGrams,
        Hint = "50 to 300; the higher, the less you need.",
    };

    public static readonly NumberRow<double> ReadingBrix = NumberRow.Plain("reading-brix", "It reads", Measure.Number, Refractometer.BrixRange) with { Told = "Reading", Unit = "°Bx", Hint = "At 20 °C (68 °F), defatted, before salt." };

    /// <summary>Kinds of stock a refractometer reads.</summary>
    public static readonly WordsRow<ReadingKind> ReadingKindField = new("reading-kind", "Stock",
    [
        new("poultry", ReadingKind.Poultry, "chicken or other birds, with vegetables"), new("meat", ReadingKind.MeatBones, "beef, veal or pork bones"), new("fish", ReadingKind.Fish, "fish"),
        new("vegetable", ReadingKind.Vegetable, "vegetables or mushrooms only"), new("gelatin", ReadingKind.PureGelatin, "powder gelatin in water"),
    ])
    {
        IsList = true,
    };

    public static readonly NumberRow<Ratio> ReadingSalt = Salt("reading-salt") with { Label = "Salt in it" };
    public static readonly NumberRow<double> ReadingWater = NumberRow.Plain("reading-water", "Water stirred in to read it", Measure.Number, Refractometer.WaterRange) with { Told = "Water stirred in", Unit = "parts to one", Blank = 0 };
    public static readonly NumberRow<double> ReadingScale = NumberRow.Plain("reading-scale", "The scale ends at", Measure.Number, Refractometer.ScaleRange) with { Unit = "°Bx", InputMode = "numeric", Blank = Refractometer.UsualScale };

    /// <summary>Every sum, in the order of the page.</summary>
    public static readonly IReadOnlyList<StrengthWay> Ways =
    [
        new(Reduce, "Reduce", "how far, how salty, how long",
        [
            .. Shown(ReduceVolume, ReduceTo, ReduceTarget, ReduceGelatin, ReduceSalt),
            new(ReducePan) { Options = (view, _) => [new("", "no time wanted"), .. view.Kitchen.Pots.Select(pot => new ChoiceOption(pot.Id, $"{pot.Name} ({KitchenFormat.Text(pot.BrimDiameter, view.Units)} across)"))] },
            new(ReduceHob) { Options = (view, _) => [new("", view.Kitchen.Hobs.Count > 0 ? view.Kitchen.Hobs[0].Name : "none yet"), .. view.Kitchen.Hobs.Skip(1).Select(hob => new ChoiceOption(hob.Id, $"{hob.Name} ({KitchenFormat.Text(hob.RatedPower, view.Units)})"))] },
            .. Shown(ReduceSetting, ReduceSimmer),
        ]),
        new(Dilute, "Dilute", "let a strong stock down", Shown(DiluteVolume, DiluteGelatin, DiluteTarget, DiluteSalt)),
        new(Glace, "Glace back to stock", "how much water", Shown(GlaceVolume, GlaceGelatin, GlaceTarget)),
        new(Blend, "Blend two stocks", "how much of each", Shown(BlendOne, BlendOther, BlendTarget, BlendTotal)),
        new(Powder, "Make it set with powder gelatin", "how many grams",
        [
            .. Shown(PowderVolume, PowderNow),
            new(PowderTarget) { Options = (_, _) => [.. BodyText.Bodies.Where(word => word.Value > BodyClass.Syrupy).Select(word => new ChoiceOption(word.Word, word.Label))] },
            .. Shown(PowderBloom),
        ]),
        new(Reading, "Refractometer reading", "how much of it is gelatin", Shown(ReadingBrix, ReadingKindField, ReadingSalt, ReadingWater, ReadingScale)),
    ];

    private static readonly Dictionary<string, FieldRow> ByName = Ways.SelectMany(way => way.Fields).Select(shown => shown.Row).ToDictionary(row => row.Name, StringComparer.Ordinal);

    /// <summary>The same form in other measures; what cannot be read stays as typed.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to) =>
        FormUnits.Turn(form, field => ByName.GetValueOrDefault(field)?.Turned, standing, to);

    private static ShownField<StrengthView>[] Shown(params FieldRow[] rows) => [.. rows.Select(row => new ShownField<StrengthView>(row))];

    private static NumberRow<Volume> Amount(string name, string label) => NumberRow.Volume(name, label, Measure.Stock, StockAmount.VolumeRange);

    private static NumberRow<Ratio> Gelatin(string name, string label) => NumberRow.Percent(name, label, StockAmount.GelatinRange) with { Told = label.StartsWith("Gelatin in it", StringComparison.Ordinal) ? "Gelatin in it" : label };

    private static NumberRow<Ratio> Wanted(string name) => NumberRow.Percent(name, "Strength wanted", StockAmount.GelatinRange) with { Told = "Strength wanted" };

    private static NumberRow<Ratio> Salt(string name) => NumberRow.Percent(name, "Salt in it now", StockAmount.SaltRange) with { Told = "Salt in it", Blank = Ratio.Zero };
}
