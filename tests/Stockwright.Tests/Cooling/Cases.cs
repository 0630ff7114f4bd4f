using Stockwright.Cooling;
using UnitsNet;

namespace Stockwright.Tests.Cooling;

/// <summary>Questions the cooling tests ask.</summary>
internal static class Cases
{
    internal static CoolingPlace Bench { get; } = new CoolingPlace.Bench();

    internal static CoolingPlace Fridge { get; } = new CoolingPlace.ColdAir(ColdStore.DomesticFridge);

    /// <summary>A steel pot of about the proportions of stock pots, filled to two thirds.</summary>
    internal static CoolingCase Pot(double litres = 10, double start = 95, double diameterCentimetres = 28)
    {
        Stockwright.Kitchen.Pot pot = Stockwright.Kitchen.Pot.FromBrimVolume("pot", "pot", Volume.FromLiters(litres * 1.5), Length.FromCentimeters(diameterCentimetres));
        return new CoolingCase
        {
            Volume = Volume.FromLiters(litres),
            Start = Temperature.FromDegreesCelsius(start),
            Vessel = CoolingVessel.FromPot(pot, Volume.FromLiters(litres)),
        };
    }

    internal static CoolingPlace IceBath(double ice, double water = 5) =>
        new CoolingPlace.IceBath(Mass.FromKilograms(ice), Mass.FromKilograms(water));

    internal static CoolingPlace Air(double celsius, double metresPerSecond) => new CoolingPlace.ColdAir(ColdStore.WalkIn with
    {
        Air = Temperature.FromDegreesCelsius(celsius),
        AirSpeed = Speed.FromMetersPerSecond(metresPerSecond),
        Capacity = Power.FromKilowatts(50),
    });

    internal static CoolingStep Stand(CoolingPlace place) => new() { Place = place };

    /// <summary>The same, stock and bath stirred alike.</summary>
    internal static CoolingStep Stirred(CoolingPlace place, Stirring often = Stirring.AllTheTime) => Stand(place) with { StockStirring = often, BathStirring = often };

    internal static CoolingMethod Of(CoolingStep step) => CoolingMethod.Of("test", "test", step);

    internal static CoolingMethod In(CoolingPlace place) => CoolingMethod.Of("test", "test", Stand(place));

    internal static PourInto Pans(int count, double centimetresDeep = 6.5) =>
        new(CoolingVessel.Pan(Length.FromCentimeters(53), Length.FromCentimeters(32.5), Length.FromCentimeters(centimetresDeep)), count);

    internal static double? HoursTo(this CoolingCourse course, double celsius) =>
        course.Curve.FirstAtOrBelow(Temperature.FromDegreesCelsius(celsius))?.TotalHours;
}
