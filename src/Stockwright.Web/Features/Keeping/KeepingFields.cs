using System.Globalization;
using Stockwright.Keeping;
using Stockwright.Kitchen;
using Stockwright.Web.Features.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Keeping;

/// <summary>What the form of the keeping page knows.</summary>
/// <param name="Units">Measures.</param>
/// <param name="Kitchen">Where it stands.</param>
/// <param name="Today">Today by the kitchen's clock.</param>
public sealed record KeepingView(UnitSystem Units, KitchenSetup Kitchen, DateOnly Today) : IFieldView
{
    string? IFieldView.Usual(FieldBinding field) => null;
}

/// <summary>What a portion is frozen in.</summary>
internal enum ContainerKind
{
    Tub,
    Bag,
}

/// <summary>The keeping page's fields, each told once.</summary>
internal static class KeepingFields
{
    private const double Neat = 5e-3;

    private static readonly Temperature UsualFridge = Temperature.FromDegreesCelsius(4);

    public static readonly DateRow Made = new("made", "Made on");
    public static readonly DateRow Frozen = new("frozen", "Into the freezer");
    public static readonly DateRow Thawed = new("thawed", "Out of the freezer");

    public static readonly WordsRow<ContainerKind> Container = new("container", "Frozen in", [new("tub", ContainerKind.Tub, "a tub or jar"), new("bag", ContainerKind.Bag, "a bag lying flat")]) { Told = "Container", IsList = true };

    public static readonly NumberRow<Volume> Portion = NumberRow.Volume("portion", "A portion", Measure.Portion, FrozenPortion.VolumeRange) with { Told = "Portion", Blank = Volume.FromMilliliters(500), BlankTolerance = Neat };

    public static readonly NumberRow<Length> Across = NumberRow.Length("across", "Tub or jar, across", FrozenPortion.WidthRange) with { Told = "Width", Placeholder = "as wide as high" };

    public static readonly NumberRow<Length> Thick = NumberRow.Length("thick", "Bag, lying flat, thick", FrozenPortion.ThicknessRange) with { Told = "Thickness", Blank = Length.FromCentimeters(3), BlankTolerance = Neat };

    public static readonly NumberRow<Temperature> From = NumberRow.Temperature("from", "It goes into the freezer at", FreezingTime.StartRange) with { Told = "Starting temperature", Blank = UsualFridge, BlankTolerance = Neat };

    public static readonly NumberRow<Temperature> Freezer = NumberRow.Temperature("freezer", "Freezer", FreezingTime.FreezerRange) with { Blank = Temperature.FromDegreesCelsius(-18), BlankTolerance = Neat, InputMode = "text" };

    public static readonly NumberRow<Temperature> Fridge = NumberRow.Temperature("fridge", "Fridge", FreezingTime.FridgeRange) with { Blank = UsualFridge, BlankTolerance = Neat };

    public static readonly NumberRow<Length> Altitude = SiteFields.Altitude with { Label = "Altitude, for canning" };

    /// <summary>What is kept.</summary>
    public static readonly IReadOnlyList<ShownField<KeepingView>> Kept =
    [
        new(Made) { Hint = view => $"Blank: today, {view.Today.ToString("ddd d MMM", CultureInfo.InvariantCulture)}." },
        new(Frozen), new(Thawed), new(Container), new(Portion), new(Across), new(Thick),
    ];

    /// <summary>Where it is kept, when that is not the usual.</summary>
    public static readonly IReadOnlyList<ShownField<KeepingView>> Places =
        [new(From), new(Freezer), new(Fridge), new(Altitude) { Usual = view => KitchenNumber.Write(Math.Round(Measure.Height.In(view.Units).FromSi(view.Kitchen.Site.Altitude.Meters))) }];

    /// <summary>Every field of the page.</summary>
    public static readonly IReadOnlyList<FieldRow> All = [.. Kept.Concat(Places).Select(shown => shown.Row)];

    /// <summary>The same form in other measures; what cannot be read stays as typed.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to) =>
        FormUnits.Turn(form, field => All.FirstOrDefault(row => string.Equals(row.Name, field, StringComparison.Ordinal))?.Turned, standing, to);
}
