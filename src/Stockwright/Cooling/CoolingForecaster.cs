namespace Stockwright.Cooling;

/// <summary>Forecasts how stock cools. Pure: the same question gives the same answer.</summary>
public static class CoolingForecaster
{
    /// <summary>Forecasts one method with its band, or says what is wrong with the question.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="method">How it is cooled.</param>
    /// <param name="cancellationToken">Ends it between two courses.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static CoolingResult Forecast(CoolingCase stock, CoolingMethod method, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(method);
        IReadOnlyList<CoolingProblem> problems = CoolingChecks.Problems(stock, method);
        return problems.Count > 0
            ? new CoolingResult(null, problems)
            : new CoolingResult(Banded(stock, method, cancellationToken), problems);
    }

    /// <summary>Forecasts several methods side by side, in their order.</summary>
    /// <param name="stock">The stock.</param>
    /// <param name="methods">Ways to cool it.</param>
    /// <param name="cancellationToken">Ends it between two courses.</param>
    /// <exception cref="OperationCanceledException">It was ended.</exception>
    public static IReadOnlyList<CoolingResult> Compare(CoolingCase stock, IReadOnlyList<CoolingMethod> methods, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(methods);
        CoolingResult[] results = [.. methods.Select(method => new CoolingResult(null, CoolingChecks.Problems(stock, method)))];
        CoolingCourse[] courses = new CoolingCourse[3 * methods.Count];
        Parallel.For(0, courses.Length, new ParallelOptions { CancellationToken = cancellationToken }, i =>
        {
            if (results[i / 3].Problems.Count == 0)
            {
                courses[i] = CoolingRun.Execute(stock, methods[i / 3], Edge(stock, i % 3));
            }
        });

        return [.. results.Select((result, i) => result.Problems.Count > 0
            ? result
            : result with { Forecast = new CoolingForecast(methods[i], courses[3 * i], courses[(3 * i) + 1], courses[(3 * i) + 2]) })];
    }

    /// <summary>The central course alone, unchecked.</summary>
    internal static CoolingCourse Central(CoolingCase stock, CoolingMethod method) =>
        CoolingRun.Execute(stock, method, CoolingFactors.Central(stock));

    private static CoolingForecast Banded(CoolingCase stock, CoolingMethod method, CancellationToken cancellationToken)
    {
        CoolingCourse[] courses = new CoolingCourse[3];
        Parallel.For(0, 3, new ParallelOptions { CancellationToken = cancellationToken }, i => courses[i] = CoolingRun.Execute(stock, method, Edge(stock, i)));
        return new CoolingForecast(method, courses[0], courses[1], courses[2]);
    }

    private static CoolingFactors Edge(CoolingCase stock, int number) => number switch
    {
        0 => CoolingFactors.Fast(stock),
        1 => CoolingFactors.Central(stock),
        _ => CoolingFactors.Slow(stock),
    };
}
