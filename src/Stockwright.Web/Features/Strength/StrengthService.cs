using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Predicting;
using Stockwright.Strength;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Strength;

/// <summary>Reads a sum of the strength page and works it out; what is wrong is gathered by the reader, at its field.</summary>
/// <param name="reader">The form.</param>
/// <param name="kitchen">Pans and hobs to choose from, and the air they stand in.</param>
internal sealed class StrengthService(FieldReader reader, KitchenSetup kitchen)
{
    /// <summary>What a glace usually holds, and a stock of some body, by weight.</summary>
    public const double UsualGlacePercent = 25;
    public const double UsualStockPercent = 2;

    private const double LeastCubicMetres = 10e-6;
    private const double MostCubicMetres = 1;

    /// <summary>Kinds of stock a refractometer reads.</summary>
    public static readonly (string Word, ReadingKind Value, string Text)[] Kinds =
    [
        ("poultry", ReadingKind.Poultry, "chicken or other birds, with vegetables"), ("meat", ReadingKind.MeatBones, "beef, veal or pork bones"), ("fish", ReadingKind.Fish, "fish"),
        ("vegetable", ReadingKind.Vegetable, "vegetables or mushrooms only"), ("gelatin", ReadingKind.PureGelatin, "powder gelatin in water"),
    ];

    private UnitSystem Units => reader.Units;

    /// <summary>Works out the sum the form asks for; null when none is asked or something has to be put right.</summary>
    public StrengthReply? Answer() => reader.Form[StrengthFields.Way].Trim() switch
    {
        StrengthFields.Reduce => Reduce(),
        StrengthFields.Dilute => Dilute(),
        StrengthFields.Glace => Glace(),
        StrengthFields.Blend => Blend(),
        StrengthFields.Powder => Powder(),
        StrengthFields.Reading => Reading(),
        _ => null,
    };

    private StrengthReply? Reduce()
    {
        StockAmount? stock = Stock(StrengthFields.ReduceVolume, StrengthFields.ReduceGelatin, StrengthFields.ReduceSalt);
        double? to = Amount(StrengthFields.ReduceTo, "Boil down to", missing: null);
        double? target = Percent(StrengthFields.ReduceTarget, "Strength wanted", missing: null);
        if (reader.Form.Has(StrengthFields.ReduceTo) == reader.Form.Has(StrengthFields.ReduceTarget))
        {
            reader.Report(StrengthFields.ReduceTo, reader.Form.Has(StrengthFields.ReduceTo)
                ? "Give either the volume or the strength to boil down to, not both."
                : "Say what to boil it down to: a volume, or a strength below.");
            return null;
        }

        if (stock is null || (to is null && target is null))
        {
            return null;
        }

        StrengthAnswer<ReducedStock> answer = to is { } volume
            ? Reduction.ToVolume(stock, Volume.FromCubicMeters(volume))
            : Reduction.ToStrength(stock, Ratio.FromDecimalFractions(target!.Value));
        if (Told(answer, field => field switch
            {
                "to" => StrengthFields.ReduceTo,
                "target" => StrengthFields.ReduceTarget,
                _ => stock.Gelatin > Ratio.Zero ? StrengthFields.ReduceVolume : StrengthFields.ReduceGelatin,
            }) is not { } reduced)
        {
            return null;
        }

        List<ReplyRow> rows = [new("Left", KitchenFormat.Text(reduced.After.Volume, Units), $"of {KitchenFormat.Text(stock.Volume, Units)}")];
        AddStrength(rows, reduced.After, $"{BodyText.Number(reduced.Factor)} times what it was");
        bool timed = reader.Form.Has(StrengthFields.ReducePan);
        if (timed)
        {
            if (Time(reduced.Lost, stock.Volume) is not { } time)
            {
                return null;
            }

            rows.Insert(0, new ReplyRow("Takes", KitchenFormat.Text(time.Time.Central), $"likely {KitchenFormat.Band(time.Time)}, {(time.IsAtBoil ? "at the boil" : $"at {KitchenFormat.Text(time.Temperature, Units)}")}; {Rate(time.Rate)} goes off"));
        }

        return new StrengthReply(
            $"Boil off {KitchenFormat.Text(Volume.FromLiters(reduced.Lost.Kilograms), Units)}",
            rows,
            timed
                ? "The time counts from when it is hot. Weigh or measure as it nears; the last of it goes fast, and catches."
                : "Water goes, gelatin and salt stay. Name a pan to hear how long it takes.");
    }

    private ReductionTimeEstimate? Time(Mass lost, Volume volume)
    {
        Pot? pan = Of(StrengthFields.ReducePan, kitchen.Pots, pot => pot.Id, "pan");
        Hob? hob = reader.Form.Has(StrengthFields.ReduceHob) ? Of(StrengthFields.ReduceHob, kitchen.Hobs, each => each.Id, "hob") : kitchen.Hobs.Count > 0 ? kitchen.Hobs[0] : null;
        double? setting = reader.Number(StrengthFields.ReduceSetting, "Hob turned to", Measure.Percent, 0.05, 1);
        double? simmer = reader.Number(StrengthFields.ReduceSimmer, "Reduce at", Measure.Temperature, 333.15, 383.15);
        if (hob is null && !reader.Form.Has(StrengthFields.ReduceHob))
        {
            reader.Report(StrengthFields.ReduceHob, "This kitchen has no hob yet; add one to hear how long it takes.");
        }

        return reader.Problems.Count > 0 || pan is null || hob is null
            ? null
            : Told(
                ReductionTime.Estimate(lost, volume, pan, hob, kitchen.Site, Ratio.FromDecimalFractions(Math.Clamp(setting ?? 1, 0.05, 1)), simmer is { } kelvins ? Temperature.FromKelvins(kelvins) : null),
                field => field switch
                {
                    "pan" => StrengthFields.ReducePan,
                    "setting" => StrengthFields.ReduceSetting,
                    "simmer" => StrengthFields.ReduceSimmer,
                    _ => StrengthFields.ReduceTo,
                });
    }

    private StrengthReply? Dilute()
    {
        StockAmount? stock = Stock(StrengthFields.DiluteVolume, StrengthFields.DiluteGelatin, StrengthFields.DiluteSalt, "How strong is it?");
        double? target = Percent(StrengthFields.DiluteTarget, "Strength wanted", "How strong should it be?");
        return stock is null || target is null
            ? null
            : LetDown(stock, target.Value, field => field is "target" ? StrengthFields.DiluteTarget : StrengthFields.DiluteGelatin);
    }

    private StrengthReply? Glace()
    {
        double? volume = reader.Number(StrengthFields.GlaceVolume, "Glace", Measure.Portion, 1e-6, 0.1, "How much glace do you have?");
        double? gelatin = Percent(StrengthFields.GlaceGelatin, "Gelatin in the glace", missing: null);
        double? target = Percent(StrengthFields.GlaceTarget, "Strength wanted", missing: null);
        return reader.Problems.Count > 0 || volume is null
            ? null
            : LetDown(
                new StockAmount(Volume.FromCubicMeters(volume.Value), Ratio.FromDecimalFractions(gelatin ?? (UsualGlacePercent / 100))),
                target ?? (UsualStockPercent / 100),
                field => field is "target" ? StrengthFields.GlaceTarget : StrengthFields.GlaceGelatin);
    }

    private StrengthReply? LetDown(StockAmount stock, double target, Func<string, string> place)
    {
        if (Told(Dilution.ToStrength(stock, Ratio.FromDecimalFractions(target)), place) is not { } diluted)
        {
            return null;
        }

        List<ReplyRow> rows = [new("Makes", KitchenFormat.Text(diluted.After.Volume, Units), $"{BodyText.Number(diluted.PartsWater)} parts of water to one, by weight")];
        AddStrength(rows, diluted.After, "");
        return new StrengthReply($"Add {KitchenFormat.Text(diluted.Water, Units)} of hot water", rows, "Measured cold. Stir it in hot, or the gelatin stays in lumps.");
    }

    private StrengthReply? Blend()
    {
        double? one = Percent(StrengthFields.BlendOne, "Gelatin in one", "How strong is the one?");
        double? other = Percent(StrengthFields.BlendOther, "Gelatin in the other", "How strong is the other?");
        double? target = Percent(StrengthFields.BlendTarget, "Strength wanted", "How strong should the blend be?");
        double? total = Amount(StrengthFields.BlendTotal, "Blend wanted", "How much do you want?");
        if (one is null || other is null || target is null || total is null)
        {
            return null;
        }

        StrengthAnswer<BlendedStock> answer = Blending.ToStrength(
            new BlendPart(Ratio.FromDecimalFractions(one.Value)), new BlendPart(Ratio.FromDecimalFractions(other.Value)), Ratio.FromDecimalFractions(target.Value), Volume.FromCubicMeters(total.Value));
        if (Told(answer, field => field is "total" ? StrengthFields.BlendTotal : field is "stock" ? StrengthFields.BlendOne : StrengthFields.BlendTarget) is not { } blend)
        {
            return null;
        }

        return new StrengthReply(
            $"{KitchenFormat.Text(blend.Strong, Units)} of the stronger, {KitchenFormat.Text(blend.Weak, Units)} of the weaker",
            [
                new("Parts", $"{BodyText.Number(blend.PartsStrong.Percent, "0.##")} to {BodyText.Number(blend.PartsWeak.Percent, "0.##")}", "stronger to weaker, by weight"),
                new("Share of the stronger", KitchenFormat.Text(blend.ShareStrong)),
            ],
            "Both melted, and their gelatin taken to be equally good.");
    }

    private StrengthReply? Powder()
    {
        double? volume = Amount(StrengthFields.PowderVolume, "Stock", "How much stock is there?");
        double? now = Percent(StrengthFields.PowderNow, "Strength now", missing: null);
        BodyClass? wanted = (new WordsRow<BodyClass>(StrengthFields.PowderTarget, "Body", BodyText.Bodies) { Blank = BodyClass.SoftJelly }).ReadOrUsual(reader);
        double? bloom = reader.Number(StrengthFields.PowderBloom, "Bloom", Measure.Number, GelatinTopUp.BloomRange.Least, GelatinTopUp.BloomRange.Most);
        if (reader.Problems.Count > 0 || volume is null || wanted is not { } body)
        {
            return null;
        }

        StrengthAnswer<TopUpAdvice> answer = GelatinTopUp.ToClass(
            Volume.FromCubicMeters(volume.Value),
            Ratio.FromDecimalFractions(now ?? 0),
            body,
            Mass.FromGrams(bloom ?? GelStrength.ReferenceBloomGrams));
        return Told(answer, field => field is "bloom" ? StrengthFields.PowderBloom : field is "stock" ? StrengthFields.PowderVolume : StrengthFields.PowderTarget) is not { } advice
            ? null
            : new StrengthReply(
                $"Stir in {KitchenFormat.Text(advice.Powder, Units)} of powder gelatin",
                [new(BodyText.Head(body), "from " + KitchenFormat.Text(advice.Needed), BodyClasses.Look(body))],
                "Soak it in cold water, then melt it in hot stock; it must not boil. Where each word for body begins is our estimate.");
    }

    private StrengthReply? Reading()
    {
        double? brix = reader.Number(StrengthFields.ReadingBrix, "Reading", Measure.Number, 0, 95, "What does it read?");
        string word = reader.Form[StrengthFields.ReadingKindField].Trim();
        int index = word.Length == 0 ? 0 : Array.FindIndex(Kinds, kind => string.Equals(kind.Word, word, StringComparison.OrdinalIgnoreCase));
        if (index < 0)
        {
            reader.Report(StrengthFields.ReadingKindField, $"Stock: {KitchenNumber.Quote(word)} is not one of {string.Join(", ", Kinds.Select(kind => kind.Word))}.");
        }

        double? salt = reader.Number(StrengthFields.ReadingSalt, "Salt", Measure.Percent, 0, 0.2);
        double? water = reader.Number(StrengthFields.ReadingWater, "Water", Measure.Number, 0, 20);
        double? scale = reader.Number(StrengthFields.ReadingScale, "Top of the scale", Measure.Number, 1, 95);
        if (reader.Problems.Count > 0 || brix is null)
        {
            return null;
        }

        StrengthAnswer<RefractometerEstimate> answer = Refractometer.Estimate(
            Math.Max(0, brix.Value), Kinds[index].Value, Ratio.FromDecimalFractions(Math.Clamp(salt ?? 0, 0, 0.2)), Math.Clamp(water ?? 0, 0, 20), scale ?? Refractometer.UsualScale);
        if (Told(answer, field => field is "salt" ? StrengthFields.ReadingSalt : StrengthFields.ReadingBrix) is not { } estimate)
        {
            return null;
        }

        List<ReplyRow> rows =
        [
            new("Gelatin", Share(estimate.Gelatin), EvidenceText.Of(estimate.Gelatin.Provenance) + ": " + estimate.Gelatin.Source),
            new("All that is dissolved", Share(estimate.Solids), "without the salt"),
        ];
        if (estimate.Gelatin.Value > Ratio.Zero)
        {
            BodyClass low = BodyClasses.Of(estimate.Gelatin.Low.Percent);
            BodyClass high = BodyClasses.Of(estimate.Gelatin.High.Percent);
            rows.Add(new("Body at best", low == high ? BodyClasses.Name(high) : $"{BodyClasses.Name(low)} to {BodyClasses.Name(high)}", "long heat wears the gelatin down, so it may be softer"));
        }

        return new StrengthReply(
            estimate.Gelatin.Value > Ratio.Zero ? $"About {KitchenFormat.Text(estimate.Gelatin.Value)} gelatin" : "No gelatin: plants have none",
            rows,
            estimate.DiluteFirst
                ? "That is so strong that it reads badly: stir one part of hot stock into two of hot water and read that."
                : "Read at 20 °C (68 °F), defatted, before salt.");
    }

    private StockAmount? Stock(string volumeField, string gelatinField, string saltField, string? missingGelatin = null)
    {
        double? volume = Amount(volumeField, "Stock", "How much stock is there?");
        double? gelatin = Percent(gelatinField, "Gelatin in it", missingGelatin);
        double? salt = reader.Number(saltField, "Salt in it", Measure.Percent, 0, 0.2);
        return reader.Problems.Count > 0 || volume is null
            ? null
            : new StockAmount(Volume.FromCubicMeters(volume.Value), Ratio.FromDecimalFractions(gelatin ?? 0), Ratio.FromDecimalFractions(Math.Clamp(salt ?? 0, 0, 0.2)));
    }

    private double? Amount(string field, string what, string? missing) => reader.Number(field, what, Measure.Stock, LeastCubicMetres, MostCubicMetres, missing);

    private double? Percent(string field, string what, string? missing) => reader.Number(field, what, Measure.Percent, 0, 0.6, missing);

    private T? Of<T>(string field, IReadOnlyList<T> things, Func<T, string> id, string what)
        where T : class
    {
        string typed = reader.Form[field].Trim();
        T? found = things.FirstOrDefault(thing => string.Equals(id(thing), typed, StringComparison.Ordinal));
        if (found is null)
        {
            reader.Report(field, $"This kitchen has no {what} called {KitchenNumber.Quote(typed)}. Choose one from the list.");
        }

        return found;
    }

    private T? Told<T>(StrengthAnswer<T> answer, Func<string, string> place)
        where T : class
    {
        if (answer.Problem is { } problem)
        {
            reader.Report(place(problem.Field), problem.Message);
        }

        return answer.Value;
    }

    private static void AddStrength(List<ReplyRow> rows, StockAmount stock, string note)
    {
        if (stock.Gelatin > Ratio.Zero)
        {
            rows.Add(new ReplyRow("Gelatin then", KitchenFormat.Text(stock.Gelatin), note));
            rows.Add(new ReplyRow("Body at best", BodyClasses.Name(BodyClasses.Of(stock.Gelatin.Percent)), BodyClasses.Look(BodyClasses.Of(stock.Gelatin.Percent))));
        }

        if (stock.Salt > Ratio.Zero)
        {
            rows.Add(new ReplyRow("Salt then", KitchenFormat.Text(stock.Salt), stock.Salt.Percent > 1.5 ? "saltier than most sauces" : ""));
        }
    }

    private static string Share(Stated<Ratio> stated) => stated.High > stated.Low
        ? $"{KitchenFormat.Text(stated.Value)}, likely {KitchenFormat.Band(stated.Band)}"
        : KitchenFormat.Text(stated.Value);

    private string Rate(MassFlow flow) => KitchenFormat.Text(VolumeFlow.FromLitersPerHour(flow.KilogramsPerSecond * 3600), Units);
}
