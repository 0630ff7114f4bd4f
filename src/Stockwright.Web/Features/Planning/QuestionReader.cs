using Stockwright.Larder;
using Stockwright.Predicting;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Reads what is asked of the stock: fine points of the body, cuts to try, what it should set to.</summary>
internal static class QuestionReader
{
    private const double Zero = 273.15;

    /// <summary>No cut costs more than this a kilogram, in any money worth counting.</summary>
    private const double MostPrice = 1e6;

    public static PlanQuestions Read(FieldReader reader, LarderTable larder)
    {
        (double least, double most) = PlanQuestions.KitchenFactorRange;
        double? factor = reader.Number(PlanFields.KitchenFactor, "Kitchen factor", Measure.Number, least, most);
        double? ph = reader.Number(PlanFields.Ph, "Acidity", Measure.Number, Extraction.PhRange.Least, Extraction.PhRange.Most);
        double? piece = reader.Number(PlanFields.PieceSize, "Size of the pieces", Measure.PotLength, 0.005, 0.3);
        double? container = reader.Number(PlanFields.Container, "Width of the container", Measure.PotLength, 0.05, 1);
        double? hours = reader.Number(PlanFields.FridgeHours, "Hours in the fridge", Measure.Hours, 0, 720 * 3600);
        double? fridge = reader.Number(PlanFields.Fridge, "Fridge", Measure.Temperature, Zero, Zero + 12);
        double? portion = reader.Number(PlanFields.Portion, "Size of a portion", Measure.Portion, 10e-6, 2000e-6);
        double? cooling = reader.Number(PlanFields.Cooling, "Time to cool to 60 °C (140 °F)", Measure.Minutes, 0, 720 * 60);
        double? bloom = reader.Number(PlanFields.PowderBloom, "Bloom of the powder", Measure.Number, 50, 300);
        double? price = reader.Number(PlanFields.PowderPrice, "Price of the powder", Measure.Price, 0, MostPrice);

        // Only the rounding of units is trimmed here: the reader has refused anything outside the ranges.
        return new PlanQuestions
        {
            KitchenFactor = Within(factor, least, most),
            Ph = Within(ph, Extraction.PhRange.Least, Extraction.PhRange.Most),
            PieceSize = Within(piece * 100, 0.5, 30) is { } size ? Length.FromCentimeters(size) : null,
            Container = Within(container * 100, 5, 100) is { } width ? Length.FromCentimeters(width) : null,
            FridgeTime = Within(hours, 0, 720 * 3600) is { } time ? TimeSpan.FromSeconds(time) : null,
            Fridge = Within(fridge - Zero, 0, 12) is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
            Portion = Within(portion * 1e6, 10, 2000) is { } millilitres ? Volume.FromMilliliters(millilitres) : null,
            Defat = reader.Form.Has(PlanFields.Defat) ? reader.Word(PlanFields.Defat, "Taking off the fat", PlanText.Defats) : null,
            Cooling = Within(cooling, 0, 720 * 60) is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
            More = ReadMore(reader, larder),
            Wanted = reader.Form.Has(PlanFields.SetTarget) ? reader.Word(PlanFields.SetTarget, "Body", BodyText.Bodies) : null,
            Cuts = ReadCuts(reader, larder),
            PowderBloom = Within(bloom, 50, 300) is { } grams ? Mass.FromGrams(grams) : null,
            PowderPrice = Within(price, 0, MostPrice),
        };
    }

    private static List<CutChange> ReadMore(FieldReader reader, LarderTable larder)
    {
        List<CutChange> changes = [];
        foreach ((int row, Ingredient? cut) in Rows(reader, RowFields.More, larder))
        {
            double? mass = RowFields.ReadMass(reader, RowFields.More, row, -2000, 2000, "How much more? Put a minus before it for less.");
            if (cut is not null && mass is { } kilograms)
            {
                changes.Add(new CutChange(cut.Id, Mass.FromKilograms(kilograms)));
            }
        }

        return changes;
    }

    private static List<AvailableCut> ReadCuts(FieldReader reader, LarderTable larder)
    {
        List<AvailableCut> cuts = [];
        foreach ((int row, Ingredient? cut) in Rows(reader, RowFields.Set, larder))
        {
            double? mass = RowFields.ReadMass(reader, RowFields.Set, row, 0, 2000, missing: null);
            double? price = reader.Number(RowFields.Name(RowFields.Set, row, "price"), "Price", Measure.Price, 0, MostPrice);
            if (cut is not null)
            {
                cuts.Add(new AvailableCut(cut.Id, Within(price, 0, MostPrice), mass is { } kilograms ? Mass.FromKilograms(Math.Max(0, kilograms)) : null));
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

    private static double? Within(double? value, double least, double most) => value is { } number ? Math.Clamp(Math.Round(number, 9), least, most) : null;
}
