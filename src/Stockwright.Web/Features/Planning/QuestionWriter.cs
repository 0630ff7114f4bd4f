using Stockwright.Predicting;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes questions as fields; what was not asked is left out.</summary>
internal static class QuestionWriter
{
    public static IEnumerable<KeyValuePair<string, string>> Write(PlanQuestions questions, UnitSystem units)
    {
        List<KeyValuePair<string, string>> entries = [];
        Put(PlanFields.KitchenFactor, Measure.Number, questions.KitchenFactor);
        Put(PlanFields.Ph, Measure.Number, questions.Ph);
        Put(PlanFields.PieceSize, Measure.PotLength, questions.PieceSize?.Meters);
        Put(PlanFields.Container, Measure.PotLength, questions.Container?.Meters);
        Put(PlanFields.FridgeHours, Measure.Hours, questions.FridgeTime?.TotalSeconds);
        Put(PlanFields.Fridge, Measure.Temperature, questions.Fridge?.Kelvins);
        Put(PlanFields.Portion, Measure.Portion, questions.Portion?.CubicMeters);
        if (questions.Defat is { } defat)
        {
            Say(PlanFields.Defat, WordTable.Of(PlanText.Defats, defat));
        }

        Put(PlanFields.Cooling, Measure.Minutes, questions.Cooling?.TotalSeconds);
        for (int row = 0; row < questions.More.Count; row++)
        {
            Say(RowFields.Name(RowFields.More, row, "cut"), questions.More[row].IngredientId);
            Put(RowFields.MassName(RowFields.More, row, units), Measure.Mass, questions.More[row].Mass.Kilograms);
        }

        if (questions.Wanted is { } wanted)
        {
            Say(PlanFields.SetTarget, WordTable.Of(BodyText.Bodies, wanted));
        }

        for (int row = 0; row < questions.Cuts.Count; row++)
        {
            AvailableCut cut = questions.Cuts[row];
            Say(RowFields.Name(RowFields.Set, row, "cut"), cut.IngredientId);
            Put(RowFields.Name(RowFields.Set, row, "price"), Measure.Price, cut.PricePerKilogram);
            Put(RowFields.MassName(RowFields.Set, row, units), Measure.Mass, cut.AtHand?.Kilograms);
        }

        Put(PlanFields.PowderBloom, Measure.Number, questions.PowderBloom?.Grams);
        Put(PlanFields.PowderPrice, Measure.Price, questions.PowderPrice);
        return entries;

        void Say(string field, string word) => entries.Add(KeyValuePair.Create(field, word));

        void Put(string field, Measure measure, double? si)
        {
            if (si is { } number)
            {
                Say(field, KitchenNumber.Write(measure.In(units).FromSi(number)));
            }
        }
    }
}
