using Stockwright.Evidence;
using Stockwright.Files;

namespace Stockwright.Cooling.Limits;

/// <summary>Reads a file of cooling limits.</summary>
internal static class CoolingLimitFile
{
    /// <summary>Reads the limits of a file.</summary>
    /// <param name="json">Text of the file.</param>
    /// <exception cref="DataFileException">The text is not JSON, or a limit is incomplete or unsound; the message names limit and field.</exception>
    public static IReadOnlyList<CoolingLimit> Parse(string json) =>
        JsonRow.ReadFile(json, "Cooling limits", ReadAll);

    private static List<CoolingLimit> ReadAll(JsonRow file)
    {
        file.OptionalText("about");
        List<CoolingLimit> limits = file.Rows("limits", "limit", ReadLimit);
        if (limits.Count == 0)
        {
            throw file.Missing("limits");
        }

        string? twice = limits.GroupBy(limit => limit.Id, StringComparer.Ordinal).FirstOrDefault(group => group.Count() > 1)?.Key;
        return twice is null ? limits : throw file.Fail($"the id '{twice}' is used by two limits");
    }

    private static CoolingLimit ReadLimit(JsonRow row)
    {
        string id = row.Text("id");
        row.Rename($"Limit '{id}'");
        CoolingLimit limit = new()
        {
            Id = id,
            Name = row.Text("name"),
            Clause = row.Text("clause"),
            Standing = row.Choice<LimitStanding>("standing"),
            ClockStart = row.Choice<ClockStart>("clock"),
            ChillingStartsWithin = row.OptionalNumber("startWithinMinutes") is { } minutes ? TimeSpan.FromMinutes(minutes) : null,
            Stages = row.Rows("stages", "stage", ReadStage),
            Total = Hours(row, "totalHours"),
            ThenStoreAt = row.OptionalPrinted("thenStore")?.Value,
            Notes = row.Texts("notes"),
            Correction = row.Inner("correction", ReadCorrection) ?? throw row.Missing("correction"),
            Provenance = row.Choice<Provenance>("grade"),
            Source = row.Text("source"),
        };
        if (limit.Stages.Count == 0)
        {
            throw row.Missing("stages");
        }

        if (limit.Scales is (false, false))
        {
            throw row.Fail("the stages must all be given in °C, or all in °F, or in both");
        }

        return limit;
    }

    private static LimitStage ReadStage(JsonRow row)
    {
        LimitStage stage = new(row.Printed("from"), row.Printed("to"), Hours(row, "hours"), row.Choice<StageClock>("counted"));
        return stage.To.Value < stage.From.Value ? stage : throw row.Fail("a stage must end colder than it starts");
    }

    private static CorrectionRule ReadCorrection(JsonRow row) => new(
        row.OptionalPrinted("reheatTo"),
        TimeSpan.FromSeconds(row.OptionalNumber("holdSeconds") ?? 0),
        TimeSpan.FromHours(row.OptionalNumber("withinHours") ?? 0),
        row.Text("text"),
        row.Text("clause"),
        row.Choice<Provenance>("grade"));

    private static TimeSpan Hours(JsonRow row, string field) =>
        row.Number(field) is > 0 and <= 48 and double hours ? TimeSpan.FromHours(hours) : throw row.Fail($"'{field}' must lie between 0 and 48 hours");
}
