using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Keeping;

/// <summary>Names of the fields of the keeping page, as they stand in its links.</summary>
internal static class KeepingFields
{
    public const string Made = "made";
    public const string Frozen = "frozen";
    public const string Thawed = "thawed";
    public const string Container = "container";
    public const string Portion = "portion";
    public const string Across = "across";
    public const string Thick = "thick";
    public const string From = "from";
    public const string Freezer = "freezer";
    public const string Fridge = "fridge";
    public const string Altitude = "altitude";

    /// <summary>Every field of the page.</summary>
    public static IEnumerable<string> All => [Made, Frozen, Thawed, Container, Portion, Across, Thick, From, Freezer, Fridge, Altitude];

    /// <summary>What a field is typed in, where that differs between the systems; else null.</summary>
    public static Measure? MeasureOf(string field) => field switch
    {
        Portion => Measure.Portion,
        Across or Thick => Measure.PotLength,
        From or Freezer or Fridge => Measure.Temperature,
        Altitude => Measure.Height,
        _ => null,
    };

    /// <summary>The same form in other measures; what cannot be read stays as typed.</summary>
    public static TypedForm InUnits(TypedForm form, UnitSystem standing, UnitSystem to) => FormUnits.Turn(form, MeasureOf, standing, to);
}
