namespace Stockwright.Simmering;

/// <summary>Share of the water a solid may give beside its meat's, kg: likeliest and the ends of eight in ten.</summary>
internal readonly record struct WaterRange(double Low, double Value, double High)
{
    /// <summary>The figure at so many half-widths from the likeliest; what only swells does not give.</summary>
    public double At(double lean)
    {
        double at = Value + (lean < 0 ? lean * (Value - Low) : lean * (High - Value));
        return High <= 0 ? Math.Min(0, at) : at;
    }

    public static WaterRange operator *(WaterRange range, double factor) => new(range.Low * factor, range.Value * factor, range.High * factor);
}

/// <summary>What one solid gives to the liquor, by what it is made of (S.6 in docs/equations.md); kg, and rates per hour at 98 °C.</summary>
/// <param name="Assumptions">The figures it was worked out with.</param>
internal sealed record SolidRelease(SimmerAssumptions Assumptions)
{
    /// <summary>Water the lean meat held when raw.</summary>
    public double MeatWater { get; init; }

    /// <summary>How its loss compares with that of meat.</summary>
    public double MeatFactor { get; init; } = 1;

    /// <summary>Part of it the oven has driven off already.</summary>
    public double DrivenOff { get; init; }

    public double MeatPerHour { get; init; }

    /// <summary>Other water; below zero the solid swells.</summary>
    public WaterRange OtherWater { get; init; }

    public double OtherPerHour { get; init; } = 0.6;

    /// <summary>Juices, minerals and sugars.</summary>
    public double Dissolved { get; init; }

    public double DissolvedPerHour { get; init; }

    /// <summary>Fat that comes free and floats.</summary>
    public double Fat { get; init; }

    public double FatPerHour { get; init; }

    /// <summary>Collagen of skin, cartilage and sinew, as much of it as a kitchen gets.</summary>
    public double SoftCollagen { get; init; }

    public double SoftPerHour { get; init; }

    /// <summary>Collagen held in bone mineral.</summary>
    public double HardCollagen { get; init; }

    public double HardPerHour { get; init; }

    /// <summary>Water that goes with a kilogram of gelatin.</summary>
    public double WaterWithGelatin { get; init; }

    /// <summary>The most there is.</summary>
    public double MostWaterWithGelatin { get; init; }

    /// <summary>Liquor that clings to it once drained, kg per kg (S.7).</summary>
    public double Clings { get; init; } = Assumptions.Clinging.Value.DecimalFractions;

    /// <summary>Liquor handed over since it went in, kg; below zero when it has swollen.</summary>
    /// <param name="since">Progress of the exchange since then.</param>
    /// <param name="hottest">Hottest it has been, C.</param>
    public double Liquor(Exchange since, double hottest) => Given(since, hottest) + Taken(since);

    /// <summary>What has left it for the liquor, kg.</summary>
    public double Given(Exchange since, double hottest)
    {
        double meat = MeatWater > 0 ? Math.Max(0, (MeatWater * MeatFactor * Assumptions.MeatWater.LostInTheEnd(hottest)) - DrivenOff) * Done(MeatPerHour, since.Weak) : 0;
        double other = OtherWater.Value > 0 ? OtherWater.Value * Done(OtherPerHour, since.Weak) : 0;
        return meat + other + (Dissolved * Done(DissolvedPerHour, since.Weak)) + (Gelatin(since) * (1 + WaterWithGelatin));
    }

    /// <summary>Liquor it has soaked up, kg, as a number below zero.</summary>
    public double Taken(Exchange since) => OtherWater.Value < 0 ? OtherWater.Value * Done(OtherPerHour, since.Weak) : 0;

    /// <summary>Gelatin drawn, kg.</summary>
    public double Gelatin(Exchange since) => SoftCollagen + HardCollagen > 0
        ? (SoftCollagen * Done(SoftPerHour, since.Collagen)) + (HardCollagen * Done(HardPerHour, since.Collagen))
        : 0;

    /// <summary>Fat come free, kg.</summary>
    public double FreedFat(Exchange since) => Fat > 0 ? Fat * Done(FatPerHour, since.Weak) : 0;

    /// <summary>The same solid when its water leaves more or less readily: minus one and plus one are the ends of eight in ten. One cook, one cut: all err together.</summary>
    public SolidRelease Leaning(double lean)
    {
        WaterRange meat = Assumptions.MeatWater.Lean;
        WaterRange gelatin = Assumptions.GelatinLean;
        return this with
        {
            MeatFactor = MeatFactor * meat.At(lean),
            OtherWater = OtherWater with { Value = OtherWater.At(lean) },
            WaterWithGelatin = Math.Clamp(WaterWithGelatin + gelatin.At(lean) - gelatin.Value, 0, MostWaterWithGelatin),
        };
    }

    public SolidRelease Scaled(double factor) => this with
    {
        MeatWater = MeatWater * factor,
        DrivenOff = DrivenOff * factor,
        OtherWater = OtherWater * factor,
        Dissolved = Dissolved * factor,
        Fat = Fat * factor,
        SoftCollagen = SoftCollagen * factor,
        HardCollagen = HardCollagen * factor,
    };

    private static double Done(double perHour, double hours) => 1 - Math.Exp(-perHour * hours);
}
