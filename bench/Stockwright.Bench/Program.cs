using BenchmarkDotNet.Running;
using Stockwright.Bench;
using Stockwright.Bench.Web;

switch (args)
{
    case ["web"]:
        return await WebLoad.RunAsync(Console.Out);
    case ["cooks"]:
        return await CookLoad.RunAsync(Console.Out);
    case ["photos"]:
        return await PhotoLoad.RunAsync(Console.Out);
    case ["crowd"]:
        return await CrowdLoad.RunAsync(Console.Out);
    case ["thermometer"]:
        return await ThermometerLoad.RunAsync(Console.Out);
    case ["attack", .. string[] numbers]:
        return await Attack.RunAsync(Console.Out, numbers);
    case ["errors"]:
        new PotProblem(1e-6).Print(Console.Out);
        new PotProblem(1e-9).Print(Console.Out);
        return 0;
    default:
        return BenchmarkSwitcher.FromAssembly(typeof(PlanBenchmarks).Assembly).Run(args).All(summary => !summary.HasCriticalValidationErrors) ? 0 : 1;
}
