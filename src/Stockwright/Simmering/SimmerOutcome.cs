namespace Stockwright.Simmering;

/// <summary>What one run of the pot gave, in SI units.</summary>
internal sealed class SimmerOutcome
{
    public double HeatUpSeconds { get; set; }

    public bool IsReached { get; set; }

    public double FinalCelsius { get; set; }

    public double TotalSeconds { get; set; }

    /// <summary>When each stage reached its temperature, s after the heat went on.</summary>
    public List<double> StageStarts { get; } = [];

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

    public double SteamDuringHeatUpKilograms { get; set; }

    public double ToppedUpKilograms { get; set; }

    public double SkimmedKilograms { get; set; }

    public double LiftedWithSolidsKilograms { get; set; }

    /// <summary>Liquor given by the solids (all that gave), kg.</summary>
    public double ReleasedKilograms { get; set; }

    /// <summary>Liquor soaked up by the solids that swell, kg.</summary>
    public double SoakedUpKilograms { get; set; }

    /// <summary>Free liquid when the heat goes off, kg.</summary>
    public double LiquidLeftKilograms { get; set; }

    /// <summary>Solids without free liquor at the end, those lifted out earlier included, kg.</summary>
    public double SpentSolidsKilograms { get; set; }

    public double HobHeatJoules { get; set; }

    public double HoldWatts { get; set; }

    public double SteadySteamKilogramsPerSecond { get; set; }

    public double MassIn { get; set; }

    public double MassOut { get; set; }

    public double MassLeft { get; set; }

    public double EnergyIn { get; set; }

    public double EnergyOut { get; set; }

    public double EnergyLeft { get; set; }

    /// <summary>The pot at a moment.</summary>
    internal readonly record struct PointInTime(double Seconds, double Celsius, double LevelMetres, double LiquidKilograms, double SteamKilograms, double HeatWatts);

    /// <summary>A check.</summary>
    internal readonly record struct CheckOutcome(double Seconds, double LevelBefore, double TopUpKilograms, double LevelAfter, double Celsius);
}
