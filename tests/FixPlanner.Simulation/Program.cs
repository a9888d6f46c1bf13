using System.Diagnostics;
using FixPlanner.Simulation;

// dotnet run -c Release --project tests/FixPlanner.Simulation -- [--cars 200] [--others 40] [--seed 29] [--world N]
int Option(string name, int otherwise) =>
    Array.IndexOf(args, name) is var at and >= 0 && at + 1 < args.Length && int.TryParse(args[at + 1], out int value) ? value : otherwise;

int cars = Option("--cars", 200);
int others = Option("--others", 40);
int seed = Option("--seed", 29);
int only = Option("--world", -1);
PackUnderTest tested = PackUnderTest.Shipped();
Stopwatch clock = Stopwatch.StartNew();
List<Quality> all = [];
foreach ((int number, World world) in World.All.Index().Where(w => only < 0 || w.Index == only))
{
    all.Add(Quality.Of(tested, world, number == 0 ? cars : others, seed));
    Console.Error.WriteLine($"{clock.Elapsed.TotalSeconds,6:0} s  world {number}: {world.Name}");
}

Console.Write(QualityPage.Of(all, seed));
