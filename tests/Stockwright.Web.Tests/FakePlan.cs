using Stockwright.Evidence;
using Stockwright.Kitchen;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Recipes;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Web.Tests;

/// <summary>A plan with made-up but well-formed figures, for tests of pages and interface alone. No cook should believe it.</summary>
internal static class FakePlan
{
    public static PlanResult Plan(PlanRequest request) => new(For(request), []);

    public static BatchPlan For(PlanRequest request)
    {
        Pot pot = request.Pot;
        double litres = request.Goal switch
        {
            PlanGoal.MakeVolume volume => volume.Yield.Liters,
            PlanGoal.UseBones bones => bones.Bones.Sum(row => row.Mass.Kilograms),
            _ => pot.BrimVolume.Liters * 0.4,
        };
        Length rim = pot.InnerHeight;
        Length line = rim * 0.74;
        DateTimeOffset start = request.Schedule.StartAt ?? (request.Schedule.ReadyBy ?? DateTimeOffset.UnixEpoch).AddHours(-27);
        DateTimeOffset heatOn = start.AddHours(2);
        SimmerForecast forecast = Forecast(rim, line, litres);
        return new BatchPlan
        {
            Request = request,
            Size = new PotSize(Volume.FromLiters(litres), Mass.FromKilograms(litres * 1.4), line, line, Mass.Zero, CoverDecides: false, []),
            Yield = Around(litres, 0.15, Volume.FromLiters),
            Fit = new FitReport
            {
                Verdict = FitVerdict.Fits,
                Potfuls = 1,
                LargestYield = Volume.FromLiters(litres * 1.05),
                PotsThatFit = [.. request.OtherPots.Select(other => other.Name)],
                SolidsDisplacement = Volume.FromLiters(litres * 0.8),
                SolidsHeight = rim * 0.55,
                WaterToLine = Volume.FromLiters(litres * 1.4),
                FillLine = line,
                HeldLine = line,
                FillLineFromRim = rim - line,
                PeakLevel = rim * 0.77,
                Freeboard = rim * 0.23,
                SafeMaximum = rim * 0.77,
                Limit = FillLimit.FiveCentimetresFreeboard,
                CoverDepth = rim * 0.19,
                CoverDecidesWater = false,
            },
            Amounts = [.. request.Recipe.Lines.Where(recipeLine => !request.LeftOut.Contains(recipeLine.IngredientId)).Select(recipeLine => Amount(request.Larder, recipeLine, litres))],
            Roast = request.Recipe.Roast is { } setting ? Roast(setting, litres) : null,
            Blanch = request.Recipe.Blanch is { } blanch
                ? new BlanchPlan(blanch, Volume.FromLiters(litres), TimeSpan.FromMinutes(25), Around(litres * 0.02, 0.5, Mass.FromKilograms))
                : null,
            HeatUp = new HeatUp(new Band<TimeSpan>(TimeSpan.FromMinutes(28), TimeSpan.FromMinutes(32), TimeSpan.FromMinutes(38)), IsReached: true, Temperature.FromDegreesCelsius(93)),
            Simmer = forecast,
            Ledger = new WaterLedger(
                [
                    new LedgerEntry("line", "Water to the line", Around(litres * 1.4, 0, Volume.FromLiters), "Measured cold."),
                    new LedgerEntry("top-ups", "Top-ups", Around(litres * 0.1, 0.5, Volume.FromLiters), "At the checks."),
                ],
                [
                    new LedgerEntry("evaporated", "Gone as steam", Around(litres * 0.3, 0.5, Volume.FromLiters), "Most of it in the simmer."),
                    new LedgerEntry("retained", "Left in the spent bones", Around(litres * 0.2, 0.3, Volume.FromLiters), "Let it drip for ten minutes."),
                    new LedgerEntry("yield", "Stock", Around(litres, 0.15, Volume.FromLiters), "Strained and defatted."),
                ]),
            SpentSolids = Around(litres * 0.5, 0.15, Mass.FromKilograms),
            Boiling = new BoilingReport
            {
                Pressure = Pressure.FromHectopascals(999),
                PressureIsMeasured = false,
                BoilingPoint = Temperature.FromDegreesCelsius(99.6),
                Hottest = Temperature.FromDegreesCelsius(99.6),
                Asked = Temperature.FromDegreesCelsius(93),
                Reached = Temperature.FromDegreesCelsius(93),
                AskedTime = TimeSpan.FromHours(4),
                PlannedTime = TimeSpan.FromHours(4),
                Stretch = new Band<double>(1, 1, 1),
            },
            Timeline = Timeline(request, start, heatOn, forecast),
            Notices = [new PlanNotice(NoticeLevel.Hint, "made-up", null) { Words = "These figures are made up." }],
            Assumptions =
            [
                new Assumption(
                    "film-factor",
                    "Film on the surface",
                    new Band<IQuantity>(Ratio.FromDecimalFractions(0.15), Ratio.FromDecimalFractions(0.3), Ratio.FromDecimalFractions(1)),
                    Provenance.Estimate,
                    "Fitted to one school ratio",
                    "How much goes as steam"),
            ],
        };
    }

    private static AmountLine Amount(LarderTable larder, RecipeLine line, double litres)
    {
        Ingredient ingredient = larder.Get(line.IngredientId);
        Mass mass = line.PerLitre.Value * litres;
        return new AmountLine(ingredient, line, mass, ingredient.AsBought(mass), mass * 0.8, line.Joins == JoinMoment.Start ? TimeSpan.Zero : TimeSpan.FromHours(1));
    }

    private static SimmerForecast Forecast(Length rim, Length line, double litres)
    {
        List<SimmerSample> samples = [.. Enumerable.Range(0, 60).Select(index => new SimmerSample(
            TimeSpan.FromMinutes(5 * index),
            Temperature.FromDegreesCelsius(Math.Min(93, 15 + (index * 13))),
            line * (1 - (0.03 * (index % 15) / 15.0)),
            Volume.FromLiters(litres * 1.3),
            Volume.FromLiters(litres * index * 0.005),
            Power.FromWatts(index < 7 ? 2800 : 500)))];
        return new SimmerForecast
        {
            Samples = samples,
            LevelBand = [.. samples.Select(sample => (sample.Level * 0.98, sample.Level * 1.01))],
            Checks = [.. Enumerable.Range(1, 3).Select(index => new SimmerCheck(
                TimeSpan.FromMinutes(75 * index),
                line * 0.97,
                Around((rim - (line * 0.97)).Millimeters, 0.08, Length.FromMillimeters),
                Around(index == 2 ? 0 : 0.35, 0.5, Volume.FromLiters),
                line))],
            Length = TimeSpan.FromMinutes(295),
            Evaporated = Around(litres * 0.3, 0.5, Volume.FromLiters),
            ToppedUp = Around(litres * 0.1, 0.5, Volume.FromLiters),
            EvaporationRate = Around(litres * 0.07, 0.5, VolumeFlow.FromLitersPerHour),
            HobEnergy = Around(3.4, 0.15, Energy.FromKilowattHours),
            HoldSetting = Ratio.FromDecimalFractions(0.17),
            LowestLevel = line * 0.97,
            Books = new SimmerBooks(Mass.FromKilograms(10), Mass.FromKilograms(2), Mass.FromKilograms(8), Energy.FromMegajoules(10), Energy.FromMegajoules(7), Energy.FromMegajoules(3)),
        };
    }

    private static RoastPlan Roast(RoastSetting setting, double litres) => new()
    {
        Setting = setting,
        Solids = "the bones",
        VegetablesJoinBeforeEnd = setting.VegetablesJoinBeforeEnd,
        Oven = OvenScale.Nearest(setting.OvenTemperature),
        HasFan = true,
        Loads =
        [
            new TrayLoad("chicken carcass, chicken wing", Mass.FromKilograms(litres * 0.8), Area.FromSquareMeters(0.3), new Stated<AreaDensity>(
                AreaDensity.FromKilogramsPerSquareMeter(12), AreaDensity.FromKilogramsPerSquareMeter(8), AreaDensity.FromKilogramsPerSquareMeter(16), Provenance.Estimate, "laid out once")),
        ],
        TrayName = "Oven tray",
        TraysToFill = 2,
        TraysAtOnce = 2,
        OvenRounds = 1,
        TurnAt = TimeSpan.FromMinutes(30),
        TotalTime = TimeSpan.FromMinutes(75),
        MassLoss = Around(litres * 0.2, 0.3, Mass.FromKilograms),
        FatDrained = Around(litres * 0.05, 0.5, Mass.FromKilograms),
    };

    private static Timeline Timeline(PlanRequest request, DateTimeOffset start, DateTimeOffset heatOn, SimmerForecast forecast)
    {
        DateTimeOffset heatOff = heatOn + forecast.Length;
        Caution scald = new("scald-straining", "Near-boiling liquid: two people lift a pot this heavy, or ladle it out.", "common practice, no source");
        List<PlanStep> steps =
        [
            Step(StepKind.Gather, "Weigh and gather", start, 20, 20),
            Step(StepKind.Roast, "Roast the bones", start.AddMinutes(20), 75, 10) with { Cautions = [new Caution("hot-fat", "Hot fat runs in the tray: pull the shelf out level.", "common practice, no source")] },
            Step(StepKind.Fill, "Fill to the line", heatOn.AddMinutes(-15), 15, 15),
            Step(StepKind.HeatUp, "Bring to the simmer, lid off", heatOn, 32, 5),
            Step(StepKind.Skim, "Skim", heatOn.AddMinutes(32), 10, 10) with { Detail = "Lift the scum as it rises." },
        ];
        steps.AddRange(forecast.Checks.Select((check, index) => Step(StepKind.Check, "Skim and read the level", heatOn + check.At, 5, 5) with { CheckIndex = index, InNight = index == 2 }));
        steps.AddRange(
        [
            Step(StepKind.Strain, "Strain", heatOff.AddMinutes(20), 20, 20) with { Cautions = [scald] },
            Step(StepKind.Cool, "Cool in an ice bath", heatOff.AddMinutes(40), 60, 15),
            Step(StepKind.Chill, "Chill overnight", heatOff.AddMinutes(100), 720, 0),
            Step(StepKind.Portion, "Measure, portion, label", heatOff.AddMinutes(820), 30, 30),
        ]);
        PlanRequest earlier = request with { Schedule = request.Schedule with { StartAt = start.AddHours(-3), ReadyBy = null } };
        steps = [.. steps.Select((step, index) => step with { Key = $"{step.Key}-{index + 1}" })];
        return new Timeline(
            steps,
            start,
            heatOn,
            heatOff,
            heatOff.AddMinutes(40),
            steps[^1].End,
            TimeSpan.FromMinutes(steps.Sum(step => step.HandsOn.TotalMinutes)),
            [new NightChoice("move-start", "Start three hours earlier", "Every check falls in the day.", earlier, 0, start.AddHours(-3), steps[^1].End.AddHours(-3))]);
    }

    private static PlanStep Step(StepKind kind, string title, DateTimeOffset at, int minutes, int hands) => new()
    {
        Key = $"{kind}-{at:HHmm}",
        Kind = kind,
        Title = title,
        At = at,
        Duration = TimeSpan.FromMinutes(minutes),
        HandsOn = TimeSpan.FromMinutes(hands),
    };

    private static Band<T> Around<T>(double central, double spread, Func<QuantityValue, T> unit) =>
        new(unit(central * (1 - spread)), unit(central), unit(central * (1 + spread)));
}
