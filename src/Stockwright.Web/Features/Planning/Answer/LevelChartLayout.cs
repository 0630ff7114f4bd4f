using Stockwright.Kitchen;
using Stockwright.Measures;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Web.Drawing;
using UnitsNet;

namespace Stockwright.Web.Features.Planning.Answer;

/// <summary>One top-up on the chart; the words are left out where they would run into the ones before.</summary>
internal sealed record TopUpMark(double X, double FromY, double ToY, double TextX, string? Text);

/// <summary>Level and temperature against time, in the units of a view box 390 wide.</summary>
internal sealed class LevelChartLayout
{
    public const double Width = 390;
    public const double Left = 46;
    public const double Right = 380;
    public const double RimY = 46;
    public const double LevelBottom = 286;
    public const double HeatTop = 334;
    public const double HeatBottom = 414;
    public const double Height = 456;
    private const double CharacterWidth = 8.2;
    private readonly Pot _pot;
    private readonly double _endHours;
    private readonly double _deepestMillimetres;
    private readonly double _highestMillimetres;
    private readonly double _lowCelsius;
    private readonly double _highCelsius;

    public LevelChartLayout(Pot pot, FitReport fit, SimmerForecast forecast, UnitSystem system)
    {
        _pot = pot;
        _endHours = Math.Max(forecast.Length.TotalHours, forecast.Samples.Count > 0 ? forecast.Samples[^1].At.TotalHours : 0);
        if (!(_endHours > 0))
        {
            _endHours = 1;
        }

        // Depth below the rim: from the rim (or the highest level, if it rises over it) to just under the lowest thing drawn.
        double rim = pot.InnerHeight.Millimeters;
        double[] levels =
        [
            fit.FillLine.Millimeters, fit.SafeMaximum.Millimeters, fit.SolidsHeight.Millimeters,
            .. forecast.Samples.Select(sample => sample.Level.Millimeters),
            .. forecast.LevelBand.SelectMany(band => new[] { band.Low.Millimeters, band.High.Millimeters }),
        ];
        _highestMillimetres = Math.Min(0, rim - levels.Max());
        _deepestMillimetres = Math.Max(rim * 0.25, Math.Min(rim, (rim - levels.Min()) * 1.12));

        double[] celsius = [.. forecast.Samples.Select(sample => sample.Temperature.DegreesCelsius), 100];
        _lowCelsius = Math.Min(0, celsius.Min());
        _highCelsius = Math.Max(105, celsius.Max());

        FillY = LevelY(fit.FillLine);
        SafeY = LevelY(fit.SafeMaximum);
        SolidsY = LevelY(fit.SolidsHeight);
        HasSolids = fit.SolidsHeight > UnitsNet.Length.Zero;
        HourTicks = ChartTicks.Hours(_endHours).Select(hour => new AxisTick(HourX(hour), Svg.Number(hour))).ToList();
        LevelTicks = DepthTicks(system);
        HeatTicks = TemperatureTicks(system);
        Level = Curve(forecast.Samples, sample => LevelY(sample.Level));
        Heat = Curve(forecast.Samples, sample => HeatY(sample.Temperature));
        Band = BandOf(forecast);
        TopUps = TopUpsOf(forecast, system);
    }

    public double FillY { get; }

    public double SafeY { get; }

    public double SolidsY { get; }

    public bool HasSolids { get; }

    public IReadOnlyList<AxisTick> HourTicks { get; }

    public IReadOnlyList<AxisTick> LevelTicks { get; }

    public IReadOnlyList<AxisTick> HeatTicks { get; }

    public IReadOnlyList<Dot> Level { get; }

    public IReadOnlyList<Dot> Heat { get; }

    public IReadOnlyList<Dot> Band { get; }

    public IReadOnlyList<TopUpMark> TopUps { get; }

    public double HourX(double hours) => Left + ((Right - Left) * hours / _endHours);

    public double LevelY(Length level) => DepthY(_pot.InnerHeight.Millimeters - level.Millimeters);

    public double DepthY(double millimetres) =>
        RimY + ((LevelBottom - RimY) * (millimetres - _highestMillimetres) / (_deepestMillimetres - _highestMillimetres));

    public double HeatY(Temperature temperature) =>
        HeatBottom - ((HeatBottom - HeatTop) * (temperature.DegreesCelsius - _lowCelsius) / (_highCelsius - _lowCelsius));

    private List<AxisTick> DepthTicks(UnitSystem system)
    {
        bool isUs = system == UnitSystem.UsCustomary;
        double unit = isUs ? ExactFactors.InchMillimetres : 1;
        double[] steps = isUs ? [0.25, 0.5, 1, 2, 3, 4, 6, 12] : [5, 10, 20, 25, 50, 100, 200, 500];
        return ChartTicks.Among(_highestMillimetres / unit, _deepestMillimetres / unit, steps, 7)
            .Select(value => new AxisTick(DepthY(value * unit), isUs ? KitchenFormat.Fraction(value, 4) : Svg.Number(value)))
            .ToList();
    }

    private List<AxisTick> TemperatureTicks(UnitSystem system)
    {
        bool isUs = system == UnitSystem.UsCustomary;
        double low = isUs ? (_lowCelsius * 1.8) + 32 : _lowCelsius;
        double high = isUs ? (_highCelsius * 1.8) + 32 : _highCelsius;
        return ChartTicks.Among(low, high, isUs ? [50, 100] : [25, 50, 100], isUs ? 4 : 3)
            .Select(value => new AxisTick(HeatY(isUs ? Temperature.FromDegreesFahrenheit(value) : Temperature.FromDegreesCelsius(value)), Svg.Number(value)))
            .ToList();
    }

    private List<Dot> Curve(IReadOnlyList<SimmerSample> samples, Func<SimmerSample, double> y) =>
        CurveThinning.Keep(samples.Select(sample => sample.At.TotalHours).ToList(), Svg.MostPoints)
            .Select(i => new Dot(HourX(samples[i].At.TotalHours), y(samples[i])))
            .ToList();

    private List<Dot> BandOf(SimmerForecast forecast)
    {
        int count = Math.Min(forecast.Samples.Count, forecast.LevelBand.Count);
        if (count < 2)
        {
            return [];
        }

        // There and back again: half the points for each edge.
        IReadOnlyList<int> kept = CurveThinning.Keep(forecast.Samples.Take(count).Select(sample => sample.At.TotalHours).ToList(), Svg.MostPoints / 2);
        IEnumerable<Dot> upper = kept.Select(i => new Dot(HourX(forecast.Samples[i].At.TotalHours), LevelY(forecast.LevelBand[i].High)));
        IEnumerable<Dot> lower = kept.Reverse().Select(i => new Dot(HourX(forecast.Samples[i].At.TotalHours), LevelY(forecast.LevelBand[i].Low)));
        return upper.Concat(lower).ToList();
    }

    private List<TopUpMark> TopUpsOf(SimmerForecast forecast, UnitSystem system)
    {
        List<TopUpMark> marks = [];
        double free = double.NegativeInfinity;
        foreach (SimmerCheck check in forecast.Checks.Where(check => check.TopUp.Central > Volume.Zero))
        {
            double x = HourX(check.At.TotalHours);
            string words = "+" + KitchenFormat.Text(check.TopUp.Central, system);
            double half = words.Length * CharacterWidth / 2;
            double wordsX = Math.Clamp(x, Left + half, Right - half);
            bool fits = wordsX - half >= free;
            if (fits)
            {
                free = wordsX + half + CharacterWidth;
            }

            marks.Add(new TopUpMark(x, LevelY(check.LevelBefore), LevelY(check.LevelAfter), wordsX, fits ? words : null));
        }

        return marks;
    }
}
