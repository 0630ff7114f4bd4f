using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>The stock to be cooled.</summary>
public sealed record CoolingCase
{
    /// <summary>Least and most stock that is cooled.</summary>
    public static readonly (Volume Least, Volume Most) VolumeRange = (Volume.FromLiters(0.1), Volume.FromLiters(500));

    /// <summary>Coldest and hottest stock a course begins with.</summary>
    public static readonly (Temperature Least, Temperature Most) StartRange = (Temperature.FromDegreesCelsius(5), Temperature.FromDegreesCelsius(105));

    /// <summary>Coldest and hottest temperature a stock sets at.</summary>
    public static readonly (Temperature Least, Temperature Most) SettingRange = (Temperature.FromDegreesCelsius(0), Temperature.FromDegreesCelsius(60));

    /// <summary>Least and most fat that floats on it.</summary>
    public static readonly (Mass Least, Mass Most) FatRange = (Mass.Zero, Mass.FromKilograms(50));

    /// <summary>How much, as if measured cold; 0.1 to 500 L.</summary>
    public required Volume Volume { get; init; }

    /// <summary>Temperature at the curve's zero, 5 to 105 °C.</summary>
    public required Temperature Start { get; init; }

    /// <summary>What it stands in at first.</summary>
    public required CoolingVessel Vessel { get; init; }

    /// <summary>Room, tap and air.</summary>
    public KitchenSite Site { get; init; } = new();

    /// <summary>
    /// Temperature around which it sets and stops moving, with its range; null for a stock that stays thin (vegetable stock,
    /// a light broth). A dilute stock sets near 10 to 20 °C and slowly [from memory].
    /// </summary>
    public Stated<Temperature>? Setting { get; init; } = DefaultSetting;

    /// <summary>Fat that floats on it, zero or more; null for strained, defatted stock. It holds steam back (S.3 in docs/equations.md).</summary>
    public Mass? FloatingFat { get; init; }

    /// <summary>The share of clean water's evaporation its surface gives, where that was measured; null for what the fat on it leaves.</summary>
    public Stated<double>? Film { get; init; }

    /// <summary>What stock is made of, for density, specific heat and conductivity.</summary>
    public FoodComposition Composition { get; init; } = DefaultComposition;

    /// <summary>Setting temperature of a stock with body.</summary>
    public static Stated<Temperature> DefaultSetting { get; } = new(
        Temperature.FromDegreesCelsius(18),
        Temperature.FromDegreesCelsius(10),
        Temperature.FromDegreesCelsius(24),
        Provenance.Estimate,
        "dilute stock sets near 10 to 20 °C and slowly; strong gelatin below 30 °C, but not within the hour a bath takes");

    /// <summary>97 % water, 2 % protein, 0.3 % fat, 0.7 % ash.</summary>
    internal static FoodComposition DefaultComposition { get; } = FoodComposition.FromDecimalFractions(0.970, protein: 0.020, fat: 0.003, ash: 0.007);

    /// <summary>
    /// The share of clean water's evaporation over a surface: the law of the simmering pot, with the range of a quiet surface (half to one and a
    /// quarter of it; quiet water gives 0.6 to 1.0 of the correlation, from memory).
    /// </summary>
    internal Stated<double> FilmOver(Area surface)
    {
        if (Film is { } own)
        {
            return own;
        }

        Stated<double> film = SurfaceFilm.Under(Site, FloatingFat, surface);
        return film with { Low = 0.5 * film.Value, High = 1.25 * film.Value };
    }
}

/// <summary>Something in the question that cannot be answered, named by the field it belongs to.</summary>
/// <param name="Field">Field name, for instance <c>litres</c> or <c>step-1-ice</c>.</param>
/// <param name="Message">Plain sentence in the cook's words.</param>
public sealed record CoolingProblem(string Field, string Message);
