using Stockwright.Predicting;
using Stockwright.Web.Fields;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes questions as fields; what was not asked is left out.</summary>
internal static class QuestionWriter
{
    public static IEnumerable<KeyValuePair<string, string>> Write(PlanQuestions questions, UnitSystem units)
    {
        List<KeyValuePair<string, string>> entries = QuestionFields.OfQuestions.Write(questions, PlanQuestions.None, units);
        for (int row = 0; row < questions.More.Count; row++)
        {
            RowFields.Put(entries, RowFields.More, row, questions.More[row].IngredientId, questions.More[row].Mass, units);
        }

        for (int row = 0; row < questions.Cuts.Count; row++)
        {
            AvailableCut cut = questions.Cuts[row];
            RowFields.Put(entries, RowFields.Set, row, cut.IngredientId, cut.AtHand, units);
            RowFields.Price(RowFields.Set, row).Put(entries, cut.PricePerKilogram, units);
        }

        return entries;
    }
}
