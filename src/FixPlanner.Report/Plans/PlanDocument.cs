using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;
using FixPlanner.Report.Documents;

namespace FixPlanner.Report.Plans;

/// <summary>The plan as a document: safety, causes, the plan with its job cards, what is left out, sign-offs, shopping list, sources.</summary>
public sealed class PlanDocument
{
    private const double WorthListing = 0.1;
    private const double WorthSaying = 0.1;
    private readonly Assessment a;
    private readonly KnowledgePack pack;
    private readonly List<Block> blocks = [];

    private PlanDocument(Assessment assessment) => (a, pack) = (assessment, assessment.Situation.Pack);

    /// <summary>Writes the document.</summary>
    /// <param name="assessment">What follows from the logbook, fully worked out.</param>
    /// <returns>The document.</returns>
    public static Document Of(Assessment assessment)
    {
        PlanDocument writer = new(assessment);
        string name = assessment.Situation.Logbook.Name;
        writer.Opening();
        writer.Safety();
        writer.Causes();
        writer.Lines();
        writer.JobCards();
        writer.LeftOut();
        writer.SignOffs();
        writer.Shopping();
        writer.Disappointments();
        writer.Sources();
        return new(name.Length > 0 ? $"Plan for {name}" : "Plan", writer.blocks);
    }

    /// <summary>The job card of one line.</summary>
    /// <param name="assessment">What follows from the logbook.</param>
    /// <param name="item">The line.</param>
    /// <returns>The card's blocks.</returns>
    public static IReadOnlyList<Block> CardOf(Assessment assessment, PlanItem item) => [.. new PlanDocument(assessment).JobCard(item)];

    private void Opening()
    {
        Situation s = a.Situation;
        blocks.Add(new Paragraph($"{a.Plan.Headline} Made on {s.Today:yyyy-MM-dd} with the rule pack {pack.Id}, version {pack.Version}."));
        blocks.Add(new Warning("NOTE", PlanWords.NotACertificate));
        CarEstimate car = CarEstimate.Of(s);
        string filled = car.Filled.Count == 0 ? "measured" : $"partly usual values for this body shape; what would narrow them: {string.Join(", ", car.Filled.Select(FilledTitle))}";
        blocks.Add(new Bullets(
        [
            $"Drag area: {Shown.Range(car.DragAreaSquareMetres, "m2")}: {filled}.",
            $"Answers that count: {s.Findings.Count}; from before a change of the car and not counted: {s.Outdated.Count}.",
            a.Plan.NextQuestion is { } next ? $"Look next: {Question(next)} {next.Why}" : "More answers will not change the plan.",
        ]));
    }

    private string FilledTitle(string name) => name switch
    {
        "frontal_area_factor" => "the frontal area from a photo",
        "drag_coefficient" => "the drag area from a coast-down",
        _ => Prose.Plain(pack.Fact(name)?.Title ?? name),
    };

    private string RunTitle(string run) => Prose.Plain(pack.Scales.RunKinds.FirstOrDefault(k => k.Id == run)?.Title ?? run);

    private string Question(NextQuestion next) => Prose.Plain(next.IsFact ? pack.Fact(next.Id)?.Ask ?? next.Id : pack.Observation(next.Id)?.Question ?? next.Id);

    private void Safety()
    {
        blocks.Add(new Heading(2, "Safety first"));
        GateStatus[] force = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)];
        GateStatus[] open = [.. a.Plan.Gates.Where(g => g.State == GateState.NotChecked)];
        if (force.Length == 0)
        {
            blocks.Add(new Paragraph("No safety gate is in force on what is known now. That is not the same as safe: see what is not checked."));
        }

        foreach (GateStatus gate in force)
        {
            blocks.Add(new Warning(PlanWords.Level(gate.Gate.Level).ToUpperInvariant(), $"**{Prose.Plain(gate.Gate.Title)}** is in force. {Prose.Plain(gate.Gate.RequiredAction)}"));
            List<string> facts = [$"Because: {string.Join("; ", gate.Triggers.SelectMany(t => t.InWords.Split("; ")).Distinct().Select(Prose.Plain))}."];
            Add(facts, "Why it matters", Prose.Plain(gate.Gate.Why));
            Add(facts, "Held back until signed", string.Join("; ", gate.Gate.BlocksRuns.Select(RunTitle)));
            Add(facts, "Lifted by", NextSignature(gate));
            blocks.Add(new Bullets(facts));
        }

        if (open.Length > 0)
        {
            blocks.Add(new Paragraph("Not checked: until these are known, drive no faster than the car is driven now."));
            blocks.Add(new Table(["Gate", "Level", "Find out first"], [.. open.Select(g => (IReadOnlyList<string>)[Prose.Plain(g.Gate.Title), PlanWords.Level(g.Gate.Level), string.Join("; ", g.Open.Select(Ask))])]));
        }

        blocks.Add(new Bullets(PlanWords.Cautions));
    }

    private string Ask(OpenMustKnow must) => Prose.Plain(must.IsFact ? pack.Fact(must.Ask)?.Title ?? must.Ask : pack.Observation(must.Ask)?.Question ?? must.Ask);

    private static string NextSignature(GateStatus gate) =>
        gate.SignOffs.FirstOrDefault(s => !s.Counts) is { } next
            ? $"the sign-off '{next.Rule.Kind}': {Prose.Plain(next.Rule.By)}; {Prose.Plain(next.Rule.Evidence)}.{(next.WhyNot.Length > 0 ? $" The recorded one does not count: {Prose.Plain(next.WhyNot)}." : "")}"
            : "";

    private void Causes()
    {
        blocks.Add(new Heading(2, "What the air is doing"));
        List<IReadOnlyList<string>> rows = [];
        foreach (Mechanism m in pack.Mechanisms.OrderByDescending(m => a.Beliefs.Probability(m.Id)).ThenBy(m => m.Id, StringComparer.Ordinal).Take(12))
        {
            double p = a.Beliefs.Probability(m.Id);
            if (p < WorthListing)
            {
                continue;
            }

            IReadOnlyList<Reason> reasons = a.Beliefs.Reasons(m.Id);
            string said = reasons.Count == 0 ? "nothing looked at yet: how common it is on such cars" : string.Join("; ", reasons.Take(3).Where((r, i) => i == 0 || Math.Abs(r.LogOdds) >= WorthSaying).Select(Said));
            rows.Add([Prose.Plain(m.Title), Shown.Percent(p), said, m.BestNextLook is { } look && a.Situation.Answer(look.Observation) is null ? Prose.Plain(pack.Observation(look.Observation)?.Question ?? "") : ""]);
        }

        blocks.Add(new Table(["Cause", "How sure", "Because", "The look that settles it"], rows));
    }

    private string Said(Reason reason)
    {
        Observation o = pack.Observation(reason.Observation)!;
        string answer = o.Answers.First(x => x.Id == reason.Answer).Text;
        return $"{(reason.LogOdds > 0 ? "for" : "against")} ({Shown.Signed(reason.LogOdds)}): {Prose.Plain(o.Question)} {Prose.Plain(answer)}";
    }

    private void Lines()
    {
        blocks.Add(new Heading(2, "The plan"));
        if (a.Plan.Items.Count == 0)
        {
            blocks.Add(new Paragraph(a.Plan.Headline));
            return;
        }

        blocks.Add(new Table(
            ["No.", "Stage", "Fix", "Cost, EUR", "Hours", "In best set"],
            [.. a.Plan.Items.Select(i => (IReadOnlyList<string>)[
                $"{i.Rank}",
                i.ShownAs == ShownAs.Do ? PlanWords.Stage(i.Stage) : PlanWords.Shown(i.ShownAs),
                Prose.Plain(i.Fix.Title) + (i.HeldBy.Count > 0 ? $" (first check: {string.Join(", ", i.HeldBy.Select(g => Prose.Plain(g.Gate.Title)))})" : ""),
                $"{i.Fix.Cost.Likely:0} ({i.Fix.Cost.Low:0}-{i.Fix.Cost.High:0})",
                $"{i.Fix.Hours.Likely:0.#}",
                i.InBestSetShare is { } share ? Shown.Percent(share) : "-"])]));
        PlanTotals t = a.Plan.Totals;
        List<string> sums =
        [
            $"Cost: likely {t.LikelyCostEur:0} EUR; computed range {Shown.Range(t.CostEur, "EUR")}{(t.BudgetEur is { } b ? $"; budget {b:0} EUR" : "; no budget said")}.",
            $"Own work: likely {t.LikelyHours:0.#} h; computed range {Shown.Range(t.Hours, "h")}{(t.HoursLimit is { } h ? $"; limit {h:0.#} h" : "; no limit said")}.",
        ];
        if (t.SafetyEur > 0)
        {
            sums.Add($"Of that for safety, paid first: {t.SafetyEur:0} EUR.");
        }

        if (t.ShortfallEur > 0)
        {
            sums.Add($"The budget is {t.ShortfallEur:0} EUR short of the safety work alone.");
        }

        if (t.OverrunProbability is { } over && t.BudgetEur is not null)
        {
            sums.Add($"Chance that it costs more than the budget: {Shown.Percent(over)}.");
        }

        if (a.Plan.ProvenGapPercent > 0)
        {
            sums.Add($"Not proven best: at most {a.Plan.ProvenGapPercent:0.#} % better exists.");
        }

        sums.AddRange(t.Effects.Select(e => $"Whole plan, {e.Title}: {Shown.Range(e.AsBelieved, e.Unit)} as believed now; {Shown.Range(e.IfCause, e.Unit)} if every cause is there."));
        blocks.Add(new Bullets(sums));
        NextMoney();
        Waiting();
    }

    private void NextMoney()
    {
        if (a.Plan.MoreMoney is not { } more)
        {
            return;
        }

        string titles = string.Join("; ", more.Comes.Select(f => Prose.Plain(pack.Fix(f)!.Title)));
        string instead = more.Goes.Count > 0 ? $" in place of {string.Join("; ", more.Goes.Select(f => Prose.Plain(pack.Fix(f)!.Title)))}" : "";
        blocks.Add(new Paragraph(more.Comes.Count == 0
            ? $"What the next {more.MoreEur:0} EUR would buy: nothing more for your aims."
            : $"What the next {more.MoreEur:0} EUR would buy: {titles}{instead}: {Shown.Number(more.Points)} points on top of {Shown.Number(a.Plan.Totals.Points)}."));
    }

    private void Waiting()
    {
        if (a.Plan.Waiting.Count > 0)
        {
            blocks.Add(new Paragraph("Waiting for a sign-off: these would be in the best set, and are not to be done before the gate is signed off."));
            blocks.Add(new Bullets([.. a.Plan.Waiting.Select(w => $"{Prose.Plain(w.Fix.Title)}: waits for '{Prose.Plain(w.Gate.Gate.Title)}'.")]));
        }
    }

    private void JobCards()
    {
        if (a.Plan.Items.Count == 0)
        {
            return;
        }

        blocks.Add(new Heading(2, "Job cards"));
        foreach (PlanItem item in a.Plan.Items)
        {
            blocks.Add(new Card($"{item.Rank}. {Prose.Plain(item.Fix.Title)} ({(item.ShownAs == ShownAs.Do ? PlanWords.Stage(item.Stage) : PlanWords.Shown(item.ShownAs))})", [.. JobCard(item)]));
        }
    }

    private IEnumerable<Block> JobCard(PlanItem item)
    {
        Fix fix = item.Fix;
        yield return new Paragraph(Prose.Plain(fix.What));
        List<string> facts =
        [
            $"Where: {pack.Zone(fix.Zone)?.Title}. Cost: {Shown.Money(fix.Cost)}. Own time: {Shown.Hours(fix.Hours)}. Work for: {fix.Skill.ToString().ToLowerInvariant()}. {PlanWords.Reversible(fix)}. This rule is {fix.Maturity.ToString().ToLowerInvariant()}; its effects are of {fix.Confidence} confidence.",
        ];
        Add(facts, "Paid for the gate", item.ForGate is { } g ? Prose.Plain(g.Gate.Title) : "");
        Add(facts, "Try first", fix.Trial is { } trial ? $"{Prose.Plain(trial.Do)} (about {trial.CostEur:0} EUR, {trial.Hours:0.#} h)" : "");
        Add(facts, "Materials", Prose.Plain(fix.Materials));
        Add(facts, "Tools", Prose.Plain(fix.Tools));
        Add(facts, "Must be so first", Prose.Plain(fix.Prerequisites));
        facts.AddRange(item.Effects.Select(e => $"Effect on {e.Title}: {Shown.Range(e.AsBelieved, e.Unit)} as believed now; {Shown.Range(e.IfCause, e.Unit)} if the cause is there."));
        Add(facts, "Side effects", Prose.Plain(fix.SideEffects));
        Add(facts, "Because", string.Join("; ", item.Reasons.Take(3).Select(Because)));
        Add(facts, "First check", string.Join("; ", item.HeldBy.Select(x => Prose.Plain(x.Gate.Title))));
        Add(facts, "Check", string.Join("; ", fix.Verify.Select(v => $"{Prose.Plain(pack.Observation(v.Observation)?.Question ?? v.Observation)} Expected: {Prose.Plain(pack.Observation(v.Observation)?.Answers.FirstOrDefault(x => x.Id == v.Expect)?.Text ?? v.Expect)}")));
        Add(facts, "Signed by", Prose.Plain(fix.SignOff));
        Add(facts, "Figures from", Prose.Plain(fix.EffectsBasis.Text));
        yield return new Bullets(facts);
        if (fix.SafetyNote.Length > 0)
        {
            yield return new Warning("CAUTION", Prose.Plain(fix.SafetyNote));
        }

        foreach (Gate gate in item.WithTheWork)
        {
            yield return new Warning("WITH THE WORK", $"{Prose.Plain(gate.Title)}: {Prose.Plain(gate.RequiredAction)}");
        }

        if (item.BeforeFastUse.Count > 0)
        {
            yield return new Warning("BEFORE DRIVING FASTER THAN NOW", string.Join("; ", item.BeforeFastUse.Select(x => Prose.Plain(x.Title))));
        }

        yield return new Paragraph($"Law: {Prose.Plain(fix.LegalNote.Length > 0 ? fix.LegalNote : pack.Scales.DefaultLegalNote)}");
    }

    private string Because(PlanReason reason)
    {
        string seen = reason.Observation is { } o ? $", {(reason.LogOdds > 0 ? "for" : "against")} it: {Prose.Plain(pack.Observation(o)!.Question)} {Prose.Plain(pack.Observation(o)!.Answers.First(x => x.Id == reason.Answer).Text)}" : ", nothing looked at yet";
        return $"{reason.Action.ToString().ToLowerInvariant()} '{Prose.Plain(pack.Mechanism(reason.Cause)!.Title)}' ({Shown.Percent(reason.Probability)}{seen})";
    }

    private static void Add(List<string> facts, string name, string value)
    {
        if (value.Length > 0)
        {
            facts.Add($"{name}: {value}");
        }
    }

    private void LeftOut()
    {
        blocks.Add(new Heading(2, "Left out, and why"));
        blocks.Add(new Table(["Fix", "Why not"], [.. a.Plan.LeftOut.Where(l => l.Why != LeftOutWhy.NotForThisCar).OrderBy(l => l.Why).ThenBy(l => l.Fix.Id, StringComparer.Ordinal)
            .Select(l => (IReadOnlyList<string>)[Prose.Plain(l.Fix.Title), Prose.Plain(l.InWords)])]));
        int others = a.Plan.LeftOut.Count(l => l.Why == LeftOutWhy.NotForThisCar);
        if (others > 0)
        {
            blocks.Add(new Paragraph($"{others} more are not for this car by what you said of it."));
        }
    }

    private void SignOffs()
    {
        SignatureBox[] boxes = [.. a.Plan.Gates.Where(g => g.State == GateState.InForce)
            .SelectMany(g => g.SignOffs.Where(s => !s.Counts).Select(s => new SignatureBox($"{Prose.Plain(g.Gate.Title)}: {s.Rule.Kind}", Prose.Plain(s.Rule.By), Prose.Plain(s.Rule.Evidence))))];
        if (boxes.Length > 0)
        {
            blocks.Add(new Heading(2, "Sign-offs"));
            blocks.AddRange(boxes);
        }
    }

    private void Shopping()
    {
        string[] materials = [.. a.Plan.Items.Where(i => i.Fix.Materials.Length > 0).Select(i => $"{Prose.Plain(i.Fix.Materials)} - for {i.Rank}, {Prose.Plain(i.Fix.Title)}")];
        if (materials.Length > 0)
        {
            blocks.Add(new Heading(2, "Shopping list"));
            blocks.Add(new Bullets(materials));
        }
    }

    private void Disappointments()
    {
        if (pack.Disappointments.Count > 0)
        {
            blocks.Add(new Heading(2, "What usually disappoints"));
            blocks.Add(new Table(["What people do", "Why it disappoints", "Do instead"], [.. pack.Disappointments.Select(d => (IReadOnlyList<string>)[Prose.Plain(d.What), Prose.Plain(d.Why), Prose.Plain(d.DoInstead)])]));
        }
    }

    private void Sources()
    {
        Source[] used = [.. UsedSources(a)];
        if (used.Length > 0)
        {
            blocks.Add(new Heading(2, "Sources"));
            blocks.Add(new Table(["Key", "Grade", "What", "Where"], [.. used.Select(s => (IReadOnlyList<string>)[s.Id, $"{s.Grade}", Prose.Plain(s.What), s.Where])]));
            blocks.Add(new Paragraph("Grades: A standard, law or reviewed paper; B measured by a careful amateur, textbook or agency; C one owner's opinion; D general article. Where a figure names no source it says 'from memory' or 'common practice'."));
        }
    }

    internal static IEnumerable<Source> UsedSources(Assessment a)
    {
        HashSet<string> ids = [.. a.Plan.Items.SelectMany(i => i.Fix.EffectsBasis.Sources)];
        ids.UnionWith(a.Plan.Items.SelectMany(i => i.Fix.ActsOn.Keys).Select(m => a.Situation.Pack.Mechanism(m)).OfType<Mechanism>().SelectMany(m => m.Basis.Sources));
        ids.UnionWith(a.Plan.Gates.Where(g => g.State == GateState.InForce).SelectMany(g => g.Gate.Basis.Sources));
        return a.Situation.Pack.Sources.Where(s => ids.Contains(s.Id));
    }
}
