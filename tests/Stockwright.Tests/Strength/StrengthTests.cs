using CsCheck;
using Stockwright.Kitchen;
using Stockwright.Predicting;
using Stockwright.Strength;
using UnitsNet;
using Xunit;

namespace Stockwright.Tests.Strength;

/// <summary>Reducing, diluting, blending, topping up and reading strength.</summary>
public sealed class StrengthTests
{
    /// <summary>McGee 2004: glace is a tenth, at about 25 %. 4 L at 2.5 % ten times stronger is 25 %, exact by mass; its 0.4 L is 0.376 L, as glace is denser than water.</summary>
    [Fact]
    public void Glace_is_a_tenth()
    {
        ReducedStock reduced = Reduction.ToStrength(Stock(4, 2.5, 0.3), Percent(25)).Value!;
        Assert.Equal(10, reduced.Factor, 1e-9);
        Assert.Equal(GelatinGrams(reduced.Before), GelatinGrams(reduced.After), 1e-6);
        Assert.Equal(0.4, reduced.After.Volume.Liters, 0.03);
        Assert.Equal(3.0, reduced.After.Salt.Percent, 1e-9);
        Assert.Equal(reduced.Before.Mass.Kilograms, (reduced.After.Mass + reduced.Lost).Kilograms, 1e-9);
    }

    /// <summary>The same to a volume: 0.4 L holds all the gelatin, at 23.4 % by mass (25 g in 100 mL).</summary>
    [Fact]
    public void Reduced_to_a_volume_nothing_is_lost_but_water()
    {
        ReducedStock reduced = Reduction.ToVolume(Stock(4, 2.5), Volume.FromLiters(0.4)).Value!;
        Assert.Equal(0.4, reduced.After.Volume.Liters, 1e-9);
        Assert.Equal(GelatinGrams(reduced.Before), GelatinGrams(reduced.After), 1e-6);
        Assert.Equal(25, GelatinGrams(reduced.After) / 4, 0.25);
    }

    /// <summary>B.28: 1 kg at 3 % to 1.2 % takes 1.5 kg of water, exact by mass; 1 L takes 1.5 L to 1.5 %.</summary>
    [Fact]
    public void Let_down_with_water()
    {
        DilutedStock diluted = Dilution.ToStrength(Stock(1, 3, 0.5), Percent(1.2)).Value!;
        Assert.Equal(1.5, diluted.PartsWater, 1e-9);
        Assert.Equal(1.5, diluted.Water.Liters, 0.0225);
        Assert.Equal(0.2, diluted.After.Salt.Percent, 1e-9);
    }

    /// <summary>Common practice: one part of glace and nine to fourteen of water.</summary>
    [Fact]
    public void Glace_back_to_stock()
    {
        DilutedStock stock = Dilution.ToStrength(Stock(0.1, 25), Percent(2)).Value!;
        Assert.InRange(stock.PartsWater, 9, 14);
    }

    /// <summary>B.29, Pearson's square: 4 % and 1 % to 2 %: one part to two, exact.</summary>
    [Theory]
    [InlineData(4, 1)]
    [InlineData(1, 4)]
    public void Pearsons_square(double one, double other)
    {
        BlendedStock blend = Blending.ToStrength(new(Percent(one)), new(Percent(other)), Percent(2), Volume.FromLiters(3)).Value!;
        Assert.Equal(1, blend.PartsStrong.Percent, 1e-9);
        Assert.Equal(2, blend.PartsWeak.Percent, 1e-9);
        Assert.Equal(1.0 / 3, blend.ShareStrong.DecimalFractions, 1e-9);
        Assert.Equal(3, (blend.Strong + blend.Weak).Liters, 0.01);
        Assert.Equal(225, blend.Bloom.Grams, 1e-9);
    }

    [Fact]
    public void A_blend_keeps_gelatin_and_mass() => Gen.Select(Gen.Double[0, 10], Gen.Double[0.1, 20], Gen.Double[0.01, 0.99], Gen.Double[60, 300], Gen.Double[60, 300]).Sample(
        (weak, more, share, weakBloom, strongBloom) =>
        {
            double strong = weak + more;
            double target = weak + (share * more);
            BlendedStock blend = Blending.ToStrength(new(Percent(weak), Mass.FromGrams(weakBloom)), new(Percent(strong), Mass.FromGrams(strongBloom)), Percent(target), Volume.FromLiters(5)).Value!;
            double gelatin = GelatinGrams(Stock(blend.Strong.Liters, strong)) + (weak > 0 ? GelatinGrams(Stock(blend.Weak.Liters, weak)) : 0);
            Assert.Equal(GelatinGrams(Stock(5, target)), gelatin, 1e-6 * gelatin);
            Assert.InRange(blend.Bloom.Grams, Math.Min(weakBloom, strongBloom) - 1e-9, Math.Max(weakBloom, strongBloom) + 1e-9);
        });

    [Fact]
    public void A_blend_outside_both_is_refused()
    {
        StrengthAnswer<BlendedStock> answer = Blending.ToStrength(new(Percent(4)), new(Percent(1)), Percent(5), Volume.FromLiters(1));
        Assert.Null(answer.Value);
        Assert.Equal("target", answer.Problem!.Field);
        Assert.Contains("5 %, lies outside the two stocks, 1 % and 4 %", answer.Problem.Message, StringComparison.Ordinal);
        Assert.Equal("target", Blending.ToStrength(new(Percent(2)), new(Percent(2)), Percent(2), Volume.FromLiters(1)).Problem!.Field);
    }

    /// <summary>Notes: g = 10 V (Ct - Ceff) sqrt(225/B)/0.856; 2 L from 1 % to 2.8 % with 225 Bloom: 42.1 g, with 160 Bloom the root more.</summary>
    [Theory]
    [InlineData(225, 42.06)]
    [InlineData(160, 49.87)]
    public void Powder_to_make_it_set(double bloom, double grams) =>
        Assert.Equal(grams, GelatinTopUp.ToClass(Volume.FromLiters(2), Percent(1), BodyClass.FirmJelly, Mass.FromGrams(bloom)).Value!.Powder.Grams, 0.05);

    /// <summary>B.31 (gelatin dn/dc 0.187 mL/g [from memory]): pure gelatin % is 0.77 of the reading, and the forward and backward readings agree to 1 %.</summary>
    [Fact]
    public void Pure_gelatin_reads_back()
    {
        double brix = StockComposition.BrixPerGelatinPercent * 3;
        Assert.Equal(3.9, brix, 0.2);
        Assert.Equal(3, Refractometer.Estimate(brix, ReadingKind.PureGelatin).Value!.Gelatin.Value.Percent, 0.03);
    }

    /// <summary>SR28 (2016) 06170, beef stock: its make-up would read 4.6; the protein of 1.97 % must lie in the range read back. 15 % real.</summary>
    [Fact]
    public void A_beef_stock_reads_back()
    {
        RefractometerEstimate estimate = Refractometer.Estimate(4.6, ReadingKind.MeatBones).Value!;
        Assert.InRange(1.97, estimate.Gelatin.Low.Percent, estimate.Gelatin.High.Percent);
        Assert.InRange(1.97 + 1.20 + 0.70, estimate.Solids.Low.Percent, estimate.Solids.High.Percent);
    }

    /// <summary>Notes: 1.2 degrees off for a per cent of salt; diluted one to two the reading is a third.</summary>
    [Fact]
    public void Salt_and_water_are_taken_out()
    {
        Assert.Equal(4.8, Refractometer.Estimate(6, ReadingKind.MeatBones, salt: Percent(1)).Value!.CorrectedBrix, 1e-9);
        Assert.Equal(18, Refractometer.Estimate(6, ReadingKind.MeatBones, partsWater: 2).Value!.CorrectedBrix, 1e-9);
        Assert.True(Refractometer.Estimate(13, ReadingKind.MeatBones).Value!.DiluteFirst);
        Assert.False(Refractometer.Estimate(6, ReadingKind.MeatBones, partsWater: 2).Value!.DiluteFirst);
        Assert.Equal(0, Refractometer.Estimate(3, ReadingKind.Vegetable).Value!.Gelatin.High.Percent);
    }

    [Theory]
    [InlineData(33, 0, "brix")]
    [InlineData(-1, 0, "brix")]
    [InlineData(1, 2, "salt")]
    public void A_reading_that_cannot_be_is_named(double brix, double salt, string field) =>
        Assert.Equal(field, Refractometer.Estimate(brix, ReadingKind.MeatBones, Percent(salt)).Problem!.Field);

    [Fact]
    public void Wrong_ways_round_are_named()
    {
        Assert.Equal("target", Reduction.ToStrength(Stock(1, 3), Percent(2)).Problem!.Field);
        Assert.Equal("target", Dilution.ToStrength(Stock(1, 3), Percent(4)).Problem!.Field);
        Assert.Equal("to", Reduction.ToVolume(Stock(1, 3), Volume.FromLiters(2)).Problem!.Field);
        Assert.Equal("to", Reduction.ToVolume(Stock(1, 3), Volume.FromLiters(0.02)).Problem!.Field);
        Assert.Equal("stock", Reduction.ToStrength(Stock(1, 0), Percent(2)).Problem!.Field);
        Assert.Equal("stock", Reduction.ToVolume(Stock(0, 2), Volume.FromLiters(2)).Problem!.Field);
        Assert.Equal("target", GelatinTopUp.ToClass(Volume.FromLiters(1), Percent(6), BodyClass.SoftJelly, Mass.FromGrams(200)).Problem!.Field);
        Assert.Equal("bloom", GelatinTopUp.ToClass(Volume.FromLiters(1), Percent(1), BodyClass.SoftJelly, Mass.FromGrams(20)).Problem!.Field);
    }

    /// <summary>P.36: a boil gives off 1.6 kg an hour for each net kilowatt (latent heat 2257 kJ/kg, IAPWS); walls take a little of it.</summary>
    [Fact]
    public void At_the_boil_the_power_decides()
    {
        ReductionTimeEstimate estimate = Time(1, null).Value!;
        Assert.True(estimate.IsAtBoil);
        double net = 2.0 * 0.80;
        Assert.InRange(estimate.Rate.KilogramsPerHour, 0.85 * 1.595 * net, 1.595 * net);
        Assert.InRange(estimate.Time.Central.TotalHours, 1 / (1.595 * net), 1 / (0.85 * 1.595 * net));
        Assert.True(estimate.Time.Low < estimate.Time.Central && estimate.Time.Central < estimate.Time.High);
    }

    /// <summary>Below the boil the surface decides: slower, and slower the cooler; between a bare simmer's 3 kg/(m2 h) (common practice, no source) and clean water's 17.5 at 95 °C (P.23).</summary>
    [Fact]
    public void Below_the_boil_the_surface_decides()
    {
        ReductionTimeEstimate simmer = Time(1, 95).Value!;
        Assert.False(simmer.IsAtBoil);
        Assert.InRange(simmer.Rate.KilogramsPerHour / (Math.PI / 4 * 0.0576), 3, 17.5);
        Assert.True(Time(1, 90).Value!.Time.Central > simmer.Time.Central);
        Assert.True(simmer.Time.Central > Time(1, null).Value!.Time.Central);
    }

    [Fact]
    public void A_weak_hob_or_a_wish_too_hot_is_named()
    {
        Assert.Equal("setting", Time(1, null, setting: 0.06, watts: 1000).Problem!.Field);
        Assert.Equal("simmer", Time(1, 101).Problem!.Field);
        Assert.Equal("simmer", Time(1, 50).Problem!.Field);
        Assert.Equal("to", Time(9, null).Problem!.Field);
    }

    private static StrengthAnswer<ReductionTimeEstimate> Time(double kilograms, double? celsius, double setting = 1, double watts = 2000) => ReductionTime.Estimate(
        Mass.FromKilograms(kilograms),
        Volume.FromLiters(3),
        Pot.Straight("pan", "Pan", Length.FromCentimeters(24), Length.FromCentimeters(14)),
        new Hob { Id = "hob", Name = "Hob", Kind = HobKind.Induction, RatedPower = Power.FromWatts(watts) },
        new KitchenSite(),
        Ratio.FromDecimalFractions(setting),
        celsius is { } at ? Temperature.FromDegreesCelsius(at) : null);

    private static double GelatinGrams(StockAmount stock) => stock.Mass.Grams * stock.Gelatin.DecimalFractions;

    private static StockAmount Stock(double litres, double gelatin, double salt = 0) => new(Volume.FromLiters(litres), Percent(gelatin), Percent(salt));

    private static Ratio Percent(double value) => Ratio.FromPercent(value);
}
