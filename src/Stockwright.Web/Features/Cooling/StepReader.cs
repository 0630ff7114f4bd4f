using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a step may pour into.</summary>
internal sealed record StepVessels(CoolingVessel Pan, CoolingVessel Tub, CoolingVessel Jar);

/// <summary>Reads the steps of a way of cooling.</summary>
internal sealed class StepReader(FieldReader reader, CoolingCase stock, CoolingKit kit, StepVessels vessels, CoolingLimit limit)
{
    /// <summary>The first is what a blank place means where a step is wanted.</summary>
    internal static readonly (string Word, PlaceKind Value)[] Places =
    [
        ("fridge", PlaceKind.Fridge), ("bench", PlaceKind.Bench), ("sink", PlaceKind.Sink), ("running", PlaceKind.Running), ("ice", PlaceKind.Ice),
        ("walk-in", PlaceKind.WalkIn), ("blast", PlaceKind.Blast),
    ];

    private static readonly (string Word, LidKind Value)[] Lids = [("off", LidKind.Off), ("on", LidKind.On)];
    private static readonly (string Word, Stirring Value)[] Stirrings = [("no", Stirring.None), ("few", Stirring.EveryFewMinutes), ("all", Stirring.AllTheTime)];
    private static readonly (string Word, PourKind Value)[] Pours = [("same", PourKind.Same), ("pans", PourKind.Pans), ("tubs", PourKind.Tubs), ("jars", PourKind.Jars)];

    private double litres = stock.Volume.Liters;

    internal enum PlaceKind
    {
        Fridge,
        Bench,
        Sink,
        Running,
        Ice,
        WalkIn,
        Blast,
    }

    internal enum PourKind
    {
        Same,
        Pans,
        Tubs,
        Jars,
    }

    /// <summary>The steps with their rows; the pot in the fridge with its lid on where no place is named.</summary>
    public (List<CoolingStep> Steps, List<int> Rows) Read()
    {
        List<CoolingStep> steps = [];
        List<int> rows = [];
        for (int row = 1; row <= CoolingFields.MostSteps; row++)
        {
            if (!reader.Form.Has(Name(row, CoolingFields.Place)))
            {
                if (CoolingFields.Step(row).Any(field => reader.Form.Has(field) && !IsUsual(field)))
                {
                    reader.Report(Name(row, CoolingFields.Place), $"Step {row}: where does it stand?");
                }

                continue;
            }

            if (Step(row) is { } step)
            {
                steps.Add(step);
                rows.Add(row);
            }
        }

        if (steps.Count == 0)
        {
            steps.Add(new CoolingStep { Place = new CoolingPlace.ColdAir(kit.Fridge ?? ColdStore.DomesticFridge), Lid = LidPosition.On });
            rows.Add(1);
        }

        return (steps, rows);
    }

    /// <summary>A browser sends the choices of a row nobody filled in.</summary>
    private bool IsUsual(string field) =>
        new[] { CoolingFields.Lid, CoolingFields.Into, CoolingFields.StockStirring, CoolingFields.BathStirring }.Any(part => field.EndsWith('-' + part, StringComparison.Ordinal))
        && reader.Form[field].Trim() is "off" or "on" or "same" or "no";

    private CoolingStep? Step(int row)
    {
        PlaceKind? kind = reader.Word(Name(row, CoolingFields.Place), "Place", Places);
        LidKind? lid = reader.Word(Name(row, CoolingFields.Lid), "Lid", Lids);
        Stirring? stockStirring = Stirred(row, CoolingFields.StockStirring, "Stir the stock");
        Stirring? bathStirring = Stirred(row, CoolingFields.BathStirring, "Stir the bath");
        double? ice = Kilograms(row, CoolingFields.Ice, "Ice in the bath");
        double? water = Kilograms(row, CoolingFields.Water, "Water around it");
        double? addedIce = Kilograms(row, CoolingFields.AddedIce, "Ice put in the stock");
        double? addedWater = Kilograms(row, CoolingFields.AddedWater, "Water put in the stock");
        double? wands = Whole(row, CoolingFields.Wands, "Frozen wands", 0, 10);
        double? minutes = reader.Number(Name(row, CoolingFields.Minutes), "Time", Measure.Minutes, 0, 48 * 3600);
        double? until = reader.Number(Name(row, CoolingFields.Until), "Until", Measure.Temperature, 273.15, 373.15);
        litres += (addedIce ?? 0) + (addedWater ?? 0);
        PourInto? pour = Pour(row);
        if (kind is null || lid is null || reader.Problems.Count > 0)
        {
            return null;
        }

        Temperature? end = until is { } kelvins ? Temperature.FromKelvins(kelvins) : null;
        return new CoolingStep
        {
            Place = Place(kind.Value, ice, water, end),
            Lid = lid == LidKind.On ? LidPosition.On : LidPosition.Off,
            Pour = pour,
            IceAdded = Mass.FromKilograms(addedIce ?? 0),
            WaterAdded = Mass.FromKilograms(addedWater ?? 0),
            Wands = (int)(wands ?? 0),
            Wand = Wand(reader),
            StockStirring = stockStirring ?? Stirring.None,
            BathStirring = kind is PlaceKind.Ice or PlaceKind.Sink ? bathStirring ?? Stirring.None : Stirring.None,
            For = minutes is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
            Until = end,
        };

        CoolingPlace Place(PlaceKind place, double? iceKilograms, double? waterKilograms, Temperature? to)
        {
            switch (place)
            {
                case PlaceKind.Bench:
                    return new CoolingPlace.Bench();
                case PlaceKind.Sink:
                    return new CoolingPlace.TapSink(false, Mass.FromKilograms(waterKilograms ?? CoolingDefaults.SinkKilograms));
                case PlaceKind.Running:
                    return new CoolingPlace.TapSink(true, Mass.Zero);
                case PlaceKind.Ice:
                    Mass bath = waterKilograms is { } typed ? Mass.FromKilograms(typed) : CoolingDefaults.BathWater(stock);
                    Mass cold = iceKilograms is { } given ? Mass.FromKilograms(given) : CoolingDefaults.BathIce(stock, to ?? limit.Stages[^1].To.Value, bath);
                    return new CoolingPlace.IceBath(cold, bath);
                case PlaceKind.WalkIn:
                    return new CoolingPlace.ColdAir(kit.WalkIn ?? CoolingReader.WalkIn(reader));
                case PlaceKind.Blast:
                    return new CoolingPlace.ColdAir(kit.BlastChiller ?? CoolingReader.Blast(reader));
                default:
                    return new CoolingPlace.ColdAir(kit.Fridge ?? CoolingReader.Fridge(reader));
            }
        }
    }

    internal static FrozenWand Wand(FieldReader reader) =>
        reader.Number(CoolingFields.WandWater, "Water in a wand", Measure.Mass, 0.1, 20) is { } kilograms
            ? FrozenWand.TwoLitres with { Water = Mass.FromKilograms(kilograms) }
            : FrozenWand.TwoLitres;

    private PourInto? Pour(int row)
    {
        PourKind? into = reader.Word(Name(row, CoolingFields.Into), "Poured into", Pours);
        double? count = Whole(row, CoolingFields.Count, "How many", 1, 200);
        double? deep = reader.Number(Name(row, CoolingFields.Deep), "Depth", Measure.PotLength, 0.005, 0.4);
        if (into is null or PourKind.Same || reader.Problems.Count > 0)
        {
            return null;
        }

        CoolingVessel vessel = into switch
        {
            PourKind.Pans => vessels.Pan,
            PourKind.Jars => vessels.Jar,
            _ => vessels.Tub,
        };
        double cubicMetres = litres / 1000;
        double needed = count ?? (deep is { } metres
            ? Math.Ceiling((cubicMetres / (vessel.FloorArea.SquareMeters * metres)) - 1e-9)
            : Math.Ceiling((cubicMetres / vessel.Usable.CubicMeters) - 1e-9));
        if (needed > 1000)
        {
            reader.Report(Name(row, CoolingFields.Count), "That takes more than a thousand of them. Choose larger ones, or let it stand deeper.");
            return null;
        }

        return new PourInto(vessel, (int)Math.Max(1, needed));
    }

    private Stirring? Stirred(int row, string part, string what)
    {
        // One tick of an older link stood for both.
        if (CoolingFields.HasOneTick(reader.Form, row) && (part is CoolingFields.StockStirring || !reader.Form.Has(Name(row, part))))
        {
            return Stirring.EveryFewMinutes;
        }

        return reader.Word(Name(row, part), what, Stirrings);
    }

    private double? Kilograms(int row, string part, string what) => reader.Number(Name(row, part), what, Measure.Mass, 0, 2000);

    private double? Whole(int row, string part, string what, double least, double most)
    {
        string field = Name(row, part);
        double? number = reader.Number(field, what, Measure.Number, least, most);
        if (number is { } value && value != Math.Floor(value))
        {
            reader.Report(field, $"{what}: write a whole number.");
            return null;
        }

        return number;
    }

    private static string Name(int row, string part) => CoolingFields.Step(row, part);
}
