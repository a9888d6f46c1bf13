using BenchmarkDotNet.Running;
using FixPlanner.Benchmarks;

// 'percentiles' times car by car, which the benchmark library does not.
if (args is ["percentiles"])
{
    PlanningPercentiles.Write(Console.Out);
}
else
{
    BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
