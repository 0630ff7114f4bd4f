using System.Globalization;
using Stockwright.Evidence;
using Stockwright.Measures;
using UnitsNet;
using Xunit;
using UnitSystem = Stockwright.Measures.UnitSystem;

namespace Stockwright.Tests.Measures;

public sealed class KitchenFormatTests
{
    private const UnitSystem Metric = UnitSystem.Metric;
    private const UnitSystem Us = UnitSystem.UsCustomary;

    // Common practice, no source, for the wording; the figures follow from the exact factors of NIST SP 811.
    [Theory]
    [InlineData(0, "0 g", "0 oz")]
    [InlineData(0.83, "0.83 g", "0.029 oz")]
    [InlineData(18.3, "18.5 g", "0.65 oz")]
    [InlineData(56.699, "57 g", "2 oz")]
    [InlineData(850, "850 g", "1 lb 14 oz")]
    [InlineData(453.59237, "450 g", "1 lb")]
    [InlineData(1250, "1.25 kg", "2 lb 12 oz")]
    [InlineData(4535.9237, "4.5 kg", "10 lb")]
    [InlineData(6000, "6 kg", "13 lb")]
    public void A_mass_reads_as_on_a_kitchen_scale(double grams, string metric, string us)
    {
        Same(metric, KitchenFormat.Text(Mass.FromGrams(grams), Metric));
        Same(us, KitchenFormat.Text(Mass.FromGrams(grams), Us));
    }

    [Theory]
    [InlineData(0, "0 L", "0 qt")]
    [InlineData(4.92892159375, "4.9 mL", "1 tsp")]
    [InlineData(14.78676478125, "15 mL", "1 tbsp")]
    [InlineData(33.3, "33 mL", "2 tbsp + ¾ tsp")]
    [InlineData(118.29411825, "118 mL", "½ cup")]
    [InlineData(250, "250 mL", "8½ fl oz")]
    [InlineData(295.735295625, "300 mL", "1¼ cups")]
    [InlineData(946.352946, "950 mL", "1 qt")]
    [InlineData(5200, "5.2 L", "5½ qt")]
    [InlineData(5060, "5.1 L", "5 qt + 1½ cups")]
    [InlineData(18_927.05892, "18.9 L", "20 qt")]
    [InlineData(113_562.35352, "113.5 L", "30 gal")]
    public void A_volume_reads_as_on_spoon_cup_and_jug(double millilitres, string metric, string us)
    {
        Same(metric, KitchenFormat.Text(Volume.FromMilliliters(millilitres), Metric));
        Same(us, KitchenFormat.Text(Volume.FromMilliliters(millilitres), Us));
    }

    [Theory]
    [InlineData(62.3, "62 mm", "2½ in")]
    [InlineData(60.325, "60 mm", "2⅜ in")]
    [InlineData(4.7625, "5 mm", "3/16 in")]
    [InlineData(133, "13.3 cm", "5¼ in")]
    [InlineData(240, "24 cm", "9½ in")]
    [InlineData(-15, "−15 mm", "−9/16 in")]
    [InlineData(1609.344e3, "1609 m", "5280 ft")]
    public void A_length_reads_as_on_a_ruler(double millimetres, string metric, string us)
    {
        Same(metric, KitchenFormat.Text(Length.FromMillimeters(millimetres), Metric));
        Same(us, KitchenFormat.Text(Length.FromMillimeters(millimetres), Us));
    }

    // Fixed points: water's boiling point 100 C is 212 F; 0 F is -17.8 C; the FDA Food Code (2022) writes 5 C as 41 F and 57 C as 135 F.
    [Theory]
    [InlineData(100, "100 °C", "212 °F")]
    [InlineData(5, "5 °C", "41 °F")]
    [InlineData(57, "57 °C", "135 °F")]
    [InlineData(-18, "−18 °C", "0 °F")]
    [InlineData(-17.7, "−18 °C", "0 °F")]
    public void A_temperature_reads_to_the_degree(double celsius, string metric, string us)
    {
        Same(metric, KitchenFormat.Text(Temperature.FromDegreesCelsius(celsius), Metric));
        Same(us, KitchenFormat.Text(Temperature.FromDegreesCelsius(celsius), Us));
    }

    [Theory]
    [InlineData(0, "0 min")]
    [InlineData(40, "40 s")]
    [InlineData(59.7, "1 min")]
    [InlineData(2700, "45 min")]
    [InlineData(3599, "1 h")]
    [InlineData(4800, "1 h 20 min")]
    [InlineData(28_800, "8 h")]
    [InlineData(46_920, "13 h")]
    [InlineData(273_600, "3 days 4 h")]
    public void A_time_reads_in_hours_and_minutes(double seconds, string expected) =>
        Same(expected, KitchenFormat.Text(TimeSpan.FromSeconds(seconds)));

    [Fact]
    public void A_band_has_one_unit_and_sensible_digits()
    {
        Same("3.4 to 4.6 L", KitchenFormat.Band(Litres(3.41, 4.02, 4.58), Metric));
        Same("3½ to 4¾ qt", KitchenFormat.Band(Litres(3.41, 4.02, 4.58), Us));
        Same("380 to 520 mL", KitchenFormat.Band(Litres(0.377, 0.45, 0.519), Metric));
        Same("4 L", KitchenFormat.Band(Litres(4, 4, 4), Metric));
        Same("4 to 9 L", KitchenFormat.Band(Litres(3.8, 6, 9.2), Metric));
        Same("55 to 70 mm", KitchenFormat.Band(Lengths(55.3, 62, 69.7), Metric));
        Same("2⅛ to 2¾ in", KitchenFormat.Band(Lengths(55.3, 62, 69.7), Us));
        Same("50 to 70 min", KitchenFormat.Band(Times(50, 60, 70)));
        Same("1½ to 2¼ h", KitchenFormat.Band(Times(88, 110, 136)));
        Same("1.8 to 2.4 kg", KitchenFormat.Band(Kilograms(1.8, 2.1, 2.4), Metric));
        Same("4 to 5¼ lb", KitchenFormat.Band(Kilograms(1.8, 2.1, 2.4), Us));
    }

    [Fact]
    public void Both_puts_us_beside_metric()
    {
        Same("5.2 L (5½ qt)", KitchenFormat.Both(Volume.FromLiters(5.2)));
        Same("850 g (1 lb 14 oz)", KitchenFormat.Both(Mass.FromGrams(850)));
        Same("62 mm (2½ in)", KitchenFormat.Both(Length.FromMillimeters(62.3)));
        Same("93 °C (199 °F)", KitchenFormat.Both(Temperature.FromDegreesCelsius(93)));
    }

    // 3412.142 BTU in a kilowatt-hour and 29.92 inHg in a standard atmosphere: NIST SP 811 appendix B.8.
    [Fact]
    public void Power_energy_pressure_and_area_are_written_in_both_systems()
    {
        Same("1.8 kW", KitchenFormat.Text(Power.FromWatts(1800), Metric));
        Same("1 kW (3400 BTU/h)", KitchenFormat.Text(Power.FromWatts(1000), Us));
        Same("3.2 kWh", KitchenFormat.Text(Energy.FromKilowattHours(3.2), Metric));
        Same("1013 hPa", KitchenFormat.Text(Pressure.FromPascals(101_325), Metric));
        Same("29.9 inHg", KitchenFormat.Text(Pressure.FromPascals(101_325), Us));
        Same("1700 cm²", KitchenFormat.Text(Area.FromSquareMeters(0.17225), Metric));
        Same("270 in²", KitchenFormat.Text(Area.FromSquareMeters(0.17225), Us));
    }

    [Fact]
    public void A_quantity_of_unknown_kind_keeps_its_own_unit()
    {
        Assert.Equal("1.3", KitchenFormat.Text((IQuantity)Ratio.FromDecimalFractions(1.3), Metric));
        Same("1000 kg/m³", KitchenFormat.Text((IQuantity)Density.FromKilogramsPerCubicMeter(1000), Metric));
        Same("1.15 kg/L", KitchenFormat.Text((IQuantity)Density.FromKilogramsPerLiter(1.15), Metric));
        Same("2 h", KitchenFormat.Text((IQuantity)Duration.FromHours(2), Metric));
    }

    [Fact]
    public void Tables_keep_enough_digits_to_add_up()
    {
        Same("1.254 kg", KitchenFormat.Precise(Mass.FromGrams(1254.2), Metric));
        Same("44.24 oz", KitchenFormat.Precise(Mass.FromGrams(1254.2), Us));
        Same("5.24 L", KitchenFormat.Precise(Volume.FromLiters(5.2435), Metric));
        Same("5.54 qt", KitchenFormat.Precise(Volume.FromLiters(5.2435), Us));
    }

    [Fact]
    public void A_comma_culture_changes_nothing()
    {
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo comma = (CultureInfo)CultureInfo.InvariantCulture.Clone();
        comma.NumberFormat.NumberDecimalSeparator = ",";
        comma.NumberFormat.NegativeSign = "~";
        try
        {
            CultureInfo.CurrentCulture = comma;
            Assert.Equal("-1.5", KitchenFormat.Invariant(-1.5));
            Assert.Equal("0", KitchenFormat.Invariant(-0.0001));
            Same("1.25 kg", KitchenFormat.Text(Mass.FromGrams(1250), Metric));
            Same("3.4 to 4.6 L", KitchenFormat.Band(Litres(3.41, 4.02, 4.58), Metric));
            Same("5.24 L", KitchenFormat.Precise(Volume.FromLiters(5.2435), Metric));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }

    [Fact]
    public void What_is_no_number_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => KitchenFormat.Invariant(double.NaN));

    private static Band<Volume> Litres(double low, double central, double high) =>
        new(Volume.FromLiters(low), Volume.FromLiters(central), Volume.FromLiters(high));

    private static Band<Length> Lengths(double low, double central, double high) =>
        new(Length.FromMillimeters(low), Length.FromMillimeters(central), Length.FromMillimeters(high));

    private static Band<Mass> Kilograms(double low, double central, double high) =>
        new(Mass.FromKilograms(low), Mass.FromKilograms(central), Mass.FromKilograms(high));

    private static Band<TimeSpan> Times(double low, double central, double high) =>
        new(TimeSpan.FromMinutes(low), TimeSpan.FromMinutes(central), TimeSpan.FromMinutes(high));

    /// <summary>Expected texts are typed with plain spaces; units hang on a non-breaking one.</summary>
    private static void Same(string expected, string actual)
    {
        Assert.Equal(expected, actual.Replace('\u00A0', ' '));
        Assert.Contains('\u00A0', actual);
    }
}
