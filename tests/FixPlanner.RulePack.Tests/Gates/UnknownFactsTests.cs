using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Safety;

namespace FixPlanner.RulePack.Tests.Gates;

/// <summary>Every gate with each thing that it hangs on unknown: what nobody knows never makes a gate clear.</summary>
public class UnknownFactsTests
{
    private static readonly Logbook Known = HarmlessCar.Logbook();

    public static TheoryData<string> Gates => new(ShippedPack.Pack.Gates.Select(g => g.Id));

    public static TheoryData<string, int> MustKnow
    {
        get
        {
            TheoryData<string, int> entries = [];
            foreach (Gate gate in ShippedPack.Pack.Gates)
            {
                for (int i = 0; i < gate.MustKnow.Count; i++)
                {
                    entries.Add(gate.Id, i);
                }
            }

            return entries;
        }
    }

    public static TheoryData<string, string> Triggers
    {
        get
        {
            TheoryData<string, string> facts = [];
            foreach (Gate gate in ShippedPack.Pack.Gates)
            {
                foreach (string fact in gate.TriggeredByFacts.SelectMany(c => c.All).SelectMany(t => new[] { t.Fact, t.OtherFact }).OfType<string>().Distinct())
                {
                    facts.Add(gate.Id, fact);
                }
            }

            return facts;
        }
    }

    [Theory]
    [MemberData(nameof(Gates))]
    public void Gate_AllKnownAndHarmless_IsClear(string gate)
    {
        GateStatus status = HarmlessCar.State(gate, Known);

        Assert.True(status.State == GateState.Clear, $"{status.State}: {string.Join("; ", status.Triggers.Select(t => t.InWords))} open: {string.Join(", ", status.Open.Select(o => o.Ask))}");
    }

    [Theory]
    [MemberData(nameof(MustKnow))]
    public void Gate_EntryNeverAsked_IsNotClear(string gate, int entry)
    {
        MustKnow must = ShippedPack.Pack.Gate(gate)!.MustKnow[entry];

        GateStatus status = HarmlessCar.State(gate, must.Ways.Aggregate(Known, (book, way) => book.Without(way)));

        Assert.True(status.State is GateState.NotChecked or GateState.InForce, $"{status.State}");
        Assert.True(status.State == GateState.NotChecked || status.Triggers.Count > 0);
        Assert.True(status.State == GateState.InForce || status.Open.Any(o => o.Entry == must));
    }

    [Theory]
    [MemberData(nameof(MustKnow))]
    public void Gate_EntryNotSureLater_IsNotClear(string gate, int entry)
    {
        MustKnow must = ShippedPack.Pack.Gate(gate)!.MustKnow[entry];

        // Facts that hold for the car stand beside the rounds: 'not sure' replaces them there.
        Logbook unsure = must.Ways.Aggregate(Known, (book, way) => book.Without(way).Unsure(way));

        Assert.True(HarmlessCar.State(gate, unsure).State is GateState.NotChecked or GateState.InForce);
    }

    [Theory]
    [MemberData(nameof(Triggers))]
    public void Gate_FactOfATriggerUnknown_IsClearOnlyIfNothingElseMustBeKnown(string gate, string fact)
    {
        GateStatus status = HarmlessCar.State(gate, Known.WithoutKnowing(fact));

        bool mustKnow = status.Gate.MustKnow.Any(m => m.Ways.Any(w => w.Fact == fact) && m.Ways.All(w => w.Fact == fact));
        Assert.True(!mustKnow || status.State is GateState.NotChecked or GateState.InForce, $"{status.State}");
        Assert.NotEqual(GateState.NotConcerned, status.State);
    }

    [Theory]
    [MemberData(nameof(Gates))]
    public void Gate_NothingKnownAtAll_IsNotClear(string gate)
    {
        Logbook nothing = Known with { Car = new Dictionary<string, FactEntry>(), Rounds = [], Limits = Known.Limits with { Facts = new Dictionary<string, FactEntry>() }, Work = [.. Known.Work.Select(w => new Work(w.Fix, w.State, w.Date))] };

        GateStatus status = HarmlessCar.State(gate, nothing);

        Assert.True(status.Gate.MustKnow.Count > 0, "a gate that must know nothing is clear by itself");
        Assert.True(status.State is GateState.NotChecked or GateState.InForce, $"{status.State}");
    }

    [Theory]
    [InlineData("top_speed_planned_kmh", 150)]
    [InlineData("power_planned_kw", 46)]
    [InlineData("power_planned_kw", 90)]
    public void RearGlass_FasterPlannedAndHoldUnknown_IsInForce(string fact, double value)
    {
        Logbook faster = Known with { Car = Known.Car.Where(f => f.Key != "rear_glass_hold" && f.Key != fact).Append(new(fact, new(FactValue.Of(value), null, HarmlessCar.Today, ""))).ToDictionary() };

        Assert.Equal(GateState.InForce, HarmlessCar.State("rear-glass", faster).State);
    }
}
