using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Rules;

namespace FixPlanner.Journeys.Jobs;

/// <summary>The shipped pack, and folders that go away.</summary>
internal sealed class JobFiles : IDisposable
{
    private static readonly Lazy<KnowledgePack> Shipped = new(() => RulePackReader.Read([Path.Combine(AppContext.BaseDirectory, RulePackReader.ShippedFolder)]).Pack!);

    public static KnowledgePack Pack => Shipped.Value;

    public static DateOnly Today { get; } = new(2026, 6, 6);

    public string Folder { get; } = Directory.CreateTempSubdirectory("fixplanner-job-").FullName;

    public static string Demo(string car) => Path.Combine(AppContext.BaseDirectory, "Demo", "logbooks", $"{car}.logbook.yaml");

    public string Copy(string car)
    {
        string to = Path.Combine(Folder, $"{car}.logbook.yaml");
        File.Copy(Demo(car), to);
        return to;
    }

    public string New(string name) => Path.Combine(Folder, name);

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}
