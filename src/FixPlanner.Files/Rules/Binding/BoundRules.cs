using FixPlanner.Core.Knowledge;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules.Cases;

namespace FixPlanner.Files.Rules.Binding;

/// <summary>What one file, or all of them, say once bound.</summary>
internal sealed class BoundRules
{
    public List<Source> Sources { get; } = [];

    public List<Fact> Facts { get; } = [];

    public List<BodyTemplate> Templates { get; } = [];

    public List<Zone> Zones { get; } = [];

    public List<Observation> Observations { get; } = [];

    public List<Mechanism> Mechanisms { get; } = [];

    public List<Fix> Fixes { get; } = [];

    public List<Gate> Gates { get; } = [];

    public List<Disappointment> Disappointments { get; } = [];

    public List<TermList> Terms { get; } = [];

    public List<RunKind> Runs { get; } = [];

    public List<RuleCase> Cases { get; } = [];

    public PackHead? Head { get; set; }

    public Scales? Scales { get; set; }

    public TestDayNotes? TestDay { get; set; }

    public List<Definition> Definitions { get; } = [];

    public List<Mention> Mentions { get; } = [];

    public List<AnswerMention> AnswerMentions { get; } = [];

    public ProblemList Problems { get; } = new();

    public void TakeIn(BoundRules other)
    {
        Sources.AddRange(other.Sources);
        Facts.AddRange(other.Facts);
        Templates.AddRange(other.Templates);
        Zones.AddRange(other.Zones);
        Observations.AddRange(other.Observations);
        Mechanisms.AddRange(other.Mechanisms);
        Fixes.AddRange(other.Fixes);
        Gates.AddRange(other.Gates);
        Disappointments.AddRange(other.Disappointments);
        Terms.AddRange(other.Terms);
        Runs.AddRange(other.Runs);
        Cases.AddRange(other.Cases);
        Head ??= other.Head;
        Scales ??= other.Scales;
        TestDay ??= other.TestDay;
        Definitions.AddRange(other.Definitions);
        Mentions.AddRange(other.Mentions);
        AnswerMentions.AddRange(other.AnswerMentions);
        Problems.AddRange(other.Problems.InOrder());
    }
}

/// <summary>What pack.yaml says.</summary>
internal sealed record PackHead(string Id, string Version, string Title, string What, string LegalNote, SealingRule Sealing, Basis Sizes);

/// <summary>No sealing of the cabin before a way out and a look at the glass.</summary>
internal sealed record SealingRule(string Gate, Requirement Outlet, double GlassLoadWorstPercent);
