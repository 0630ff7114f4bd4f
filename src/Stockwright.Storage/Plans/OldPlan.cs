namespace Stockwright.Storage.Plans;

/// <summary>A plan as versions before documents kept it.</summary>
/// <param name="Id">Of the saved plan or the batch.</param>
/// <param name="Query">Address of the planner's page.</param>
/// <param name="Snapshot">Recipe, larder and kitchen it names, as <see cref="PlanSnapshot.Parse"/> reads them.</param>
/// <param name="PlanText">The plan as the interface for programs gave it then; null for a saved plan, which kept none.</param>
public sealed record OldPlan(Guid Id, string Query, string Snapshot, string? PlanText)
{
    /// <summary>When the cook begins the batch by the plan; null for a saved plan.</summary>
    public DateTimeOffset? Begins { get; init; }

    /// <summary>Reads a document, or says why not.</summary>
    internal static (StoredPlan? Document, string? Trouble) Read(string? document)
    {
        try
        {
            return document is null ? (null, "This plan was kept by an earlier version and cannot be read any more.") : (StoredPlan.Parse(document), null);
        }
        catch (StoredDocumentException trouble)
        {
            return (null, trouble.Message);
        }
    }

    /// <summary>Time zone of the kitchen in a snapshot.</summary>
    internal static string TimeZoneId(string snapshot)
    {
        try
        {
            return PlanSnapshot.Parse(snapshot).Kitchen.TimeZoneId;
        }
        catch (StoredDocumentException)
        {
            return TimeZoneInfo.Utc.Id;
        }
    }
}
