using System.Globalization;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Cooling;

/// <summary>A way of cooling to try, and what it costs in handwork.</summary>
/// <param name="Method">The way.</param>
/// <param name="HandMinutes">Handwork besides stirring.</param>
internal sealed record MethodCandidate(CoolingMethod Method, int HandMinutes);

/// <summary>The ways of cooling a kitchen could use; the first is the pot left as it stands.</summary>
internal static class MethodCandidates
{
    /// <summary>Handwork in minutes (common practice, no source).</summary>
    private const int PourMinutes = 2;
    private const int PutAwayMinutes = 3;
    private const int SinkMinutes = 5;
    private const int BathMinutes = 8;
    private const string NowAndThen = "stirred every few minutes";

    /// <summary>A running tap is left this far above its own temperature.</summary>
    private const double TapApproachKelvins = 12;

    private static readonly CoolingStep Tap = Stand(new CoolingPlace.TapSink(true, Mass.Zero)) with { StockStirring = Stirring.EveryFewMinutes };
    private static readonly double[] PanDepthsCentimetres = [7.5, 5, 3.5, 2.5];

    internal static IReadOnlyList<MethodCandidate> List(CoolingCase stock, CoolingKit kit, CoolingLimit limit)
    {
        List<MethodCandidate> list = [];
        double end = limit.Stages[^1].To.Value.DegreesCelsius;
        ColdStore? store = kit.WalkIn ?? kit.Fridge;
        CoolingStep away = store is null ? Stand(new CoolingPlace.Bench()) : Stand(new CoolingPlace.ColdAir(store));
        string put = store is null ? "" : $", then the {store.Name}";
        list.Add(kit.Fridge is { } fridge
            ? new(CoolingMethod.Of("pot-fridge", $"The pot, lid on, in the {fridge.Name}", Stand(new CoolingPlace.ColdAir(fridge)) with { Lid = LidPosition.On }), PutAwayMinutes)
            : new(CoolingMethod.Of("bench", "The pot on the bench, lid off", Stand(new CoolingPlace.Bench())), 0));
        AddAir(list, kit);
        if (kit.HasSink)
        {
            AddSink(list, stock, kit, end, away, put);
        }

        foreach (OwnedVessels owned in kit.Vessels)
        {
            AddVessels(list, stock, kit, owned);
        }

        return list;
    }

    private static void AddAir(List<MethodCandidate> list, CoolingKit kit)
    {
        if (kit.WalkIn is { } walkIn)
        {
            list.Add(new(CoolingMethod.Of("pot-walk-in", $"The pot, lid off, in the {walkIn.Name}", Stand(new CoolingPlace.ColdAir(walkIn))), PutAwayMinutes));
        }

        if (kit.BlastChiller is { } blast)
        {
            list.Add(new(CoolingMethod.Of("pot-blast", $"The pot, lid off, in the {blast.Name}", Stand(new CoolingPlace.ColdAir(blast))), PutAwayMinutes));
        }

        if (kit.Wands > 0)
        {
            CoolingPlace place = kit.Fridge is { } fridge ? new CoolingPlace.ColdAir(fridge) : new CoolingPlace.Bench();
            list.Add(new(CoolingMethod.Of("wands", $"{Count(kit.Wands, "frozen wand")} in the pot", Stand(place) with { Wands = kit.Wands }), PutAwayMinutes + kit.Wands));
        }
    }

    private static void AddSink(List<MethodCandidate> list, CoolingCase stock, CoolingKit kit, double end, CoolingStep away, string put)
    {
        Temperature tepid = Temperature.FromDegreesCelsius(Math.Min(stock.Site.TapWater.DegreesCelsius + TapApproachKelvins, stock.Start.DegreesCelsius));
        list.Add(new(new CoolingMethod("tap", $"Running tap water around the pot, {NowAndThen}{put}", [Tap with { Until = tepid }, away]), SinkMinutes));
        if (kit.Ice is { Kilograms: <= 0 })
        {
            return;
        }

        Mass water = Mass.FromKilograms(Math.Max(2, 0.4 * stock.Volume.Liters));
        foreach ((string id, double goal) in new[] { ("end", end), ("half", 21.0) })
        {
            Temperature until = Temperature.FromDegreesCelsius(goal);
            string there = $"down to {goal.ToString("0.#", CultureInfo.InvariantCulture)} °C{put}";
            AddBath(list, kit, $"ice-stirred-{id}", $"Ice bath, stock and bath {NowAndThen}, {there}", Bath(stock.Start, Stirring.EveryFewMinutes), BathMinutes);
            AddBath(list, kit, $"ice-moving-{id}", $"Ice bath, stock and bath stirred all the time, {there}", Bath(stock.Start, Stirring.AllTheTime), BathMinutes);
            AddBath(list, kit, $"ice-still-{id}", $"Ice bath, left alone, {there}", Bath(stock.Start, Stirring.None), BathMinutes);
            if (tepid > until)
            {
                CoolingStep bath = Bath(tepid, Stirring.EveryFewMinutes);
                AddBath(list, kit, $"tap-ice-{id}", $"Running tap water first, then an ice bath, both {NowAndThen}, {there}", bath, SinkMinutes + BathMinutes, Tap with { Until = tepid });
            }

            CoolingStep Bath(Temperature from, Stirring stirring)
            {
                Mass ice = IceNeeded.ForBath(stock, Temperature.FromDegreesCelsius(Math.Max(from.DegreesCelsius, goal)), until, water);
                return Stand(new CoolingPlace.IceBath(Mass.FromKilograms(Math.Ceiling(ice.Kilograms * 2) / 2), water)) with { StockStirring = stirring, BathStirring = stirring, Until = until };
            }
        }

        void AddBath(List<MethodCandidate> methods, CoolingKit owned, string id, string name, CoolingStep bath, int minutes, CoolingStep? first = null)
        {
            if (bath.Place is CoolingPlace.IceBath { Ice: var needed } && (owned.Ice is null || needed <= owned.Ice))
            {
                methods.Add(new(new CoolingMethod(id, name, first is null ? [bath, away] : [first, bath, away]), minutes));
            }
        }
    }

    private static void AddVessels(List<MethodCandidate> list, CoolingCase stock, CoolingKit kit, OwnedVessels owned)
    {
        // Stock as it comes from the pot cracks glass: it is cooled in the pot first, or not put in jars at all.
        bool tooHot = owned.Vessel.Kind == VesselKind.Jar && stock.Start - stock.Site.Room > JarSize.ShockLimit;
        Temperature jarSafe = Temperature.FromDegreesCelsius(stock.Site.Room.DegreesCelsius + JarSize.ShockLimit.Kelvins);
        if (tooHot && !(kit.HasSink && stock.Site.TapWater.DegreesCelsius + TapApproachKelvins < jarSafe.DegreesCelsius))
        {
            return;
        }

        // A blast chiller would freeze thin glass, and jars burst.
        bool isGlass = owned.Vessel.Kind == VesselKind.Jar;
        foreach (ColdStore store in new[] { isGlass ? null : kit.BlastChiller, kit.WalkIn, kit.Fridge }.OfType<ColdStore>())
        {
            foreach (int count in Counts(stock, owned))
            {
                string depth = (100 * stock.Volume.CubicMeters / count / owned.Vessel.FloorSquareMetres).ToString("0.#", CultureInfo.InvariantCulture);
                string id = string.Create(CultureInfo.InvariantCulture, $"{owned.Vessel.Name.Replace(' ', '-')}-{count}-{store.Name.Replace(' ', '-')}");
                CoolingStep step = Stand(new CoolingPlace.ColdAir(store)) with { Pour = new PourInto(owned.Vessel, count) };
                string name = $"{Count(count, owned.Vessel.Name)}, {depth} cm deep, in the {store.Name}";
                int minutes = PutAwayMinutes + (PourMinutes * count);
                list.Add(tooHot
                    ? new(new CoolingMethod(id, $"Running tap water around the pot, {NowAndThen}, then {name}", [Tap with { Until = jarSafe }, step]), minutes + SinkMinutes)
                    : new(CoolingMethod.Of(id, name, step), minutes));
            }
        }
    }

    /// <summary>Fewest vessels that hold the stock; for pans also as many as the usual depths take.</summary>
    private static IEnumerable<int> Counts(CoolingCase stock, OwnedVessels owned)
    {
        int fewest = (int)Math.Ceiling((stock.Volume.CubicMeters / owned.Vessel.Usable.CubicMeters) - 1e-9);
        IEnumerable<int> counts = owned.Vessel.Floor is null
            ? [fewest]
            : PanDepthsCentimetres.Select(depth => (int)Math.Ceiling((stock.Volume.CubicMeters / owned.Vessel.FloorSquareMetres * 100 / depth) - 1e-9));
        return counts.Where(count => count >= fewest && count <= owned.Count && count > 0).Distinct();
    }

    private static CoolingStep Stand(CoolingPlace place) => new() { Place = place };

    private static string Count(int count, string what) => count == 1 ? $"1 {what}" : string.Create(CultureInfo.InvariantCulture, $"{count} {what}s");
}
