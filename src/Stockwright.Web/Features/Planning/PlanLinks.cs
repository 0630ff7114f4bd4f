namespace Stockwright.Web.Features.Planning;

/// <summary>Links to plans.</summary>
internal static class PlanLinks
{
    /// <summary>Page of a plan.</summary>
    public const string Page = "/plan";
}
