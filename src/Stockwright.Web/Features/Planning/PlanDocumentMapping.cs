using Stockwright.Evidence;
using Stockwright.Larder;
using Stockwright.Planning;
using Stockwright.Simmering;
using Stockwright.Web.Fields;
using Stockwright.Web.Wording;
using UnitsNet;

namespace Stockwright.Web.Features.Planning;

/// <summary>Writes a plan as a document, by hand, so that the interface changes only when somebody means it to.</summary>
internal static class PlanDocumentMapping
{
    public static PlanDocument Make(BatchPlan plan, PlanView view) => new(
        view.LinkTo(plan.Request),
        view.Typed.Ignored,
        plan.Request.Recipe.Id,
        plan.Request.Recipe.Name,
        new PotDocument(
            plan.Request.Pot.Id,
            plan.Request.Pot.Name,
            plan.Request.Pot.BaseDiameter.Meters,
            plan.Request.Pot.BrimDiameter.Meters,
            plan.Request.Pot.InnerHeight.Meters,
            plan.Request.Pot.BrimVolume.CubicMeters,
            plan.Request.Pot.EmptyMass.Kilograms,
            plan.Request.Pot.Material,
            plan.Request.Pot.Kind,
            plan.Request.Pot.GaugePressure?.Pascals,
            (double?)plan.Request.Pot.HeaterPower?.Watts),
        plan.Request.Lid.Kind,
        plan.Request.Lid.OpenFraction.DecimalFractions,
        plan.Request.Pot.Kind == Stockwright.Kitchen.PotKind.SlowCooker ? plan.Request.Setting : null,
        plan.Request.SimmersInOven,
        Volumes(plan.Yield),
        Volumes(plan.Total),
        Fit(plan.Fit),
        [.. WishWays.Of(plan).Select(way => Way(way, view))],
        [.. plan.Amounts.Select(line => Amount(plan, line))],
        plan.Roast is { } roast ? Roast(roast) : null,
        plan.Blanch is { } blanch
            ? new BlanchDocument(blanch.Setting.Time.TotalSeconds, blanch.Water.CubicMeters, blanch.TimeToBoil.TotalSeconds, Masses(blanch.MassLoss), blanch.Setting.Source)
            : null,
        new HeatUpDocument(BandDocument.Of(plan.HeatUp.Time, time => time.TotalSeconds), plan.HeatUp.IsReached, plan.HeatUp.FinalTemperature.Kelvins),
        Simmer(plan.Simmer),
        new LedgerDocument(
            [.. plan.Ledger.In.Select(Entry)], [.. plan.Ledger.Out.Select(Entry)], plan.Ledger.TotalIn.CubicMeters, plan.Ledger.TotalOut.CubicMeters, Masses(plan.SpentSolids)),
        new BoilingDocument(
            plan.Boiling.Pressure.Pascals,
            plan.Boiling.PressureIsMeasured,
            plan.Boiling.BoilingPoint.Kelvins,
            plan.Boiling.Asked.Kelvins,
            plan.Boiling.Reached.Kelvins,
            plan.Boiling.IsOutOfReach,
            plan.Boiling.AskedTime.TotalSeconds,
            plan.Boiling.PlannedTime.TotalSeconds,
            BandDocument.Of(plan.Boiling.Stretch, factor => factor)),
        Timeline(plan.Timeline, view),
        [.. plan.Notices.Select(notice => Notice(notice, view.Units))],
        [.. plan.Assumptions.Select(Assumption)],
        view.Outlook is { } outlook ? PredictionDocumentMapping.Make(outlook, plan, view.Units) : null);

    public static NoticeDocument Notice(PlanNotice notice, UnitSystem units) =>
        new(notice.Level, notice.Code, TextTable.Of(notice, units), notice.Part is { } part ? PartFields.Of(part, null, units) : null);

    private static WayDocument Way(WishWay way, PlanView view) => new(
        way.Way,
        view.LinkTo(way.Plan.Request),
        way.Plan.Total.Central.CubicMeters,
        way.Plan.Fit.Potfuls,
        way.Plan.Fit.AtOnce,
        way.Plan.Fit.LetDown.CubicMeters,
        WishText.Body(way, view),
        way.Plan.Timeline.Start,
        way.Plan.Timeline.Ready,
        way.Plan.Timeline.HandsOn.TotalSeconds);

    private static FitDocument Fit(FitReport fit) => new(
        fit.Verdict,
        fit.Potfuls,
        fit.AtOnce,
        fit.Rounds,
        fit.LetDown.CubicMeters,
        fit.LargestYield.CubicMeters,
        fit.PotsThatFit,
        fit.SolidsDisplacement.CubicMeters,
        fit.SolidsHeight.Meters,
        fit.WaterToLine.CubicMeters,
        fit.FillLine.Meters,
        fit.FillLineFromRim.Meters,
        fit.HeldLine.Meters,
        fit.PeakLevel.Meters,
        fit.Freeboard.Meters,
        fit.SafeMaximum.Meters,
        fit.Limit,
        fit.CoverDepth.Meters,
        fit.IsCovered,
        fit.CoverDecidesWater);

    private static AmountDocument Amount(BatchPlan plan, AmountLine line) => new(
        line.Ingredient.Id,
        line.Ingredient.Name,
        line.Line.Role,
        line.Line.Preparation,
        line.Mass.Kilograms,
        line.AsBought.Kilograms,
        line.MassInPot.Kilograms,
        PieceCount.Describe(line.Ingredient, line.Mass)?.ToString() ?? (SmallMeasure.IsUnderScale(line.Mass, UnitSystem.Metric) ? SmallMeasure.Of(line.Ingredient, line.Mass) : null),
        line.JoinsAt.TotalSeconds,
        JoinText.Of(plan, line),
        line.Ingredient.Allergens);

    private static RoastDocument Roast(RoastPlan roast) => new(
        roast.Oven.Conventional.Kelvins,
        roast.Oven.Fan.Kelvins,
        roast.Oven.GasMark,
        roast.Oven.FahrenheitName,
        roast.HasFan,
        roast.Setting.Time.TotalSeconds,
        roast.TurnAt.TotalSeconds,
        roast.TotalTime.TotalSeconds,
        roast.VegetablesJoinBeforeEnd?.TotalSeconds,
        roast.PasteJoinsBeforeEnd?.TotalSeconds,
        roast.TrayName,
        roast.TraysToFill,
        roast.TraysAtOnce,
        roast.OvenRounds,
        [.. roast.Loads.Select(load => new TrayLoadDocument(
            load.What, load.Mass.Kilograms, load.AreaNeeded.SquareMeters, BandDocument.Of(load.Loading.Band, loading => loading.KilogramsPerSquareMeter)))],
        Masses(roast.MassLoss),
        Masses(roast.FatDrained),
        roast.Setting.Source);

    private static SimmerDocument Simmer(SimmerForecast simmer) => new(
        simmer.Length.TotalSeconds,
        Volumes(simmer.Evaporated),
        Volumes(simmer.ToppedUp),
        BandDocument.Of(simmer.EvaporationRate, rate => rate.CubicMetersPerSecond),
        BandDocument.Of(simmer.HobEnergy, energy => energy.Joules),
        simmer.HoldSetting.DecimalFractions,
        simmer.LowestLevel.Meters,
        new BooksDocument(
            simmer.Books.MassIn.Kilograms,
            simmer.Books.MassOut.Kilograms,
            simmer.Books.MassLeft.Kilograms,
            simmer.Books.EnergyIn.Joules,
            simmer.Books.EnergyOut.Joules,
            simmer.Books.EnergyLeft.Joules),
        [.. simmer.Checks.Select(check => new CheckDocument(
            check.At.TotalSeconds, check.LevelBefore.Meters, BandDocument.Of(check.LevelBeforeFromRim, level => level.Meters), Volumes(check.TopUp), check.LevelAfter.Meters))],
        [.. simmer.Samples.Select((sample, index) => new SampleDocument(
            sample.At.TotalSeconds,
            sample.Temperature.Kelvins,
            sample.Level.Meters,
            simmer.LevelBand[index].Low.Meters,
            simmer.LevelBand[index].High.Meters,
            sample.Liquid.CubicMeters,
            sample.Evaporated.CubicMeters,
            (double)sample.HeatIn.Watts))]);

    private static LedgerEntryDocument Entry(LedgerEntry entry) => new(entry.Key, entry.Name, Volumes(entry.Volume), entry.Note);

    private static TimelineDocument Timeline(Timeline timeline, PlanView view) => new(
        timeline.Start,
        timeline.HeatOn,
        timeline.HeatOff,
        timeline.Strained,
        timeline.Ready,
        timeline.HandsOn.TotalSeconds,
        [.. timeline.Steps.Select(step => new StepDocument(
            step.Kind,
            step.Title,
            step.Detail,
            step.At,
            step.Duration.TotalSeconds,
            step.HandsOn.TotalSeconds,
            step.InNight,
            step.CheckIndex,
            [.. step.Cautions.Select(caution => new CautionDocument(caution.Code, caution.Text, caution.Source))]))],
        [.. timeline.NightChoices.Select(choice => new NightChoiceDocument(
            choice.Code, choice.Title, choice.Consequence, view.LinkTo(choice.Request), choice.NightSteps, choice.Start, choice.Ready))]);

    public static AssumptionDocument Assumption(Assumption assumption) => new(
        assumption.Key,
        assumption.Name,
        InSi(assumption.Value.Central).Unit,
        BandDocument.Of(assumption.Value, quantity => InSi(quantity).Value),
        assumption.Provenance,
        assumption.Source,
        assumption.Effect);

    /// <summary>Value and unit; a kind of quantity not listed is given in the unit it came in, by name.</summary>
    private static (double Value, string Unit) InSi(IQuantity quantity) => quantity switch
    {
        MolarEnergy energy => (energy.JoulesPerMole, "joulesPerMole"),
        Ratio ratio => (ratio.DecimalFractions, "1"),
        Mass mass => (mass.Kilograms, "kilograms"),
        Volume volume => (volume.CubicMeters, "cubicMetres"),
        Length length => (length.Meters, "metres"),
        Area area => (area.SquareMeters, "squareMetres"),
        Temperature temperature => (temperature.Kelvins, "kelvins"),
        TemperatureDelta difference => (difference.Kelvins, "kelvins"),
        Power power => ((double)power.Watts, "watts"),
        Energy energy => (energy.Joules, "joules"),
        Pressure pressure => (pressure.Pascals, "pascals"),
        Density density => (density.KilogramsPerCubicMeter, "kilogramsPerCubicMetre"),
        AreaDensity loading => (loading.KilogramsPerSquareMeter, "kilogramsPerSquareMetre"),
        VolumeFlow flow => (flow.CubicMetersPerSecond, "cubicMetresPerSecond"),
        Duration duration => (duration.Seconds, "seconds"),
        _ => ((double)quantity.Value, quantity.Unit.ToString()),
    };

    private static BandDocument Volumes(Band<Volume> band) => BandDocument.Of(band, volume => volume.CubicMeters);

    private static BandDocument Masses(Band<Mass> band) => BandDocument.Of(band, mass => mass.Kilograms);

}
