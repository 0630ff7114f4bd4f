using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads how much to make. Fields of the ways not chosen are kept but not looked at.</summary>
internal static class GoalReader
{
    public static PlanGoal? Read(FieldReader reader, LarderTable larder) => reader.Word(PlanFields.Goal, "How much", PlanText.Goals) switch
    {
        GoalWay.Fill => new PlanGoal.FillPot(),
        GoalWay.Litres => ReadLitres(reader),
        GoalWay.Portions => ReadPortions(reader),
        GoalWay.Bones => ReadBones(reader, larder),
        _ => null,
    };

    private static PlanGoal.MakeVolume? ReadLitres(FieldReader reader)
    {
        double? volume = reader.Number(
            PlanFields.Litres, "Stock wanted", Measure.Stock, 0.0001, 2, "Say how much stock you want.");
        return volume is { } cubicMetres ? new PlanGoal.MakeVolume(Volume.FromCubicMeters(cubicMetres)) : null;
    }

    private static PlanGoal.MakeVolume? ReadPortions(FieldReader reader)
    {
        double? count = reader.Number(PlanFields.PortionCount, "Portions", Measure.Number, 1, 10_000, "Say how many portions you want.");
        double? size = reader.Number(PlanFields.PortionSize, "Size of a portion", Measure.Portion, 20e-6, 0.005, "Say how large a portion is.");
        if (count is { } number && number != Math.Floor(number))
        {
            reader.Report(PlanFields.PortionCount, $"Portions: {reader.Form[PlanFields.PortionCount].Trim()} is not a whole number.");
            return null;
        }

        if (count is not { } portions || size is not { } each)
        {
            return null;
        }

        if (portions * each > 2)
        {
            reader.Report(PlanFields.PortionCount, "That many portions of that size are more than 2000 litres (2100 quarts).");
            return null;
        }

        return new PlanGoal.MakeVolume(Volume.FromCubicMeters(portions * each), Volume.FromCubicMeters(each));
    }

    private static PlanGoal.UseBones? ReadBones(FieldReader reader, LarderTable larder)
    {
        int rows = RowFields.Count(reader.Form, RowFields.Bones);
        if (rows == 0)
        {
            reader.Report(PlanFields.BonesField(0, "cut"), "Say which bones you have, and how much of each.");
            return null;
        }

        if (rows > PlanFields.MostBonesRows)
        {
            reader.Report(PlanFields.BonesField(PlanFields.MostBonesRows, "cut"), $"More than {PlanFields.MostBonesRows} rows of bones; put the same cuts together.");
            return null;
        }

        // The same cut on two rows is one heap of bones.
        Dictionary<string, double> kilograms = new(StringComparer.Ordinal);
        List<string> order = [];
        int before = reader.Problems.Count;
        for (int row = 0; row < rows; row++)
        {
            string cutField = PlanFields.BonesField(row, "cut");
            string cut = reader.Form[cutField].Trim();
            double? mass = RowFields.ReadMass(reader, RowFields.Bones, row, 0.005, 2000, "How much of it do you have?");
            if (cut.Length == 0)
            {
                reader.Report(cutField, "Say which bones these are.");
            }
            else if (!larder.TryFind(cut, out _))
            {
                reader.Report(cutField, $"There is no ingredient called {KitchenNumber.Quote(cut)} in the larder. Choose one from the list.");
            }
            else if (mass is { } weight)
            {
                if (kilograms.TryAdd(cut, weight))
                {
                    order.Add(cut);
                }
                else
                {
                    kilograms[cut] += weight;
                }
            }
        }

        return reader.Problems.Count > before ? null : new PlanGoal.UseBones([.. order.Select(cut => new BonesAtHand(cut, Mass.FromKilograms(kilograms[cut])))]);
    }
}
