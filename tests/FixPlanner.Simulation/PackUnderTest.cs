using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Planning;
using FixPlanner.Files.Rules;

namespace FixPlanner.Simulation;

/// <summary>The shipped pack, compiled once, with everything that the job does with it.</summary>
internal sealed class PackUnderTest
{
    public PackUnderTest(KnowledgePack pack)
    {
        Pack = pack;
        (Network, Model, Assessor, Interviewer, Agenda) = (BeliefNetwork.Of(pack), new(pack), new(pack), new(pack, Today), new(pack));
    }

    /// <summary>The day of every simulated walk.</summary>
    public static DateOnly Today { get; } = new(2026, 6, 1);

    public KnowledgePack Pack { get; }

    public BeliefNetwork Network { get; }

    public PlanModel Model { get; }

    public Assessor Assessor { get; }

    public Interviewer Interviewer { get; }

    public Agenda Agenda { get; }

    /// <summary>Reads the pack that lies in the source tree.</summary>
    public static PackUnderTest Shipped()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
        {
            folder = folder.Parent;
        }

        string root = folder?.FullName ?? throw new InvalidOperationException("the simulation runs from within the repository");
        return new(RulePackReader.Read([Path.Combine(root, "rules")]).Pack ?? throw new InvalidOperationException("the pack does not read; run rules check"));
    }
}
