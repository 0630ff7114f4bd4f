using System.Text.Json;
using Stockwright.Evidence;
using Stockwright.Planning;
using Stockwright.Simmering;
using UnitsNet;

namespace Stockwright.Web.Features.Planning.Saved;

/// <summary>
/// Puts what a batch of a version before documents was given as its plan over that plan worked out now, as far as the text tells: the model has
/// changed since, what the cook was told has not. The names of the fields are those of the versions that wrote it.
/// </summary>
internal static class OldPlanText
{
    /// <summary>The plan as it was given.</summary>
    /// <param name="plan">The same plan, worked out now.</param>
    /// <param name="text">What the interface for programs gave then.</param>
    /// <exception cref="JsonException">The text is no plan.</exception>
    public static BatchPlan Over(BatchPlan plan, string text)
    {
        try
        {
            using JsonDocument document = JsonDocument.Parse(text);
            return Over(plan, document.RootElement);
        }
        catch (Exception trouble) when (trouble is KeyNotFoundException or InvalidOperationException or FormatException or ArgumentException)
        {
            throw new JsonException("The stored text is no plan.", trouble);
        }
    }

    private static BatchPlan Over(BatchPlan plan, JsonElement text)
    {
        FitReport fit = Fit(plan.Fit, text.GetProperty("fit"));
        JsonElement[] amounts = [.. text.GetProperty("amounts").EnumerateArray()];
        bool alike = amounts.Select(line => line.GetProperty("ingredient").GetString()).SequenceEqual(plan.Amounts.Select(line => line.Ingredient.Id), StringComparer.Ordinal);
        JsonElement ledger = text.GetProperty("ledger");
        Assumption[] assumptions = [.. text.GetProperty("assumptions").EnumerateArray().Select(Assumed)];
        return plan with
        {
            Request = plan.Request with { Assumptions = assumptions.Aggregate(plan.Request.Assumptions, WithFigure) },
            Yield = Band(text, "yieldCubicMetres", static value => Volume.FromCubicMeters(value)),
            Fit = fit,
            Amounts = alike ? [.. plan.Amounts.Zip(amounts, Amount)] : plan.Amounts,
            Blanch = plan.Blanch is { } blanch && text.GetProperty("blanch") is { ValueKind: JsonValueKind.Object } water ? Blanch(blanch, water) : plan.Blanch,
            HeatUp = HeatUp(text.GetProperty("heatUp")),
            Simmer = Simmer(plan.Simmer, text.GetProperty("simmer")),
            Ledger = new WaterLedger(Rows(ledger, "in"), Rows(ledger, "out")),
            SpentSolids = ledger.TryGetProperty("spentSolidsKilograms", out _) ? Band(ledger, "spentSolidsKilograms", static value => Mass.FromKilograms(value)) : plan.SpentSolids,
            Boiling = Boiling(plan.Boiling, text.GetProperty("boiling")),
            Timeline = Laid(plan.Timeline, text.GetProperty("timeline")),
            Notices = [.. text.GetProperty("notices").EnumerateArray().Select(row => new PlanNotice(Word<NoticeLevel>(row, "level"), Text(row, "code"), Maybe(row, "field") is { } field ? PartFields.PartOf(field) : null) { Words = Text(row, "message") })],
            Assumptions = assumptions,
            Size = plan.Size with
            {
                Load = alike ? plan.Size.Load * (amounts[0].GetProperty("massKilograms").GetDouble() / plan.Amounts[0].Mass.Kilograms) : plan.Size.Load,
                Water = Cold(fit.WaterToLine),
                Line = fit.FillLine,
                HeldLine = fit.HeldLine,
                LetDown = Cold(fit.LetDown),
                CoverDecides = fit.CoverDecidesWater,
            },
        };
    }

    private static FitReport Fit(FitReport fit, JsonElement row) => fit with
    {
        LargestYield = Litres(row, "largestYieldCubicMetres"),
        SolidsDisplacement = Litres(row, "solidsDisplacementCubicMetres"),
        SolidsHeight = Metres(row, "solidsHeightMetres"),
        WaterToLine = Litres(row, "waterToLineCubicMetres"),
        FillLine = Metres(row, "fillLineMetres"),
        FillLineFromRim = Metres(row, "fillLineFromRimMetres"),
        HeldLine = Metres(row, row.TryGetProperty("heldLineMetres", out _) ? "heldLineMetres" : "fillLineMetres"),
        LetDown = row.TryGetProperty("letDownCubicMetres", out _) ? Litres(row, "letDownCubicMetres") : Volume.Zero,
        PeakLevel = Metres(row, "peakLevelMetres"),
        Freeboard = Metres(row, "freeboardMetres"),
        SafeMaximum = Metres(row, "safeMaximumMetres"),
        Limit = Word<FillLimit>(row, "limit"),
        CoverDepth = Metres(row, "coverDepthMetres"),
        CoverDecidesWater = row.GetProperty("coverDecidesWater").GetBoolean(),
    };

    private static AmountLine Amount(AmountLine line, JsonElement row) => line with
    {
        Mass = Mass.FromKilograms(Number(row, "massKilograms")),
        AsBought = Mass.FromKilograms(Number(row, "asBoughtMassKilograms")),
        MassInPot = Mass.FromKilograms(Number(row, "inPotMassKilograms")),
        JoinsAt = Time(row, "joinsAtSeconds"),
    };

    private static BlanchPlan Blanch(BlanchPlan blanch, JsonElement row) => blanch with
    {
        Water = Litres(row, "waterCubicMetres"),
        TimeToBoil = Time(row, "timeToBoilSeconds"),
        MassLoss = Band(row, "massLossKilograms", static value => Mass.FromKilograms(value)),
    };

    private static HeatUp HeatUp(JsonElement row) =>
        new(Band(row, "timeSeconds", TimeSpan.FromSeconds), row.GetProperty("isReached").GetBoolean(), Kelvins(row, "finalTemperatureKelvins"));

    private static SimmerForecast Simmer(SimmerForecast simmer, JsonElement row)
    {
        JsonElement[] samples = [.. row.GetProperty("samples").EnumerateArray()];
        JsonElement sums = row.GetProperty("books");
        return simmer with
        {
            Samples = [.. samples.Select(sample => new SimmerSample(
                Time(sample, "atSeconds"),
                Kelvins(sample, "temperatureKelvins"),
                Metres(sample, "levelMetres"),
                Litres(sample, "liquidCubicMetres"),
                Litres(sample, "evaporatedCubicMetres"),
                Power.FromWatts(Number(sample, "heatInWatts"))))],
            LevelBand = [.. samples.Select(sample => (Metres(sample, "levelLowMetres"), Metres(sample, "levelHighMetres")))],
            Checks = [.. row.GetProperty("checks").EnumerateArray().Select(check => new SimmerCheck(
                Time(check, "atSeconds"),
                Metres(check, "levelBeforeMetres"),
                Band(check, "levelBeforeFromRimMetres", static value => Length.FromMeters(value)),
                Band(check, "topUpCubicMetres", static value => Volume.FromCubicMeters(value)),
                Metres(check, "levelAfterMetres")))],
            Length = Time(row, "timeSeconds"),
            Evaporated = Band(row, "evaporatedCubicMetres", static value => Volume.FromCubicMeters(value)),
            ToppedUp = Band(row, "toppedUpCubicMetres", static value => Volume.FromCubicMeters(value)),
            EvaporationRate = Band(row, "evaporationRateCubicMetresPerSecond", static value => VolumeFlow.FromCubicMetersPerSecond(value)),
            HobEnergy = Band(row, "hobEnergyJoules", static value => Energy.FromJoules(value)),
            HoldSetting = Ratio.FromDecimalFractions(Number(row, "holdSettingFraction")),
            LowestLevel = Metres(row, "lowestLevelMetres"),
            Books = new SimmerBooks(
                Mass.FromKilograms(Number(sums, "massInKilograms")),
                Mass.FromKilograms(Number(sums, "massOutKilograms")),
                Mass.FromKilograms(Number(sums, "massLeftKilograms")),
                Energy.FromJoules(Number(sums, "energyInJoules")),
                Energy.FromJoules(Number(sums, "energyOutJoules")),
                Energy.FromJoules(Number(sums, "energyLeftJoules"))),
        };
    }

    private static List<LedgerEntry> Rows(JsonElement ledger, string side) =>
        [.. ledger.GetProperty(side).EnumerateArray().Select(row => new LedgerEntry(Text(row, "key"), Text(row, "name"), Band(row, "volumeCubicMetres", static value => Volume.FromCubicMeters(value)), Text(row, "note")))];

    private static BoilingReport Boiling(BoilingReport boiling, JsonElement row) => boiling with
    {
        Pressure = Pressure.FromPascals(Number(row, "pressurePascals")),
        PressureIsMeasured = row.GetProperty("pressureIsMeasured").GetBoolean(),
        BoilingPoint = Kelvins(row, "boilingPointKelvins"),
        Asked = Kelvins(row, "askedTemperatureKelvins"),
        Reached = Kelvins(row, "reachedTemperatureKelvins"),
        AskedTime = Time(row, "askedTimeSeconds"),
        PlannedTime = Time(row, "plannedTimeSeconds"),
        Stretch = Band(row, "stretch", value => value),
    };

    private static Timeline Laid(Timeline timeline, JsonElement row)
    {
        // A step's name is its kind and its count, then as now.
        Dictionary<StepKind, int> counts = [];
        List<PlanStep> steps = [];
        foreach (JsonElement step in row.GetProperty("steps").EnumerateArray())
        {
            StepKind kind = Word<StepKind>(step, "kind");
            int count = counts[kind] = counts.GetValueOrDefault(kind) + 1;
            steps.Add(new PlanStep
            {
                Key = FormattableString.Invariant($"{kind.ToString().ToLowerInvariant()}-{count}"),
                Kind = kind,
                Title = Text(step, "title"),
                Detail = Text(step, "detail"),
                At = step.GetProperty("at").GetDateTimeOffset(),
                Duration = Time(step, "timeSeconds"),
                HandsOn = Time(step, "handsOnSeconds"),
                InNight = step.GetProperty("inNight").GetBoolean(),
                CheckIndex = step.GetProperty("checkIndex") is { ValueKind: JsonValueKind.Number } index ? index.GetInt32() : null,
                Cautions = [.. step.GetProperty("cautions").EnumerateArray().Select(one => new Caution(Text(one, "code"), Text(one, "text"), Text(one, "source")))],
            });
        }

        DateTimeOffset At(string name) => row.GetProperty(name).GetDateTimeOffset();
        DateTimeOffset strained = At("strained");
        DateTimeOffset cold = steps.Find(step => step.Kind == StepKind.Cool)?.End ?? strained;
        return timeline with
        {
            Steps = steps,
            Start = At("start"),
            HeatOn = At("heatOn"),
            HeatOff = At("heatOff"),
            Strained = strained,
            Ready = At("ready"),
            HandsOn = Time(row, "handsOnSeconds"),
            NightChoices = [],
            Rounds = [new RoundTimes(At("start"), At("heatOn"), At("heatOff"), strained, cold)],
        };
    }

    /// <summary>The figures it was planned with, of those that were told; what the cook had weighed stands with the kitchen.</summary>
    private static SimmerAssumptions WithFigure(SimmerAssumptions figures, Assumption told)
    {
        string? key = told.Key switch
        {
            "film-factor" => "surface-film",
            "retained" => "clings-to-bones",
            "cover" => "cover-depth",
            "skimmed" or "strain-loss" or "defat-loss" => told.Key,
            _ => null,
        };
        return key is null || told.Provenance == Provenance.CookStated
            ? figures
            : figures.With(key, new Stated<double>(Number(told.Value.Central), Number(told.Value.Low), Number(told.Value.High), told.Provenance, told.Source));

        static double Number(IQuantity value) => value is Length length ? length.Meters : ((Ratio)value).DecimalFractions;
    }

    private static Assumption Assumed(JsonElement row)
    {
        IQuantity Of(double value) => Text(row, "unit") switch
        {
            "kelvins" => Temperature.FromKelvins(value),
            "kilograms" => Mass.FromKilograms(value),
            "kilogramsPerCubicMetre" => Density.FromKilogramsPerCubicMeter(value),
            "metres" => Length.FromMeters(value),
            "pascals" => Pressure.FromPascals(value),
            "watts" => Power.FromWatts(value),
            "1" => Ratio.FromDecimalFractions(value),
            var unit => throw new FormatException($"No assumption was in '{unit}'."),
        };
        return new Assumption(Text(row, "key"), Text(row, "name"), Band(row, "value", Of), Word<Provenance>(row, "provenance"), Text(row, "source"), Text(row, "effect"));
    }

    private static double Number(JsonElement row, string name) => row.GetProperty(name).GetDouble();

    private static string Text(JsonElement row, string name) => row.GetProperty(name).GetString() ?? throw new FormatException($"'{name}' is missing.");

    private static string? Maybe(JsonElement row, string name) => row.TryGetProperty(name, out JsonElement text) ? text.GetString() : null;

    private static T Word<T>(JsonElement row, string name)
        where T : struct, Enum => Enum.Parse<T>(Text(row, name), ignoreCase: true);

    private static TimeSpan Time(JsonElement row, string name) => TimeSpan.FromSeconds(Number(row, name));

    private static Length Metres(JsonElement row, string name) => Length.FromMeters(Number(row, name));

    private static Volume Litres(JsonElement row, string name) => Volume.FromCubicMeters(Number(row, name));

    private static Temperature Kelvins(JsonElement row, string name) => Temperature.FromKelvins(Number(row, name));

    /// <summary>Volumes in a plan are as if measured cold, at 20 °C: 998.2 kg/m3.</summary>
    private static Mass Cold(Volume volume) => Mass.FromKilograms(volume.CubicMeters * 998.2);

    private static Band<T> Band<T>(JsonElement row, string name, Func<double, T> unit)
    {
        JsonElement band = row.GetProperty(name);
        return new Band<T>(unit(Number(band, "low")), unit(Number(band, "central")), unit(Number(band, "high")));
    }
}
