using CsCheck;
using Stockwright.Kitchen;
using UnitsNet;

namespace Stockwright.Storage.Tests.Contract;

/// <summary>Random but possible kitchens.</summary>
internal static class Kitchens
{
    /// <summary>What cooks call things: blanks, quotes, other alphabets and pictures included.</summary>
    public static readonly Gen<string> Name = Gen.OneOf(
        Gen.OneOfConst("10 L pot", "grande marmite", "Große", "鍋", "O'Brien's \"best\"", "a;DROP TABLE Pots;--", "🍲", "   ", "-"),
        Gen.String[Gen.Char.AlphaNumeric, 1, 30]);

    public static readonly Gen<Pot> Pot =
        from name in Name
        from baseDiameter in Gen.Double[0.08, 1.2]
        from brimDiameter in Gen.Double[0.08, 1.2]
        from height in Gen.Double[0.04, 1.2]
        from material in Gen.Enum<WallMaterial>()
        from kind in Gen.Enum<PotKind>()
        from weighed in Gen.Double[0.3, 40].Nullable()
        from gauge in Gen.Double[0.5, 1.03].Nullable()
        from watts in Gen.Double[100, 150_000].Nullable()
        select new Pot
        {
            Id = "",
            Name = name,
            BaseDiameter = Length.FromMeters(baseDiameter),
            BrimDiameter = Length.FromMeters(brimDiameter),
            InnerHeight = Length.FromMeters(height),
            Material = material,
            Kind = kind,
            GaugePressure = kind == PotKind.PressureCooker && gauge is { } bar ? Pressure.FromBars(bar) : null,
            HeaterPower = kind is PotKind.SlowCooker or PotKind.Kettle && watts is { } power ? Power.FromWatts(power) : null,
            EmptyMass = weighed is { } kilograms
                ? Mass.FromKilograms(kilograms)
                : Stockwright.Kitchen.Pot.EstimateEmptyMass(
                    Length.FromMeters(baseDiameter), Length.FromMeters(brimDiameter), Length.FromMeters(height), material),
        };

    public static readonly Gen<Hob> Hob =
        from name in Name
        from kind in Gen.Enum<HobKind>()
        from watts in Gen.Double[200, 60_000]
        from own in Gen.Double[0.1, 1].Nullable()
        select new Hob
        {
            Id = "",
            Name = name,
            Kind = kind,
            RatedPower = Power.FromWatts(watts),
            OwnEfficiency = own is { } fraction ? Ratio.FromDecimalFractions(fraction) : null,
        };

    public static readonly Gen<Oven> Oven =
        from name in Name
        from fan in Gen.Bool
        from levels in Gen.Int[1, 20]
        from length in Gen.Double[0.1, 2]
        from width in Gen.Double[0.1, 2]
        select new Oven("", name, fan, levels, Length.FromMeters(length), Length.FromMeters(width));

    public static readonly Gen<Tray> Tray =
        from name in Name
        from count in Gen.Int[1, 40]
        from length in Gen.Double[0.1, 2]
        from width in Gen.Double[0.1, 2]
        select new Tray("", name, Length.FromMeters(length), Length.FromMeters(width), count);

    public static readonly Gen<KitchenDetails> Details =
        from name in Name
        from zone in Gen.OneOfConst("UTC", "Europe/London", "Asia/Kathmandu", "America/St_Johns")
        from altitude in Gen.Double[-400, 5000]
        from pressure in Gen.Double[50_000, 110_000].Nullable()
        from room in Gen.Double[0, 45]
        from humidity in Gen.Double[0, 1]
        from tap in Gen.Double[0, 40]
        from film in Gen.Double[0.01, 1].Nullable()
        from clinging in Gen.Double[0.01, 0.5].Nullable()
        select new KitchenDetails(name, zone, new KitchenSite
        {
            Altitude = Length.FromMeters(altitude),
            MeasuredPressure = pressure is { } pascals ? Pressure.FromPascals(pascals) : null,
            Room = Temperature.FromDegreesCelsius(room),
            Humidity = Ratio.FromDecimalFractions(humidity),
            TapWater = Temperature.FromDegreesCelsius(tap),
            OwnFilmFactor = film,
            OwnClinging = clinging is { } fraction ? Ratio.FromDecimalFractions(fraction) : null,
        });

    private static Gen<double?> Nullable(this Gen<double> values) =>
        Gen.OneOf(values.Select(value => (double?)value), Gen.Const((double?)null));
}
