using Stockwright.Planning;
using Stockwright.Predicting;

namespace Stockwright.Tests.Predicting;

/// <summary>One draw with everything in its middle but one input.</summary>
internal static class Draws
{
    public static SampleModel.Draw At(BatchPlan plan, string input, double deviations)
    {
        double[] point = new double[UncertainInput.All.Count];
        point[UncertainInput.All.Index().Single(one => string.Equals(one.Item.Name, input, StringComparison.Ordinal)).Index] = deviations;
        return Model(plan).Run(point);
    }

    public static SampleModel Model(BatchPlan plan) => new(PredictionCase.Of(plan, new PredictionSettings()));
}
