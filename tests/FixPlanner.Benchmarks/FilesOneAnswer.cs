using BenchmarkDotNet.Attributes;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Files.Rules;

namespace FixPlanner.Benchmarks;

/// <summary>One answer into a logbook of about 45 kB on the disk of this machine: spliced, journaled, synced, renamed and read in again.</summary>
public class FilesOneAnswer
{
    private readonly string folder = Directory.CreateTempSubdirectory("one-answer-").FullName;
    private readonly KnowledgePack pack = RulePackReader.Read([Path.Combine(ChanceCars.Root(), "rules")]).Pack!;
    private OpenLogbook? book;
    private int turn;

    [GlobalSetup]
    public void Fill()
    {
        string file = Path.Combine(folder, "car.logbook.yaml");
        IEnumerable<string> rounds = Enumerable.Range(1, 4).Select(round => $"  - id: round-{round}\n    findings:\n" + string.Concat(pack.Observations.Select(one =>
            $"      - {{observation: {one.Id}, answer: {one.Answers[0].Id}, note: seen from the left}}\n")));
        File.WriteAllText(file, $"logbook: 1\nrounds:\n{string.Concat(rounds)}");
        book = OpenLogbook.Open(file, pack, out _);
    }

    [GlobalCleanup]
    public void Leave()
    {
        book!.Dispose();
        Directory.Delete(folder, recursive: true);
    }

    [Benchmark]
    public bool KeepOneAnswer()
    {
        Observation asked = pack.Observations[40];
        return book!.Keep([new SetFinding("round-2", new Finding(asked.Id, asked.Answers[++turn % 2].Id)) { InWords = "one answer" }]).Kept;
    }
}
