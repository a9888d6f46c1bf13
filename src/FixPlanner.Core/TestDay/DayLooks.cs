using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;
using FixPlanner.Core.Quantities;
using FixPlanner.Core.Safety;

namespace FixPlanner.Core.TestDay;

/// <summary>Everything that is worth looking at: what a gate must know, what was put off, and what can still change the plan.</summary>
internal sealed class DayLooks(Situation s, Plan plan, IReadOnlyDictionary<AskedFor, double> gains)
{
    private readonly KnowledgePack pack = s.Pack;
    private readonly HashSet<AskedFor> waiting = [];

    /// <summary>Questions about a piece of work while none is recorded: there is nothing yet to hang the answer on. Known after <see cref="All"/>.</summary>
    public IReadOnlyCollection<AskedFor> WaitForWork => waiting;

    /// <summary>The looks in the order of the sheet, not yet cut to the time.</summary>
    public IReadOnlyList<DayLook> All()
    {
        Dictionary<AskedFor, Gate> forGate = [];
        List<AskedFor> gateOrder = [];
        foreach (GateStatus gate in plan.Gates.Where(g => g.State == GateState.NotChecked))
        {
            foreach (OpenMustKnow must in gate.Open)
            {
                AskedFor key = new(must.IsFact, must.Ask);
                if (key.IsFact && pack.Fact(key.Id)?.Scope == FactScope.Fix && !s.Logbook.Work.Any(w => w.CountsAsPlanned))
                {
                    waiting.Add(key);
                }
                else if (forGate.TryAdd(key, gate.Gate))
                {
                    gateOrder.Add(key);
                }
            }
        }

        double cut = LookOrder.Cut(plan.Totals.Points);
        Dictionary<string, DateOnly?> putOff = PutOff();
        List<DayLook> looks = [];
        foreach (AskedFor key in gateOrder.Concat(pack.Observations.Select(o => new AskedFor(false, o.Id))).Concat(pack.Facts.Where(f => f.Moment == FactMoment.InZone).Select(f => new AskedFor(true, f.Id))).Distinct())
        {
            double gain = gains.GetValueOrDefault(key);
            bool waits = !key.IsFact && putOff.ContainsKey(key.Id);
            if (IsOpen(key) && (forGate.ContainsKey(key) || waits || gain > cut) && Of(key, gain) is { } look)
            {
                looks.Add(look with { ForGate = forGate.GetValueOrDefault(key), PutOff = waits ? putOff[key.Id] ?? s.Today : null });
            }
        }

        return [.. looks.GroupBy(l => l.When).OrderBy(g => g.Key).SelectMany(g => g.Where(l => l.ForGate is not null).OrderBy(l => gateOrder.IndexOf(l.Key))
            .Concat(LookOrder.Sorted(g.Where(l => l.ForGate is null), l => l.Zone?.Order ?? int.MaxValue, l => l.GainPoints, l => l.Minutes, l => l.Key.Id)))];
    }

    private bool IsOpen(AskedFor key) => key.IsFact ? s.Fact(key.Id) is null : !s.Findings.ContainsKey(key.Id) && s.Is(pack.Observation(key.Id)?.AppliesWhen) != Truth.No;

    private DayLook? Of(AskedFor key, double gain)
    {
        if (key.IsFact)
        {
            // What a chosen fix asks is answered while the trials are chosen: that part of the day has its own time.
            return pack.Fact(key.Id) is not { } f ? null : new(key, LookWhen.Parked, f.Zone is { } zone ? pack.Zone(zone) : null, f.Ask.Length > 0 ? f.Ask : f.Title + "?", [.. (f.Kind == FactKind.YesNo ? ["yes", "no"] : f.Choices).Select(c => (c, c))], f.Moment == FactMoment.WithFix ? 0 : 1, gain)
            {
                How = f.How,
                Unit = f.Kind == FactKind.Number ? f.Unit : f.Kind == FactKind.Year ? "year" : "",
            };
        }

        return pack.Observation(key.Id) is not { } o ? null : new(key, o.When, pack.Zone(o.Zone), o.Question, [.. o.Answers.Select(a => (a.Id, a.Text))], Math.Max(1, o.EffortMinutes), gain)
        {
            How = o.How,
            Speed = o.When is LookWhen.Parked or LookWhen.Workshop ? "" : Prose.Plain(o.Speed),
            PrivateGround = o.PrivateGround,
            State = o.State,
            NoticedBy = o.NoticedBy,
        };
    }

    // 'Not today' counts until the question is answered, or somebody says later that nobody looked.
    private Dictionary<string, DateOnly?> PutOff()
    {
        Dictionary<string, DateOnly?> put = [];
        foreach (Round round in s.Logbook.Rounds.OrderBy(r => r.Date ?? DateOnly.MinValue))
        {
            foreach (Finding f in round.Findings)
            {
                string id = pack.Observation(f.Observation)?.Id ?? f.Observation;
                if (f.Not == NotAnswered.NotToday)
                {
                    put[id] = round.Date;
                }
                else
                {
                    put.Remove(id);
                }
            }
        }

        return put;
    }
}
