using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Physics.Conduction;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>What the faces of a vessel meet during a step.</summary>
/// <param name="Side">Side wall; its film resistance is the liquid film inside.</param>
/// <param name="Bottom">Floor.</param>
/// <param name="Top">Surface or lid.</param>
/// <param name="SteamKilogramsPerSquareMetreSecond">Evaporation from the surface.</param>
/// <param name="InsideFilm">Liquid film on the side wall, W/m2K.</param>
/// <param name="WallShare">Of still liquid (equation C.20); zero when it is stirred.</param>
internal readonly record struct Faces(
    ConductionBoundary Side, ConductionBoundary Bottom, ConductionBoundary Top, double SteamKilogramsPerSquareMetreSecond, double InsideFilm, double WallShare = 0);

/// <summary>
/// Films at the temperatures of the moment (equations C.1 to C.5 in docs/equations-cooling.md): wall temperatures by a few
/// fixed-point passes, started from those of the step before.
/// </summary>
internal sealed class FaceFilms
{
    internal const double StirredInside = 1000;

    /// <summary>Ice water that moves all the time (400 to 550, and to 800 where that is taken for the whole way from stock to bath).</summary>
    internal const double MovingIceWater = 475;

    /// <summary>Loose ice settling on a wall that stirring rocks: stock to bath 150 to 250 through steel.</summary>
    internal const double RockedLooseIce = 250;

    /// <summary>Share of the time what is stirred every few minutes moves: half a minute of stirring in three, and as long until the swirl dies.</summary>
    internal const double EveryFewMinutesShare = 0.4;
    private const double MovingWater = 600;

    /// <summary>Loose ice touches a wall poorly, and water between lumps stands still.</summary>
    private const double LooseIceContact = 0.4;

    /// <summary>A pot on the floor of a bath gives half as much there as at its side.</summary>
    private const double BathFloor = 0.5;
    private const double BenchFloor = 2;
    private const double ShelfFloor = 6;
    private const double Crowding = 0.7;
    private const double StoreHumidity = 0.8;

    private readonly CoolingPlace place;
    private readonly double stockShare;
    private readonly double bathShare;
    private readonly LidState? lid;
    private readonly CoolingFactors factors;
    private readonly CoolingVessel vessel;
    private readonly double depth;
    private readonly double surfaceDiameter;
    private readonly double room;
    private readonly double humidity;
    private readonly double airPascals;
    private readonly double fanFilm;
    private readonly double crowding;
    private readonly double steamShare;
    private readonly double emissivity;
    private double wallOuter = double.NaN;
    private double wallInner;

    internal FaceFilms(CoolingStep step, LidState? lid, CoolingVessel vessel, int count, double depth, CoolingCase stock, double airPascals, CoolingFactors factors)
    {
        this.factors = factors;
        place = step.Place;
        stockShare = ShareOf(step.StockStirring);
        bathShare = step.HasBathToStir ? ShareOf(step.BathStirring) : 0;
        this.lid = lid;
        this.vessel = vessel;
        this.depth = depth;
        surfaceDiameter = Math.Sqrt(4 * vessel.FloorSquareMetres / Math.PI);
        room = stock.Site.Room.DegreesCelsius;
        humidity = place is CoolingPlace.ColdAir ? StoreHumidity : stock.Site.Humidity.DecimalFractions;
        this.airPascals = airPascals;
        double speed = place is CoolingPlace.ColdAir cold ? cold.Store.AirSpeed.MetersPerSecond : 0;
        fanFilm = speed > 0 ? 7.3 * Math.Pow(speed, 0.8) * factors.Convection : 0;
        crowding = count > 1 && place is CoolingPlace.ColdAir ? Crowding * factors.Crowding : 1;
        double film = factors.Film * stock.FilmOver(Area.FromSquareMeters(count * vessel.FloorSquareMetres)).Value;
        steamShare = LidEscape.Past(Math.Min(1, LidEscape.CentralFraction(step.Lid) * (step.Lid.Kind == LidKind.Off ? 1 : factors.Escape)), film);
        emissivity = Math.Min(1, vessel.Emissivity.DecimalFractions * factors.Emissivity);
    }

    /// <summary>Stirring keeps the stock even and unset.</summary>
    internal bool KeepsEven => stockShare > 0;

    /// <summary>Share of the time something moves.</summary>
    internal static double Share(Stirring stirring) => stirring switch
    {
        Stirring.EveryFewMinutes => EveryFewMinutesShare,
        Stirring.AllTheTime => 1,
        _ => 0,
    };

    private double ShareOf(Stirring stirring) => Math.Min(1, Share(stirring) * (stirring == Stirring.EveryFewMinutes ? factors.StirShare : 1));

    /// <summary>A film over time: still for the rest of it; stirring never weakens what gravity drives.</summary>
    internal static double Average(double still, double stirred, double share) => still + (share * Math.Max(0, stirred - still));

    /// <summary>Films for a step.</summary>
    /// <param name="bulk">Temperature of the moving liquid, C.</param>
    /// <param name="side">Temperature just inside the side wall's film.</param>
    /// <param name="surface">Temperature of the surface.</param>
    /// <param name="around">Temperature of the bath or the air.</param>
    /// <param name="seconds">Length of the step.</param>
    internal Faces At(double bulk, double side, double surface, double around, double seconds)
    {
        bool bath = place is CoolingPlace.IceBath or CoolingPlace.TapSink;
        double inside = Inside(bulk, side, around, bath, out double outward);
        double size = factors.Size;
        ConductionBoundary sideFace = new(size * outward, 1 / (size * inside), around);
        double floor = BathFloor * factors.Floor * size;
        ConductionBoundary bottom = place switch
        {
            CoolingPlace.Bench => ConductionBoundary.Convective(BenchFloor * factors.Floor * size, room),
            CoolingPlace.ColdAir => ConductionBoundary.Convective(ShelfFloor * factors.Floor * size * crowding, around),
            _ => new ConductionBoundary(floor * outward, 1 / (floor * inside), around),
        };
        double air = bath ? room : around;
        return new Faces(sideFace, bottom, Top(surface, air, seconds), size * Steam(surface, air), inside, KeepsEven ? 0 : factors.WallShare);
    }

    private double Inside(double bulk, double side, double around, bool bath, out double outward)
    {
        if (double.IsNaN(wallOuter))
        {
            wallInner = bath ? (side + around) / 2 : side;
            wallOuter = wallInner;
        }

        double inside = 1;
        outward = 1;
        for (int pass = 0; pass < 2; pass++)
        {
            inside = Average(WaterFilm.VerticalWallWattsPerSquareMetreKelvin(bulk, wallInner, depth), StirredInside, stockShare);
            double outside = Outside(around);
            if (bath)
            {
                inside *= factors.Inside;
            }

            outward = 1 / (vessel.WallResistanceSquareMetreKelvinsPerWatt + (1 / outside));
            double flux = (side - around) / ((1 / inside) + (1 / outward));
            wallInner = side - (flux / inside);
            wallOuter = around + (flux / outside);
        }

        return inside;
    }

    private double Outside(double around) => place switch
    {
        CoolingPlace.IceBath => Average(Average(LooseIceContact * Still(around) * factors.StillBath, RockedLooseIce * factors.RockedIce, stockShare), MovingIceWater * factors.MovingBath, bathShare),
        CoolingPlace.TapSink { Running: true } => MovingWater * factors.MovingBath,
        CoolingPlace.TapSink => Average(Still(around) * factors.StillBath, MovingWater * factors.MovingBath, bathShare),
        _ => (Math.Max(
                fanFilm,
                factors.Convection * SurfaceLosses.VerticalWallWattsPerSquareMetreKelvin(wallOuter + 273.15, around + 273.15, depth, airPascals))
            + SurfaceLosses.RadiationWattsPerSquareMetreKelvin(wallOuter + 273.15, around + 273.15, emissivity))
            * crowding,
    };

    private double Still(double around) => WaterFilm.VerticalWallWattsPerSquareMetreKelvin(around, wallOuter, depth);

    private ConductionBoundary Top(double surface, double air, double seconds)
    {
        if (lid is null)
        {
            return ConductionBoundary.Convective(UpFilm(surface, air, PotLosses.WaterEmissivity) * factors.Size * crowding, air);
        }

        return lid.Face(
            LidState.UnderFilm(surface, lid.Celsius, surfaceDiameter, emissivity, airPascals) * factors.UnderLid * factors.Size,
            UpFilm(lid.Celsius, air, emissivity) * factors.Size * crowding,
            air,
            seconds);
    }

    private double UpFilm(double surface, double air, double emitting) =>
        Math.Max(fanFilm, factors.Convection * SurfaceLosses.LevelPlateFacingUpWattsPerSquareMetreKelvin(surface + 273.15, air + 273.15, surfaceDiameter, airPascals))
        + SurfaceLosses.RadiationWattsPerSquareMetreKelvin(surface + 273.15, air + 273.15, emitting);

    private double Steam(double surface, double air)
    {
        // Vapour pressures of the freezing-cold are those of 0 C: nothing worth counting evaporates there.
        surface = Math.Max(surface, 0);
        air = Math.Max(air, 0);
        double quiet = Quiet(surface, air);
        double blown = 0;
        if (fanFilm > 0)
        {
            // Chilton and Colburn: mass and heat leave by the same film, Lewis number 0.86 for vapour in air.
            double vapour = MoistAir.VapourKilogramsPerCubicMetre(SaturationLine.SaturationPressurePascals(surface + 273.15), surface + 273.15);
            double inAir = MoistAir.VapourKilogramsPerCubicMetre(humidity * SaturationLine.SaturationPressurePascals(air + 273.15), air + 273.15);
            blown = fanFilm / (1.2 * AirFilm.SpecificHeatJoulesPerKilogramKelvin * 0.904) * Math.Max(0, vapour - inAir);
        }

        return Math.Max(quiet, blown) * steamShare;
    }

    /// <summary>
    /// P.23 takes rooms to 60 C. In a store a vat has heated beyond that, the flux falls off with the difference of vapour pressures
    /// and ends where there is none, so that the store gets no hotter than the stock.
    /// </summary>
    private double Quiet(double surface, double air)
    {
        double most = Evaporation.MostRoomKelvins - 273.15;
        double flux = Evaporation.CleanWaterKilogramsPerSquareMetreSecond(surface + 273.15, Math.Min(air, most) + 273.15, humidity, airPascals);
        if (air <= most || flux <= 0)
        {
            return flux;
        }

        // Steam that settles in the store leaves its air saturated.
        double over = SaturationLine.SaturationPressurePascals(surface + 273.15);
        double drive = over - SaturationLine.SaturationPressurePascals(air + 273.15);
        return drive > 0 ? flux * drive / (over - SaturationLine.SaturationPressurePascals(most + 273.15)) : 0;
    }
}
