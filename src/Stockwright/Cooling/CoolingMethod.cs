using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>Where the stock stands while it cools.</summary>
public abstract record CoolingPlace
{
    private CoolingPlace()
    {
    }

    /// <summary>The bench, in still room air.</summary>
    public sealed record Bench : CoolingPlace;

    /// <summary>A sink of tap water around the pot, as high as the stock.</summary>
    /// <param name="Running">True when the tap keeps running, so that the water stays at tap temperature.</param>
    /// <param name="Water">Water in the sink when it does not run, above zero.</param>
    public sealed record TapSink(bool Running, Mass Water) : CoolingPlace;

    /// <summary>A bath of ice and water around the pot, as high as the stock.</summary>
    /// <param name="Ice">Ice put in, zero or more.</param>
    /// <param name="Water">Tap water put in, above zero.</param>
    public sealed record IceBath(Mass Ice, Mass Water) : CoolingPlace;

    /// <summary>Cold air.</summary>
    /// <param name="Store">Fridge, cold room or blast chiller.</param>
    public sealed record ColdAir(ColdStore Store) : CoolingPlace;
}

/// <summary>A closed plastic wand filled with water and frozen, stood in the stock.</summary>
/// <param name="Water">Water it holds, above zero.</param>
/// <param name="Start">Temperature it comes out of the freezer with, -40 to 0 °C.</param>
public sealed record FrozenWand(Mass Water, Temperature Start)
{
    /// <summary>Least and most water in a wand.</summary>
    public static readonly (Mass Least, Mass Most) WaterRange = (Mass.FromKilograms(0.1), Mass.FromKilograms(20));

    /// <summary>Coldest and warmest wand out of a freezer.</summary>
    public static readonly (Temperature Least, Temperature Most) StartRange = (Temperature.FromDegreesCelsius(-40), Temperature.FromDegreesCelsius(0));

    /// <summary>A 2 L wand from a freezer at -18 °C, 1.83 kg of water.</summary>
    public static FrozenWand TwoLitres { get; } = new(Mass.FromKilograms(1.83), Temperature.FromDegreesCelsius(-18));
}

/// <summary>Pouring into other vessels, shared out evenly.</summary>
/// <param name="Vessel">Each of them.</param>
/// <param name="Count">How many, one or more.</param>
public sealed record PourInto(CoolingVessel Vessel, int Count)
{
    /// <summary>Most vessels stock is shared out to.</summary>
    public const int MostVessels = 1000;

    /// <summary>Fewest and most vessels a cook says.</summary>
    public static readonly (int Least, int Most) CountRange = (1, 200);

    /// <summary>How deep stock may be asked to stand.</summary>
    public static readonly (Length Least, Length Most) DepthRange = (Length.FromCentimeters(0.5), CoolingVessel.PanDepthRange.Most);
}

/// <summary>
/// One step of cooling. It begins with what is done at once (pouring, adding ice or water, putting in a wand), then the
/// stock stands where it stands until the step ends: after a time, at a temperature, whichever comes first, or not at all.
/// </summary>
public sealed record CoolingStep
{
    /// <summary>Least and most ice or water at one time.</summary>
    public static readonly (Mass Least, Mass Most) AddedRange = (Mass.Zero, Mass.FromKilograms(2000));

    /// <summary>Fewest and most wands in a vessel.</summary>
    public static readonly (int Least, int Most) WandsRange = (0, 10);

    /// <summary>Shortest and longest step.</summary>
    public static readonly (TimeSpan Least, TimeSpan Most) TimeRange = (TimeSpan.Zero, TimeSpan.FromHours(48));

    /// <summary>Coldest and hottest end of a step.</summary>
    public static readonly (Temperature Least, Temperature Most) UntilRange = (Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(100));

    /// <summary>Where it stands.</summary>
    public required CoolingPlace Place { get; init; }

    /// <summary>How it is covered.</summary>
    public LidPosition Lid { get; init; } = LidPosition.Off;

    /// <summary>Vessels poured into at the start, or null to stay in the same.</summary>
    public PourInto? Pour { get; init; }

    /// <summary>Ice put into the stock at the start (clean ice, counted as water of the recipe).</summary>
    public Mass IceAdded { get; init; } = Mass.Zero;

    /// <summary>Cold tap water put into the stock at the start.</summary>
    public Mass WaterAdded { get; init; } = Mass.Zero;

    /// <summary>Frozen wands stood in each vessel at the start; they are taken out when the step ends.</summary>
    public int Wands { get; init; }

    /// <summary>Kind of wand.</summary>
    public FrozenWand Wand { get; init; } = FrozenWand.TwoLitres;

    /// <summary>How often the stock is stirred: every few minutes is enough to keep it even and unset.</summary>
    public Stirring StockStirring { get; init; }

    /// <summary>How often the water around it is stirred; of no account where there is none, or where the tap keeps it moving.</summary>
    public Stirring BathStirring { get; init; }

    /// <summary>True when stirring the water around it makes a difference.</summary>
    public bool HasBathToStir => Place is CoolingPlace.IceBath or CoolingPlace.TapSink { Running: false };

    /// <summary>Longest it lasts, or null.</summary>
    public TimeSpan? For { get; init; }

    /// <summary>Temperature of the slowest point at which it ends, or null.</summary>
    public Temperature? Until { get; init; }
}

/// <summary>A way of cooling: one step or several.</summary>
/// <param name="Id">Stable name used in links.</param>
/// <param name="Name">Plain name.</param>
/// <param name="Steps">In order; one or more.</param>
public sealed record CoolingMethod(string Id, string Name, IReadOnlyList<CoolingStep> Steps)
{
    /// <summary>A method of one step.</summary>
    public static CoolingMethod Of(string id, string name, CoolingStep step) => new(id, name, [step]);
}
