using CsCheck;
using Stockwright.Kitchen;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Tests.Planning;

/// <summary>Random requests within what the planner accepts: every recipe, shape of pot, hob, lid, height, goal and night.</summary>
internal static class PlanGenerator
{
    private static readonly Gen<Pot> Pots =
        Gen.Select(Gen.Double[8, 60], Gen.Double[0.75, 1.4], Gen.Double[8, 60], Gen.Int[0, 8], Gen.Enum<WallMaterial>())
            .Select((diameter, taper, height, shape, material) =>
            {
                double brim = shape < 3 ? diameter : Math.Clamp(diameter * taper, 8, 120);
                Pot pot = PlanRequests.Tapered(diameter, brim, height);
                return pot with
                {
                    Material = material,
                    Kind = shape switch
                    {
                        5 => PotKind.PressureCooker,
                        6 => PotKind.SlowCooker,
                        7 => PotKind.Kettle,
                        _ => PotKind.Open,
                    },
                    HeaterPower = shape switch
                    {
                        6 => Power.FromWatts(100 + (300 * (taper - 0.75) / 0.65)),
                        7 => Power.FromKilowatts(3 + (40 * (taper - 0.75))),
                        _ => null,
                    },
                    EmptyMass = Pot.EstimateEmptyMass(pot.BaseDiameter, pot.BrimDiameter, pot.InnerHeight, material),
                };
            });

    private static readonly Gen<Hob> Hobs = Gen.Select(Gen.OneOfConst(HobKind.Gas, HobKind.Coil, HobKind.SmoothTop, HobKind.SolidPlate, HobKind.Induction), Gen.Double[-0.7, 1.4]).Select((kind, log) => PlanRequests.Hob(kind, Math.Pow(10, log)));

    private static readonly Gen<LidPosition> Lids = Gen.Select(Gen.Int[0, 2], Gen.Double[0.01, 0.6]).Select((kind, open) => kind switch
    {
        0 => LidPosition.Off,
        1 => LidPosition.On,
        _ => LidPosition.Ajar(Ratio.FromDecimalFractions(open)),
    });

    private static readonly Gen<KitchenSite> Sites =
        Gen.Select(Gen.Double[-400, 5000], Gen.Double[0, 45], Gen.Double[0, 1], Gen.Double[1, 35], Gen.Int[0, 3], Gen.Double[0.03, 1.5])
            .Select((altitude, room, humidity, tap, film, factor) => new KitchenSite
            {
                Altitude = Length.FromMeters(altitude),
                MeasuredPressure = film == 1 ? Pressure.FromHectopascals(500 + (factor * 390)) : null,
                Room = Temperature.FromDegreesCelsius(room),
                Humidity = Ratio.FromDecimalFractions(humidity),
                TapWater = Temperature.FromDegreesCelsius(tap),
                OwnFilmFactor = film == 0 ? factor : null,
                OwnClinging = film is 0 or 2 ? Ratio.FromDecimalFractions(0.01 + (factor / 1.5 * 0.49)) : null,
            });

    private static readonly Gen<StockRecipe> Recipes = Gen.Int[0, StandardRecipes.Book.Recipes.Count - 1].Select(index => StandardRecipes.Book.Recipes[index]);

    private static readonly Gen<PlanSchedule> Schedules =
        Gen.Select(Gen.Int[0, 365 * 96], Gen.Bool, Gen.Enum<NightPlan>(), Gen.Int[0, 47], Gen.Int[10, 40], Gen.Bool)
            .Select((quarter, startsAt, night, wakes, awake, london) =>
            {
                DateTimeOffset moment = PlanRequests.Morning + TimeSpan.FromMinutes(15.0 * quarter);
                TimeOnly wake = new TimeOnly(0, 0).AddMinutes(30 * wakes);
                return new PlanSchedule
                {
                    StartAt = startsAt ? moment : null,
                    ReadyBy = startsAt ? null : moment,
                    Night = night,
                    Now = awake % 3 == 0 ? moment.AddHours(awake - 20) : null,
                    Zone = london ? PlanRequests.London : TimeZoneInfo.Utc,
                    WakesAt = wake,
                    SleepsAt = wake.AddMinutes(30 * awake),
                };
            });

    private static readonly Gen<(double? Hours, double? Celsius, double CheckMinutes, TopUpRule TopUp)> Wishes =
        Gen.Select(Gen.Double[-1.7, 1.85], Gen.Double[40, 125], Gen.Double[20, 360], Gen.Enum<TopUpRule>(), Gen.Int[0, 3])
            .Select((logHours, celsius, check, topUp, which) =>
                (which is 1 or 3 ? Math.Pow(10, logHours) : (double?)null, which is 2 or 3 ? celsius : (double?)null, check, topUp));

    private static readonly Gen<(int Kind, double Amount, int Seed)> Goals = Gen.Select(Gen.Int[0, 2], Gen.Double[-1.3, 2], Gen.Int[0, 1000]);

    internal static readonly Gen<PlanRequest> Requests =
        Gen.Select(Recipes, Pots, Hobs, Lids, Sites, Schedules, Wishes, Goals).Select((recipe, pot, hob, lid, site, schedule, wish, goal) => new PlanRequest
        {
            Recipe = recipe,
            Larder = Stockwright.Larder.StandardLarder.Table,
            Pot = pot,
            Hob = hob,
            Lid = lid,
            Site = site,
            Oven = goal.Seed % 3 == 0 ? null : new Oven("oven", "Oven", HasFan: goal.Seed % 2 == 0, Levels: 1 + (goal.Seed % 4), Length.FromCentimeters(60), Length.FromCentimeters(40)),
            Trays = goal.Seed % 5 == 0 ? [] : [new Tray("tray", "Tray", Length.FromCentimeters(40), Length.FromCentimeters(30), 1 + (goal.Seed % 6))],
            OtherPots = [PlanRequests.Straight(36, 36), PlanRequests.Straight(20, 12)],
            Goal = Goal(recipe, goal.Kind, Math.Pow(10, goal.Amount), goal.Seed),
            Schedule = schedule,
            SimmerTime = wish.Hours is { } hours ? TimeSpan.FromHours(hours) : null,
            SimmerTemperature = wish.Celsius is { } celsius ? Temperature.FromDegreesCelsius(celsius) : null,
            CheckInterval = TimeSpan.FromMinutes(wish.CheckMinutes),
            TopUp = wish.TopUp,
            FillTo = Mark(goal.Seed),
            Way = goal.Seed % 11 is var way && way < 4 ? (SplitWay)way : null,
            SimmersInOven = goal.Seed % 13 == 0,
            Setting = goal.Seed % 2 == 0 ? SlowCookerSetting.High : SlowCookerSetting.Low,
            PotCount = 1 + (goal.Seed % 3),
            HobCount = 1 + (goal.Seed % 4),
            WithOptional = goal.Seed % 4 == 0 ? [] : recipe.Lines.Where(line => line.IsOptional).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal),
            LeftOut = goal.Seed % 7 == 0 ? recipe.Lines.Where(line => line.Role == LineRole.Mirepoix).Select(line => line.IngredientId).ToHashSet(StringComparer.Ordinal) : new HashSet<string>(StringComparer.Ordinal),
        });

    private static FillMark? Mark(int seed) => (seed % 9) switch
    {
        0 => new FillMark.ShareOfHeight(Ratio.FromPercent(75)),
        1 => new FillMark.Depth(Length.FromCentimeters(9)),
        2 => new FillMark.BelowRim(Length.FromCentimeters(6)),
        _ => null,
    };

    private static PlanGoal Goal(StockRecipe recipe, int kind, double amount, int seed) => kind switch
    {
        0 => new PlanGoal.FillPot(),
        1 => new PlanGoal.MakeVolume(Volume.FromLiters(amount), seed % 2 == 0 ? Volume.FromMilliliters(250) : null),
        _ => new PlanGoal.UseBones([.. recipe.Lines.Where(line => line.Role == LineRole.Bones).Select(line => new BonesAtHand(line.IngredientId, Mass.FromKilograms(amount))).Take(1 + (seed % 3))]),
    };
}
