using Stockwright.Cooling;
using Stockwright.Cooling.Limits;
using Stockwright.Kitchen;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Cooling;

/// <summary>What a step may pour into.</summary>
internal sealed record StepVessels(CoolingVessel Pan, CoolingVessel Tub, CoolingVessel Jar);

/// <summary>Reads the steps of a way of cooling.</summary>
internal sealed class StepReader(FieldReader reader, CoolingCase stock, CoolingKit kit, StepVessels vessels, FrozenWand wand, CoolingLimit limit)
{
    private double litres = stock.Volume.Liters;

    /// <summary>The steps with their rows; the pot in the fridge with its lid on where no place is named.</summary>
    public (List<CoolingStep> Steps, List<int> Rows) Read()
    {
        List<CoolingStep> steps = [];
        List<int> rows = [];
        for (int row = 1; row <= StepFields.Most; row++)
        {
            if (!reader.Form.Has(StepFields.Place.At(row).Name))
            {
                if (StepFields.NamesAt(row).Any(field => reader.Form.Has(field) && !IsUsual(field)))
                {
                    reader.Report(StepFields.Place.At(row).Name, $"Step {row}: where does it stand?");
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
    private bool IsUsual(string field) => StepFields.Find(field) is { Kind: FieldKind.Words or FieldKind.List } && reader.Form[field].Trim() is "off" or "on" or "same" or "no";

    private CoolingStep? Step(int row)
    {
        PlaceKind? kind = StepFields.Place.At(row).ReadOrUsual(reader);
        bool? covered = StepFields.Lid.At(row).ReadOrUsual(reader);
        Stirring? stockStirring = Stirred(row, StepFields.StockStirring, isStock: true);
        Stirring? bathStirring = Stirred(row, StepFields.BathStirring, isStock: false);
        Mass? ice = StepFields.Ice.At(row).Read(reader);
        Mass? water = StepFields.Water.At(row).Read(reader);
        Mass addedIce = StepFields.AddedIce.At(row).ReadOrBlank(reader);
        Mass addedWater = StepFields.AddedWater.At(row).ReadOrBlank(reader);
        int wands = StepFields.Wands.At(row).ReadOrBlank(reader);
        TimeSpan? time = StepFields.Minutes.At(row).Read(reader);
        Temperature? until = StepFields.Until.At(row).Read(reader);
        litres += addedIce.Kilograms + addedWater.Kilograms;
        PourInto? pour = Pour(row);
        return kind is null || covered is not { } isCovered || reader.Problems.Count > 0
            ? null
            : new CoolingStep
            {
                Place = Place(kind.Value, ice, water, until),
                Lid = isCovered ? LidPosition.On : LidPosition.Off,
                Pour = pour,
                IceAdded = addedIce,
                WaterAdded = addedWater,
                Wands = wands,
                Wand = wand,
                StockStirring = stockStirring ?? Stirring.None,
                BathStirring = kind is PlaceKind.Ice or PlaceKind.Sink ? bathStirring ?? Stirring.None : Stirring.None,
                For = time,
                Until = until,
            };
    }

    private CoolingPlace Place(PlaceKind place, Mass? ice, Mass? water, Temperature? to)
    {
        switch (place)
        {
            case PlaceKind.Bench:
                return new CoolingPlace.Bench();
            case PlaceKind.Sink:
                return new CoolingPlace.TapSink(false, water ?? CoolingDefaults.SinkWater);
            case PlaceKind.Running:
                return new CoolingPlace.TapSink(true, Mass.Zero);
            case PlaceKind.Ice:
                Mass bath = water ?? CoolingDefaults.BathWater(stock);
                return new CoolingPlace.IceBath(ice ?? CoolingDefaults.BathIce(stock, to ?? limit.Stages[^1].To.Value, bath), bath);
            case PlaceKind.WalkIn:
                return new CoolingPlace.ColdAir(kit.WalkIn ?? CoolingReader.WalkIn(reader));
            case PlaceKind.Blast:
                return new CoolingPlace.ColdAir(kit.BlastChiller ?? CoolingReader.Blast(reader));
            default:
                return new CoolingPlace.ColdAir(kit.Fridge ?? CoolingReader.Fridge(reader));
        }
    }

    private PourInto? Pour(int row)
    {
        PourKind? into = StepFields.Into.At(row).ReadOrUsual(reader);
        int? count = StepFields.Count.At(row).Read(reader);
        Length? deep = StepFields.Deep.At(row).Read(reader);
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
        double each = deep is { } depth ? vessel.FloorArea.SquareMeters * depth.Meters : vessel.Usable.CubicMeters;
        double needed = count ?? Math.Ceiling((litres / 1000 / each) - 1e-9);
        if (needed > PourInto.MostVessels)
        {
            reader.Report(StepFields.Count.At(row).Name, "That takes more than a thousand of them. Choose larger ones, or let it stand deeper.");
            return null;
        }

        return new PourInto(vessel, (int)Math.Max(1, needed));
    }

    // One tick of an older link stood for both.
    private Stirring? Stirred(int row, WordsRow<Stirring> field, bool isStock) =>
        StepFields.HasOneTick(reader.Form, row) && (isStock || !reader.Form.Has(field.At(row).Name)) ? Stirring.EveryFewMinutes : field.At(row).ReadOrUsual(reader);
}
