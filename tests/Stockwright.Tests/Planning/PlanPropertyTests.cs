using CsCheck;
using Stockwright.Planning;
using Xunit;

namespace Stockwright.Tests.Planning;

/// <summary>
/// What must hold of every plan: conservation of mass and energy (exact, no source needed), and that the plan is one a cook can read.
/// </summary>
public sealed class PlanPropertyTests
{
    [Fact]
    public void Every_plan_keeps_its_books_and_its_order() =>
        PlanGenerator.Requests.Sample(
            request =>
            {
                PlanResult result = BatchPlanner.Plan(request);
                if (result.Plan is null)
                {
                    Assert.NotEmpty(result.Problems);
                    Assert.All(result.Problems, problem => Assert.Equal(PlanRequests.FiguresOf(problem.Code), problem.Figures.Select(figure => figure.Kind)));
                    return;
                }

                Assert.Empty(PlanInvariants.Broken(result.Plan));
            },
            iter: 500,
            threads: 2);
}
