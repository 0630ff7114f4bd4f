using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Physics;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Planning;

/// <summary>The numbers a plan leans on, with range, grade and source.</summary>
internal static class Assumptions
{
    public static IReadOnlyList<Assumption> List(PlanRequest request, BatchLoad load, BoilingReport boiling)
    {
        Stated<double> film = SurfaceFilm.For(request.Site, request.Assumptions);
        LoadItem? heaviest = load.Items.MaxBy(item => item.RawKilograms);
        List<Assumption> list =
        [
            new(
                "film-factor",
                "Loss from the surface against clean open water",
                new(Ratio.FromDecimalFractions(film.Low), Ratio.FromDecimalFractions(film.Value), Ratio.FromDecimalFractions(film.High)),
                film.Provenance,
                film.Source,
                "Evaporation, top-ups and yield. Weigh one pot to replace it: the kitchen page says how."),
            Of("lid-escape", "Vapour that gets past the lid", LidEscape.Fraction(request.Lid), "Evaporation. No measurement of a lid ajar was found."),
            Of("hob-efficiency", request.Pot.HasOwnHeater ? "Power of its own heater that reaches it" : "Hob power that reaches the pot", request.Heat.Efficiency, "Heat-up time and energy."),
            Of("retained", "Liquor that clings to drained bones, of their weight", ClingingLiquor.For(request.Site, request.Assumptions), "Yield and the weight of the spent solids. Weigh a colander to replace it: the kitchen page says how."),
            Of("skimmed", "Liquid lifted with the scum", request.Assumptions.Skimmed, "Yield."),
            Of("strain-loss", "Lost in straining, transfer and tasting", request.Assumptions.StrainLoss, "Yield."),
            Of("cover", "Water over the solids at the start", Depth(request.Assumptions.Get("cover-depth")), "Water to the line."),
        ];
        if (request.Pot.Kind == PotKind.SlowCooker)
        {
            list.AddRange(SlowCooker(request, boiling));
        }

        if (heaviest is not null)
        {
            string name = heaviest.Ingredient.Name.ToLowerInvariant();
            if (heaviest.Charge is { } charge)
            {
                list.Add(Of("released", $"Liquor drawn from {name} in a long simmer, of its weight", Released(charge), "Yield and level."));
            }

            list.Add(Of("density", $"True density of {name}", heaviest.Ingredient.TrueDensity, "Room the solids take, and so the fill line."));
            if (heaviest.Ingredient.PackDensity is { } pack)
            {
                list.Add(Of("pack", $"Heap of {name}: weight per room it takes", pack, "Whether the solids are covered; never looser than the recipe's own water covers."));
            }

            if (heaviest.Line.Preparation == Preparation.Roast && heaviest.Ingredient.RoastLoss is { } loss)
            {
                list.Add(Of("roast-loss", $"Weight {name} loses in the oven", loss, "Room in the pot, and juice left to give."));
            }
        }

        if (request.Recipe.Wetting is { } id && request.Larder.Get(id) is { Collagen: { } gelatin } wetting)
        {
            list.Add(Of("wetting-gelatin", $"Gelatin in {wetting.Name.ToLowerInvariant()}", gelatin, "Gelatin and body: yours may be half as strong or twice."));
        }

        if (request.Recipe.Stages.FirstOrDefault(stage => stage.ReducesTo is not null) is { ReducesTo: { } left })
        {
            list.Add(Of("reduces-to", "Left when it is boiled down", left, "Yield, strength and the time it takes."));
        }

        if (request.Recipe.ChillsAndDefats)
        {
            list.Add(Of("defat-loss", "Stock that goes with the fat", request.Assumptions.DefatLoss, "Yield."));
        }

        list.Add(new(
            "air-pressure",
            "Air pressure",
            Same(boiling.Pressure),
            boiling.PressureIsMeasured ? Provenance.CookStated : Provenance.Computed,
            boiling.PressureIsMeasured ? "barometer in this kitchen" : "ISO 2533 standard atmosphere at the kitchen's altitude; weather moves it by 30 hPa, and the boil by 0.8 °C",
            "Boiling point."));
        if (request.Pot.Kind == PotKind.Open)
        {
            list.Add(new(
                "pot-mass",
                "Weight of the empty pot",
                Same(request.Pot.EmptyMass),
                Provenance.CookStated,
                "from the kitchen page: weighed, or estimated from the pot's size",
                "Heat-up time, a little."));
        }

        return list;
    }

    /// <summary>What the warm-up of a slow cooker turns on.</summary>
    private static IEnumerable<Assumption> SlowCooker(PlanRequest request, BoilingReport boiling)
    {
        Stated<double> loss = request.Assumptions.SlowLoss;
        double kelvins = boiling.Reached.DegreesCelsius - request.Site.Room.DegreesCelsius;
        Power Watts(double perKelvin) => Power.FromWatts(perKelvin * kelvins);
        yield return new(
            "slow-loss",
            "Heat the slow cooker loses at its simmer",
            new Band<IQuantity>(Watts(loss.Low), Watts(loss.Value), Watts(loss.High)),
            loss.Provenance,
            loss.Source,
            "Time to get hot, and whether it gets there.");
        if (request.Setting == SlowCookerSetting.Low)
        {
            yield return Of("slow-low", "Power on low, of that on high", Ratios(request.Assumptions.Get("slow-low")), "Time to get hot.");
        }
    }

    private static Stated<Length> Depth(Stated<double> metres) =>
        new(Length.FromMeters(metres.Value), Length.FromMeters(metres.Low), Length.FromMeters(metres.High), metres.Provenance, metres.Source);

    private static Stated<Ratio> Ratios(Stated<double> figure) => new(
        Ratio.FromDecimalFractions(figure.Value), Ratio.FromDecimalFractions(figure.Low), Ratio.FromDecimalFractions(figure.High), figure.Provenance, figure.Source);

    /// <summary>Ten hours at 95 C, which is nearly all.</summary>
    private static Stated<Ratio> Released(SolidCharge charge)
    {
        Ratio At(double lean) => Ratio.FromDecimalFractions(charge.Release.Leaning(lean).Liquor(new Exchange(9, 8), 95) / charge.MassKilograms);
        return new(At(0), At(-1), At(1), Provenance.Computed, "from its water, meat, bone and gelatin, each with its own loss (docs/equations.md, S.6)");
    }

    private static Assumption Of<T>(string key, string name, Stated<T> stated, string effect)
        where T : IQuantity =>
        new(key, name, new Band<IQuantity>(stated.Low, stated.Value, stated.High), stated.Provenance, stated.Source, effect);

    private static Band<IQuantity> Same(IQuantity quantity) => new(quantity, quantity, quantity);
}
