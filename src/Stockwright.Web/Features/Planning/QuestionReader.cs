using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads what is asked of the stock: fine points of the body, cuts to try, what it should set to.</summary>
internal static class QuestionReader
{
    private static readonly (Mass Least, Mass Most) AtHand = (Mass.Zero, BonesAtHand.MassRange.Most);
    private static readonly (Mass Least, Mass Most) Change = (-BonesAtHand.MassRange.Most, BonesAtHand.MassRange.Most);

    public static PlanQuestions Read(FieldReader reader, LarderTable larder) =>
        QuestionFields.OfQuestions.Read(reader)(PlanQuestions.None) with { More = ReadMore(reader, larder), Cuts = ReadCuts(reader, larder) };

    private static List<CutChange> ReadMore(FieldReader reader, LarderTable larder)
    {
        List<CutChange> changes = [];
        foreach ((int row, Ingredient? cut) in Rows(reader, RowFields.More, larder))
        {
            Mass? mass = RowFields.ReadMass(reader, RowFields.More, row, Change, "How much more? Put a minus before it for less.");
            if (cut is not null && mass is { } weight)
            {
                changes.Add(new CutChange(cut.Id, weight));
            }
        }

        return changes;
    }

    private static List<AvailableCut> ReadCuts(FieldReader reader, LarderTable larder)
    {
        List<AvailableCut> cuts = [];
        foreach ((int row, Ingredient? cut) in Rows(reader, RowFields.Set, larder))
        {
            Mass? mass = RowFields.ReadMass(reader, RowFields.Set, row, AtHand, missing: null);
            double? price = RowFields.Price(RowFields.Set, row).Read(reader);
            if (cut is not null)
            {
                cuts.Add(new AvailableCut(cut.Id, price, mass));
            }
        }

        return cuts;
    }

    private static IEnumerable<(int Row, Ingredient? Cut)> Rows(FieldReader reader, string family, LarderTable larder)
    {
        int rows = RowFields.Count(reader.Form, family);
        if (rows > RowFields.Most)
        {
            reader.Report(RowFields.Name(family, RowFields.Most, "cut"), $"More than {RowFields.Most} rows of cuts; put the same cuts together.");
            rows = RowFields.Most;
        }

        for (int row = 0; row < rows; row++)
        {
            string field = RowFields.Name(family, row, "cut");
            string id = reader.Form[field].Trim();
            bool known = larder.TryFind(id, out Ingredient? cut);
            if (!known)
            {
                reader.Report(field, id.Length == 0
                    ? "Say which cut this is."
                    : $"There is no ingredient called {KitchenNumber.Quote(id)} in the larder. Choose one from the list.");
            }

            yield return (row, known ? cut : null);
        }
    }
}
