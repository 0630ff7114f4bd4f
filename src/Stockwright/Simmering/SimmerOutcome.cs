namespace Stockwright.Simmering;

/// <summary>What one run of the pot gave, in SI units.</summary>
internal sealed class SimmerOutcome
{
    public double HeatUpSeconds { get; set; }

    public bool IsReached { get; set; }

    public double FinalCelsius { get; set; }

    public double TotalSeconds { get; set; }

    /// <summary>When the last stage was over, s; the heat may stay on longer.</summary>
    public double StagesEndSeconds { get; set; }

    /// <summary>When each stage reached its temperature, s after the heat went on.</summary>
    public List<double> StageStarts { get; } = [];

    /// <summary>When each stage was over, s after the heat went on.</summary>
    public List<double> StageEnds { get; } = [];

    public List<PointInTime> Points { get; } = [];

    public List<CheckOutcome> Checks { get; } = [];

    public List<(double AtSeconds, PotAction Action)> Actions { get; } = [];

    public double PeakMetres { get; set; }

    public double LowestMetres { get; set; } = double.MaxValue;

    /// <summary>True when the liquid boiled away between two visits.</summary>
    public bool RanDry { get; set; }

    public double StartMetres { get; set; }

    public double StartHeapMetres { get; set; }

    public double SteamKilograms { get; set; }

    public double ToppedUpKilograms { get; set; }

    public double SkimmedKilograms { get; set; }

    /// <summary>Liquid that went over the rim, kg.</summary>
    public double SpiltKilograms { get; set; }

    /// <summary>The pot as it stood at each <see cref="PotEventKind.Look"/>, by number.</summary>
    public Dictionary<int, Sight> Looks { get; } = [];

    /// <summary>Stretches without heat.</summary>
    public List<Gap> Gaps { get; } = [];

    public double LiftedWithSolidsKilograms { get; set; }

    /// <summary>Liquor given by the solids (all that gave), kg.</summary>
    public double ReleasedKilograms { get; set; }

    /// <summary>Liquor soaked up by the solids that swell, kg.</summary>
    public double SoakedUpKilograms { get; set; }

    /// <summary>Free liquid when the heat goes off, kg.</summary>
    public double LiquidLeftKilograms { get; set; }

    /// <summary>Solids without free liquor at the end, those lifted out earlier included, kg.</summary>
    public double SpentSolidsKilograms { get; set; }

    /// <summary>Liquor that clings to the solids still in the pot at the end, once drained, kg.</summary>
    public double ClingingKilograms { get; set; }

    /// <summary>Fat that floats at the end, kg.</summary>
    public double FloatingFatKilograms { get; set; }

    /// <summary>What each solid gave, in the order they left the pot.</summary>
    public List<SolidGave> Gave { get; } = [];

    public double HobHeatJoules { get; set; }

    public double HoldWatts { get; set; }

    public double SteadySteamKilogramsPerSecond { get; set; }

    public double MassIn { get; set; }

    public double MassOut { get; set; }

    public double MassLeft { get; set; }

    public double EnergyIn { get; set; }

    public double EnergyOut { get; set; }

    public double EnergyLeft { get; set; }

    /// <summary>Level at a moment, m; straight between the points of a sampled run.</summary>
    /// <param name="seconds">The moment.</param>
    /// <param name="after">True for the later of two points at the same moment.</param>
    public double LevelAt(double seconds, bool after)
    {
        int next = after
            ? Points.FindIndex(point => point.Seconds > seconds)
            : Points.FindIndex(point => point.Seconds >= seconds);
        if (next <= 0)
        {
            return next == 0 ? Points[0].LevelMetres : Points[^1].LevelMetres;
        }

        PointInTime a = Points[next - 1];
        PointInTime b = Points[next];
        double part = b.Seconds > a.Seconds ? Math.Clamp((seconds - a.Seconds) / (b.Seconds - a.Seconds), 0, 1) : 1;
        return a.LevelMetres + (part * (b.LevelMetres - a.LevelMetres));
    }

    /// <summary>The same visit as one of another run; that one itself when this run ended before.</summary>
    public CheckOutcome CheckLike(CheckOutcome check, int index)
    {
        if (index < Checks.Count && string.Equals(Checks[index].Key, check.Key, StringComparison.Ordinal))
        {
            return Checks[index];
        }

        int like = check.Key.Length > 0 ? Checks.FindIndex(one => string.Equals(one.Key, check.Key, StringComparison.Ordinal)) : -1;
        return like >= 0 ? Checks[like] : check;
    }

    /// <summary>The pot at a moment.</summary>
    internal readonly record struct PointInTime(double Seconds, double Celsius, double LevelMetres, double LiquidKilograms, double SteamKilograms, double HeatWatts);

    /// <summary>A check.</summary>
    internal readonly record struct CheckOutcome(double Seconds, double LevelBefore, double TopUpKilograms, double LevelAfter, string Key);

    /// <summary>The pot looked at.</summary>
    internal readonly record struct Sight(double Seconds, double Celsius, double LevelMetres, double HeapMetres, double LiquidKilograms);

    /// <summary>Heat gone, and at its temperature again, which lies at the end of the run when it ended before.</summary>
    internal readonly record struct Gap(double AwaySeconds, double AgainSeconds);
}
