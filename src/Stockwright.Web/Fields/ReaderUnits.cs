namespace Stockwright.Web.Fields;

/// <summary>
/// The measures the reader reads in: <c>units</c> of the link when it says so, otherwise the cookie, otherwise metric.
/// Pages take it as <c>[CascadingParameter] UnitSystem Units</c>.
/// </summary>
internal static class ReaderUnits
{
    public const string QueryKey = "units";
    public const string MetricWord = "metric";
    public const string UsWord = "us";

    public static IServiceCollection AddReaderUnits(this IServiceCollection services) =>
        services.AddCascadingValue(provider => Of(provider.GetRequiredService<IHttpContextAccessor>().HttpContext));

    public static UnitSystem Of(HttpContext? context)
    {
        if (context is null)
        {
            return UnitSystem.Metric;
        }

        return Read(context.Request.Query[QueryKey].FirstOrDefault())
            ?? Preferred(context.Request);
    }

    /// <summary>The reader's standing choice, whatever the link says.</summary>
    public static UnitSystem Preferred(HttpRequest request) => Read(KitchenCookies.Read(request, KitchenCookies.Units)) ?? UnitSystem.Metric;

    public static UnitSystem? Read(string? word) => word switch
    {
        MetricWord => UnitSystem.Metric,
        UsWord => UnitSystem.UsCustomary,
        _ => null,
    };

    public static string Word(UnitSystem units) => units == UnitSystem.UsCustomary ? UsWord : MetricWord;
}
