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
            : new CoolingResult(Banded(stock, [method], cancellationToken)[0], problems);
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
        int[] sound = [.. Enumerable.Range(0, methods.Count).Where(i => results[i].Problems.Count == 0)];
        CoolingForecast[] forecasts = Banded(stock, [.. sound.Select(i => methods[i])], cancellationToken);
        for (int i = 0; i < sound.Length; i++)
        {
            results[sound[i]] = results[sound[i]] with { Forecast = forecasts[i] };
        }

        return results;
    }

    /// <summary>The central course alone, unchecked.</summary>
    internal static CoolingCourse Central(CoolingCase stock, CoolingMethod method) =>
        CoolingRun.Execute(stock, method, CoolingFactors.Central(stock));

    /// <summary>The middle of each, then what each of its inputs does by itself, then its edges.</summary>
    private static CoolingForecast[] Banded(CoolingCase stock, IReadOnlyList<CoolingMethod> methods, CancellationToken cancellationToken)
    {
        ParallelOptions options = new() { CancellationToken = cancellationToken };
        CoolingFactors middle = CoolingFactors.Central(stock);
        CoolingCourse[] central = new CoolingCourse[methods.Count];
        Parallel.For(0, central.Length, options, i => central[i] = CoolingRun.Execute(stock, methods[i], middle));

        IReadOnlyList<BandInput>[] inputs = [.. methods.Select(method => BandInput.Of(stock, method))];
        (int Method, int Input)[] runs = [.. inputs.SelectMany((each, method) => Enumerable.Range(-1, each.Count + 1).Select(input => (method, input)))];
        (double[] Seconds, double StoreCelsius)[] coarse = new (double[], double)[runs.Length];
        Parallel.For(0, runs.Length, options, i =>
        {
            (int method, int input) = runs[i];
            CoolingFactors moved = input < 0 ? middle : inputs[method][input].At(middle, CoolingBand.Side(inputs[method][input]));
            coarse[i] = CoolingRun.Coarse(stock, methods[method], moved, CoolingBand.MarksOf(central[method]));
        });

        (CoolingFactors Fast, CoolingFactors Slow)[] edges = new (CoolingFactors, CoolingFactors)[methods.Count];
        (double Low, double High)[] rises = new (double, double)[methods.Count];
        for (int i = 0, at = 0; i < methods.Count; at += inputs[i].Count + 1, i++)
        {
            (double[] seconds, double air) = coarse[at];
            double holds = methods[i].Steps.Select(step => step.Place).OfType<CoolingPlace.ColdAir>().LastOrDefault()?.Store.Air.DegreesCelsius ?? double.NaN;
            edges[i] = CoolingBand.Edges(middle, inputs[i], [.. inputs[i].Select((input, j) => -CoolingBand.Side(input) * CoolingBand.Later(seconds, coarse[at + 1 + j].Seconds))]);
            rises[i] = CoolingBand.Ends(inputs[i], [.. inputs[i].Select((_, j) => Math.Log((coarse[at + 1 + j].StoreCelsius - holds) / (air - holds)))]);
        }

        CoolingCourse[] courses = new CoolingCourse[2 * methods.Count];
        Parallel.For(0, courses.Length, options, i => courses[i] = CoolingRun.Execute(stock, methods[i / 2], i % 2 == 0 ? edges[i / 2].Fast : edges[i / 2].Slow));
        return [.. methods.Select((method, i) => new CoolingForecast(method, courses[2 * i], central[i], courses[(2 * i) + 1]) { RiseEnds = rises[i] })];
    }
}
