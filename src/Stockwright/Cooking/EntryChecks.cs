using System.Globalization;
using Stockwright.Kitchen;
using Stockwright.Logbook;
using Stockwright.Measures;
using Stockwright.Planning;
using UnitsNet;

namespace Stockwright.Cooking;

/// <summary>What is wrong with an entry before it is stored, in the cook's words.</summary>
public static class EntryChecks
{
    /// <summary>A clock may be ahead by this much.</summary>
    internal static readonly TimeSpan ClockSlack = TimeSpan.FromMinutes(2);

    /// <summary>Earliest and latest temperature a kitchen thermometer is believed.</summary>
    public static readonly (Temperature Least, Temperature Most) TemperatureRange = (Temperature.FromDegreesCelsius(-30), Temperature.FromDegreesCelsius(130));

    private static readonly TimeSpan BeforeStart = TimeSpan.FromDays(1);
    private const int LongestText = 4000;

    /// <summary>Lists what is wrong; empty when the entry may be stored.</summary>
    /// <param name="draft">The entry, not stored yet.</param>
    /// <param name="batch">The batch it is for.</param>
    /// <param name="log">The batch's log without it.</param>
    /// <param name="now">The present by the server's clock.</param>
    /// <returns>Problems with the field each belongs to: at, corrects, step, below, water, degrees, probe, hob, lid, until, why, lost, strained, spent, action, fat, brix, body, portioned, text, next-time, attended, metered.</returns>
    public static IReadOnlyList<InputProblem> Problems(LogEntry draft, Batch batch, BatchLog log, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ArgumentNullException.ThrowIfNull(batch);
        ArgumentNullException.ThrowIfNull(log);
        List<InputProblem> problems = [];
        Time(problems, draft, batch, now);
        NeverCooked(problems, draft, log);
        Correction(problems, draft, log);
        if (log.IsClosed && draft.Corrects is null && draft.Fact is not (LogFact.Noted or LogFact.Withdrawn))
        {
            problems.Add(new InputProblem("at", "This record is closed: it takes notes, corrections and withdrawals only."));
        }

        Fact(problems, draft, batch, now);
        return problems;
    }

    private static void Time(List<InputProblem> problems, LogEntry draft, Batch batch, DateTimeOffset now)
    {
        DateTimeOffset start = batch.StartedAt < batch.Planned.Timeline.Start ? batch.StartedAt : batch.Planned.Timeline.Start;
        if (draft.HappenedAt > now + ClockSlack)
        {
            problems.Add(new InputProblem("at", string.Create(
                CultureInfo.InvariantCulture, $"That has not happened yet: it is {TimeZoneInfo.ConvertTime(now, batch.Zone):HH:mm} here.")));
        }
        else if (draft.HappenedAt < start - BeforeStart)
        {
            problems.Add(new InputProblem("at", string.Create(
                CultureInfo.InvariantCulture, $"That is more than a day before this batch began, on {TimeZoneInfo.ConvertTime(start, batch.Zone):d MMM HH:mm}.")));
        }
    }

    /// <summary>What is on the heat or cooling must not slip out of sight by being put aside.</summary>
    private static void NeverCooked(List<InputProblem> problems, LogEntry draft, BatchLog log)
    {
        if (draft.Fact is LogFact.NeverCooked && log.FirstCooked is { } cooked)
        {
            problems.Add(new InputProblem("", string.Create(
                CultureInfo.InvariantCulture, $"Entry {cooked.Number} says that this was cooked. Close the record instead, or take that entry back first if it is wrong.")));
        }
    }

    private static void Correction(List<InputProblem> problems, LogEntry draft, BatchLog log)
    {
        if (draft.Corrects is not { } id)
        {
            if (draft.Fact is LogFact.Withdrawn)
            {
                problems.Add(new InputProblem("corrects", "Say which entry is taken back."));
            }

            return;
        }

        LogEntry? old = log.Find(id);
        if (old is null || id == draft.Id)
        {
            problems.Add(new InputProblem("corrects", "The entry to be corrected is not in this batch's log."));
        }
        else if (old.Fact is LogFact.Withdrawn)
        {
            problems.Add(new InputProblem("corrects", "That entry takes another one back; make a new entry instead."));
        }
        else if (log.SupersededBy(old) is { } later)
        {
            problems.Add(new InputProblem("corrects", string.Create(
                CultureInfo.InvariantCulture, $"That entry was {(later.Fact is LogFact.Withdrawn ? "taken back" : "corrected")} already, by entry {later.Number}.")));
        }
    }

    private static void Fact(List<InputProblem> problems, LogEntry draft, Batch batch, DateTimeOffset now)
    {
        Pot pot = batch.Planned.Request.Pot;
        Volume brim = pot.BrimVolume;
        void Need(bool holds, string field, string message)
        {
            if (!holds)
            {
                problems.Add(new InputProblem(field, message));
            }
        }

        void NeedVolume(Volume volume, string field, string what) =>
            Need(volume > Volume.Zero && volume.Liters <= brim.Liters * (1 + 1e-9), field, $"{what} must be above nothing and at most what the pot holds, {KitchenFormat.Both(brim)}.");

        void NeedText(string text, string field, bool required = false) =>
            Need(text.Length <= LongestText && (!required || !string.IsNullOrWhiteSpace(text)), field, text.Length > LongestText ? "That is too long to print: 4000 characters at most." : "Write something.");

        switch (draft.Fact)
        {
            case LogFact.StepDone done:
                Need(batch.Planned.Timeline.Steps.Any(step => string.Equals(step.Key, done.StepKey, StringComparison.Ordinal)), "step", "This plan has no such step.");
                break;
            case LogFact.LevelRead level:
                Need(level.BelowRim >= Length.Zero && level.BelowRim.Meters <= pot.InnerHeight.Meters * (1 + 1e-9), "below", $"The level lies between the rim and the base: this pot is {KitchenFormat.Both(pot.InnerHeight)} deep.");
                break;
            case LogFact.WaterAdded water:
                NeedVolume(water.Volume, "water", "Water added");
                break;
            case LogFact.TemperatureRead read:
                Need(read.Temperature.DegreesCelsius >= TemperatureRange.Least.DegreesCelsius && read.Temperature.DegreesCelsius <= TemperatureRange.Most.DegreesCelsius, "degrees", "A temperature lies between -30 and 130 °C (-22 and 266 °F).");
                NeedText(read.Probe, "probe");
                break;
            case LogFact.HeatMoved moved:
                Need(!string.IsNullOrWhiteSpace(moved.HobId), "hob", "Say which heat it stands on now.");
                break;
            case LogFact.LidChanged lid:
                Need(Enum.IsDefined(lid.Lid.Kind) && (lid.Lid.Kind != LidKind.Ajar || lid.Lid.OpenFraction.DecimalFractions is >= 0.01 and <= 0.6), "lid", "A lid ajar leaves 1 to 60 % of the mouth open.");
                break;
            case LogFact.HeatLost lost:
                Need(lost.Until is not { } until || until > draft.HappenedAt, "until", "The heat cannot come back before it goes.");
                Need(lost.Until is not { } back || back <= now + ClockSlack, "until", "Leave this empty while the heat is still away.");
                NeedText(lost.Why, "why");
                break;
            case LogFact.BoiledOver { Lost: { } spilt }:
                NeedVolume(spilt, "lost", "What boiled over");
                break;
            case LogFact.Paused paused:
                NeedText(paused.Why, "why");
                break;
            case LogFact.Strained strained:
                NeedVolume(strained.Volume, "strained", "Strained stock");
                break;
            case LogFact.SpentWeighed spent:
                Mass heaviest = HeaviestSpent(batch.Planned);
                Need(
                    spent.Spent > Mass.Zero && spent.Spent <= heaviest,
                    "spent",
                    $"Spent solids weigh more than nothing, and no more than all that went in with what soaks in and clings, {KitchenFormat.Both(heaviest)}. Take off what bowl and colander weigh.");
                break;
            case LogFact.Portioned portioned:
                NeedVolume(portioned.Volume, "portioned", "Portioned stock");
                break;
            case LogFact.ColdUnmeasured cold:
                NeedText(cold.Sign, "text");
                break;
            case LogFact.NeverCooked aside:
                NeedText(aside.Why, "why");
                break;
            case LogFact.CorrectionMade made:
                Need(Enum.IsDefined(made.Step), "action", "Say what was done.");
                NeedText(made.Text, "text");
                break;
            case LogFact.FatWeighed fat:
                Mass all = Mass.FromKilograms(batch.Planned.Amounts.Sum(line => line.Mass.Kilograms));
                Need(fat.Fat > Mass.Zero && fat.Fat <= all, "fat", $"The fat weighs more than nothing and no more than all that went in, {KitchenFormat.Both(all)}.");
                break;
            case LogFact.RefractometerRead brix:
                Need(brix.Brix is >= 0 and <= 85, "brix", "A refractometer reads 0 to 85 °Brix.");
                break;
            case LogFact.SetFelt felt:
                Need(Enum.IsDefined(felt.Body), "body", "Choose how it stands.");
                break;
            case LogFact.Noted noted:
                NeedText(noted.Text, "text", required: true);
                break;
            case LogFact.PhotoTaken photo:
                NeedText(photo.Caption, "text");
                break;
            case LogFact.Closed closed:
                NeedText(closed.NextTime, "next-time");
                Need(closed.Attended is not { } attended || attended >= TimeSpan.Zero, "attended", "Time spent is not below zero.");
                Need(closed.Metered is not { } metered || metered.Joules >= 0, "metered", "Energy used is not below zero.");
                break;
        }
    }

    /// <summary>All that went in, with the most that may soak in and cling: the drained solids weigh no more.</summary>
    private static Mass HeaviestSpent(BatchPlan plan)
    {
        double taken = plan.Ledger.Out
            .Where(row => row.Key is "soaked-up" or "held-by-solids")
            .Sum(row => row.Volume.High.CubicMeters * Simmering.SimmerForecaster.ColdDensity);
        return Mass.FromKilograms(plan.Amounts.Sum(line => line.Mass.Kilograms) + taken);
    }
}
