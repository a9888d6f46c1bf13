using CsCheck;
using FixPlanner.Core.Diagnosis;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;

namespace FixPlanner.Tests.Diagnosis;

public sealed class BeliefsTests
{
    private static readonly DateOnly Today = new(2026, 6, 1);

    private static readonly Gen<(KnowledgePack Pack, Logbook Logbook)> Walks =
        from causes in Gen.Int[1, 9]
        from questions in Gen.Int[0, 8]
        from seed in Gen.Int[0, int.MaxValue]
        select Random(causes, questions, seed);

    [Fact]
    public void Infer_GeneratedWalks_EqualsEnumerationTo1e12()
    {
        Walks.Sample(
            x =>
            {
                BeliefNetwork network = BeliefNetwork.Of(x.Pack);
                Beliefs beliefs = network.Infer(Situation.Of(x.Pack, x.Logbook, Today));
                double[] expected = Enumerate(network, x.Logbook);
                for (int c = 0; c < expected.Length; c++)
                {
                    Assert.Equal(expected[c], beliefs.Probabilities[c], 1e-12);
                }
            },
            iter: 400);
    }

    [Fact]
    public void Ahead_GeneratedWalks_EqualsAnsweringTheQuestion()
    {
        Walks.Sample(
            x =>
            {
                BeliefNetwork network = BeliefNetwork.Of(x.Pack);
                Beliefs beliefs = network.Infer(Situation.Of(x.Pack, x.Logbook, Today));
                foreach (Observation open in x.Pack.Observations.Where(o => x.Logbook.Rounds[0].Findings.All(f => f.Observation != o.Id)))
                {
                    var ahead = beliefs.Ahead(open.Id)!;
                    Assert.Equal(1, ahead.Sum(a => a.Chance), 1e-9);

                    // Law of total probability: what is believed now is the mean of what would be believed.
                    for (int c = 0; c < x.Pack.Mechanisms.Count; c++)
                    {
                        Assert.Equal(beliefs.Probabilities[c], ahead.Sum(a => a.Chance * a.Probabilities[c]), 1e-9);
                    }
                }
            },
            iter: 100);
    }

    [Fact]
    public void Infer_SecondFindingSpeaksForOneRival_LowersTheOther()
    {
        KnowledgePack pack = TestPack.Of(
            [
                TestPack.Cause("leak", 0.2, TestPack.For("hiss", "yes", Strength.Strong), TestPack.For("paper", "loose", Strength.Strong)),
                TestPack.Cause("gutter", 0.2, TestPack.For("hiss", "yes", Strength.Strong)),
            ],
            [TestPack.Question("hiss", "yes", "no"), TestPack.Question("paper", "loose", "held")]);
        BeliefNetwork network = BeliefNetwork.Of(pack);

        double before = network.Infer(Walk(pack, ("hiss", "yes"))).Probability("gutter");
        double after = network.Infer(Walk(pack, ("hiss", "yes"), ("paper", "loose"))).Probability("gutter");

        Assert.True(before > 0.2, $"a finding that it explains raises it: {before}");
        Assert.True(after < before - 0.05, $"a rival that explains the finding lowers it: {before} then {after}");
    }

    [Fact]
    public void Reasons_OneAnswer_IsTheLogOfItsRatioWhereStrengthsAgree()
    {
        // Strong for one answer and strong against the other: base rates with Z = 1 exist, so the ratio comes back as stated.
        KnowledgePack pack = TestPack.Of(
            [TestPack.Cause("leak", 0.2, TestPack.For("hiss", "yes", Strength.Strong), TestPack.Against("hiss", "no", Strength.Strong))],
            [TestPack.Question("hiss", "yes", "no")]);

        IReadOnlyList<Reason> reasons = BeliefNetwork.Of(pack).Infer(Walk(pack, ("hiss", "yes"))).Reasons("leak");

        Assert.Equal(Math.Log(8), Assert.Single(reasons).LogOdds, 1e-6);
    }

    /// <summary>Prior 0.35, ratio 3 each, by hand: one answer, or copies of one, 0.617647; three independent answers 0.935644. A group lies between, in any order.</summary>
    [Fact]
    public void Infer_ThreeMediumAnswersOfOneGroup_BetweenCopiesAndIndependent()
    {
        string[] ids = ["a", "b", "c"];
        Mechanism leak = TestPack.Cause("leak", 0.35, [.. ids.SelectMany(q => new[] { TestPack.For(q, "yes", Strength.Medium), TestPack.Against(q, "no", Strength.Medium) })]);
        double Of(string group, params string[] answered)
        {
            KnowledgePack pack = TestPack.Of([leak], [.. ids.Select(q => TestPack.Question(q, "yes", "no") with { EvidenceGroup = group })]);
            return BeliefNetwork.Of(pack).Infer(Walk(pack, [.. answered.Select(q => (q, "yes"))])).Probability("leak");
        }

        Assert.Equal(0.617647, Of("ear", "a"), 6);
        Assert.Equal(0.935644, Of("", ids), 6);
        double group = Of("ear", ids);
        Assert.InRange(group, 0.617647, 0.784232);
        Assert.Equal(group, Of("ear", "c", "a", "b"), 12);
    }

    [Fact]
    public void Infer_SameGroupSameRound_CountsTheSecondAtAQuarterPower()
    {
        Mechanism leak = TestPack.Cause(
            "leak",
            0.35,
            TestPack.For("a", "yes", Strength.Medium),
            TestPack.Against("a", "no", Strength.Medium),
            TestPack.For("b", "yes", Strength.Medium),
            TestPack.Against("b", "no", Strength.Medium));
        Observation[] grouped = [TestPack.Question("a", "yes", "no") with { EvidenceGroup = "ear" }, TestPack.Question("b", "yes", "no") with { EvidenceGroup = "ear" }];
        KnowledgePack pack = TestPack.Of([leak], grouped);
        BeliefNetwork network = BeliefNetwork.Of(pack);
        Situation once = Walk(pack, ("a", "yes"));
        double one = network.Infer(once).Probability("leak");
        double two = network.Infer(Walk(pack, ("a", "yes"), ("b", "yes"))).Probability("leak");

        // The weakened table is a table of its own with ratios 3^0.25 and 0.333^0.25, and it is divided by its own sums.
        double[][] weak = AnswerTable.Of(network.Questions[1].BaseRates, [[Math.Pow(3, 0.25), Math.Pow(0.333, 0.25)]]);
        double odds = one / (1 - one) * weak[0][1] / weak[0][0];
        Assert.Equal(odds / (1 + odds), two, 1e-12);
    }

    [Fact]
    public void Infer_NothingKnown_IsThePriors()
    {
        KnowledgePack pack = TestPack.Of([TestPack.Cause("leak", 0.2), TestPack.Cause("gutter", 0.05)], [TestPack.Question("hiss", "yes", "no")]);

        Beliefs beliefs = BeliefNetwork.Of(pack).Infer(Situation.Of(pack, new Logbook(), Today));

        Assert.Equal([0.2, 0.05], beliefs.Probabilities);
    }

    private static Situation Walk(KnowledgePack pack, params (string Observation, string Answer)[] answers) =>
        Situation.Of(pack, new Logbook { Rounds = [new("one", Today, [], [.. answers.Select(a => new Finding(a.Observation, a.Answer))], new Dictionary<string, FactEntry>())] }, Today);

    private static (KnowledgePack Pack, Logbook Logbook) Random(int causes, int questions, int seed)
    {
        Random chance = new(seed);
        Observation[] observations = [.. Enumerable.Range(0, questions).Select(q =>
            TestPack.Question($"q{q}", [.. Enumerable.Range(0, chance.Next(2, 5)).Select(a => $"a{a}")]) with { Ordered = chance.Next(2) == 0 })];
        Mechanism[] mechanisms = [.. Enumerable.Range(0, causes).Select(c => TestPack.Cause(
            $"c{c}",
            chance.NextDouble(),
            [.. from o in observations from a in o.Answers where chance.Next(3) == 0 select new Sign(o.Id, a.Id, chance.Next(2) == 0, (Strength)chance.Next(1, 4))]))];
        Finding[] findings = [.. observations.Where(_ => chance.Next(4) > 0).Select(o =>
            new Finding(o.Id, o.Answers[chance.Next(o.Answers.Count)].Id) { Weight = chance.Next(3) == 0 ? 0.75 : 1 })];
        return (TestPack.Of(mechanisms, observations), new Logbook { Rounds = [new("one", Today, [], findings, new Dictionary<string, FactEntry>())] });
    }

    // The judge: every state of every cause, one after the other, with the chances straight from the definition in the theory page.
    private static double[] Enumerate(BeliefNetwork network, Logbook logbook)
    {
        IReadOnlyList<Mechanism> causes = network.Pack.Mechanisms;
        double total = 0;
        double[] there = new double[causes.Count];
        for (int state = 0; state < 1 << causes.Count; state++)
        {
            double p = 1;
            for (int c = 0; c < causes.Count; c++)
            {
                p *= (state >> c & 1) == 1 ? causes[c].Prior : 1 - causes[c].Prior;
            }

            foreach (Finding f in logbook.Rounds[0].Findings)
            {
                Observation o = network.Pack.Observation(f.Observation)!;
                double[] row = Chances(network, o, state);
                int given = o.Answers.ToList().FindIndex(a => a.Id == f.Answer);
                int[] spread = [.. Enumerable.Range(0, row.Length).Where(a => a != given && (!o.Ordered || Math.Abs(a - given) == 1))];
                p *= f.Weight >= 1 ? row[given] : (f.Weight * row[given]) + spread.Sum(a => (1 - f.Weight) / spread.Length * row[a]);
            }

            total += p;
            for (int c = 0; c < causes.Count; c++)
            {
                there[c] += (state >> c & 1) == 1 ? p : 0;
            }
        }

        return [.. there.Select(x => x / total)];
    }

    private static double[] Chances(BeliefNetwork network, Observation o, int state)
    {
        double[] b = network.Questions.First(q => q.Observation == o).BaseRates;
        double[] w = new double[o.Answers.Count];
        for (int a = 0; a < w.Length; a++)
        {
            double Ratio(Mechanism m) => m.Signs.FirstOrDefault(s => s.Observation == o.Id && s.Answer == o.Answers[a].Id) is { } sign
                ? sign.SpeaksFor ? TestPack.Scales.Strengths[sign.Strength].For : TestPack.Scales.Strengths[sign.Strength].Against
                : 1;
            double largest = network.Pack.Mechanisms.Max(m => Math.Max(1, Ratio(m)));
            double l = Math.Min(b[a], 0.95 / largest);
            double silent = 1, against = 1;
            for (int c = 0; c < network.Pack.Mechanisms.Count; c++)
            {
                if ((state >> c & 1) == 1)
                {
                    double r = Ratio(network.Pack.Mechanisms[c]);
                    silent *= r > 1 ? 1 - ((r - 1) * l / (1 - l)) : 1;
                    against *= r < 1 ? r : 1;
                }
            }

            w[a] = b[a] * against * (largest > 1 ? (1 - ((1 - l) * silent)) / l : 1);
        }

        return [.. w.Select(x => x / w.Sum())];
    }
}
