using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads how much to make. Fields of the ways not chosen are kept but not looked at.</summary>
internal static class GoalReader
{
    public static PlanGoal? Read(FieldReader reader, LarderTable larder) => PlanFields.Goal.ReadOrUsual(reader) switch
    {
        GoalWay.Fill => new PlanGoal.FillPot(),
        GoalWay.Litres => PlanFields.Litres.Read(reader, "Say how much stock you want.") is { } volume ? new PlanGoal.MakeVolume(volume) : null,
        GoalWay.Portions => ReadPortions(reader),
        GoalWay.Bones => ReadBones(reader, larder),
        _ => null,
    };

    private static PlanGoal.MakeVolume? ReadPortions(FieldReader reader)
    {
        int? count = PlanFields.PortionCount.Read(reader, "Say how many portions you want.");
        Volume? size = PlanFields.PortionSize.Read(reader, "Say how large a portion is.");
        if (count is not { } portions || size is not { } each)
        {
            return null;
        }

        if (portions * each > PlanGoal.YieldRange.Most)
        {
            reader.Report(PlanFields.PortionCount.Name, "That many portions of that size are more than 2000 litres (2100 quarts).");
            return null;
        }

        return new PlanGoal.MakeVolume(portions * each, each);
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
        Dictionary<string, Mass> masses = new(StringComparer.Ordinal);
        List<string> order = [];
        int before = reader.Problems.Count;
        for (int row = 0; row < rows; row++)
        {
            string cutField = PlanFields.BonesField(row, "cut");
            string cut = reader.Form[cutField].Trim();
            Mass? mass = RowFields.ReadMass(reader, RowFields.Bones, row, BonesAtHand.MassRange, "How much of it do you have?");
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
                if (masses.TryAdd(cut, weight))
                {
                    order.Add(cut);
                }
                else
                {
                    masses[cut] += weight;
                }
            }
        }

        return reader.Problems.Count > before ? null : new PlanGoal.UseBones([.. order.Select(cut => new BonesAtHand(cut, masses[cut]))]);
    }
}
