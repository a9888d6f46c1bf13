using FixPlanner.Core.Interview;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Simulation;

/// <summary>A walk round a simulated car: which questions were asked, and which plan stood after each.</summary>
/// <param name="Plans">Ids of the fixes in the plan: before the walk, then after each question.</param>
/// <param name="Last">What followed in the end.</param>
/// <param name="Minutes">Effort of all questions together.</param>
internal sealed record Walk(IReadOnlyList<IReadOnlySet<string>> Plans, Assessment Last, double Minutes)
{
    /// <summary>Questions asked.</summary>
    public int Asked => Plans.Count - 1;

    /// <summary>Questions asked until the plan was the one of the end.</summary>
    public int SettledAfter
    {
        get
        {
            int n = Asked;
            while (n > 0 && Plans[n - 1].SetEquals(Plans[^1]))
            {
                n--;
            }

            return n;
        }
    }

    /// <summary>The plan after so many questions; the last one when fewer were asked.</summary>
    public IReadOnlySet<string> PlanAfter(int questions) => Plans[Math.Min(questions, Asked)];

    /// <summary>As the interview asks: it chooses, and it stops where more answers will not change the plan.</summary>
    public static Walk ByInterview(PackUnderTest tested, SimulatedCar car)
    {
        Recorder record = new(tested, PlanDepth.WithQuestions);
        InterviewState state = new(car.Start, new(Section.WalkRound));
        record.Assess(state.Logbook);
        while (tested.Interviewer.OpenMoments(state, record.Last) is [var moment, ..])
        {
            state = tested.Interviewer.NextOnWalk(state with { When = moment }, record.Last);
            while (state.Place.Question is { } key)
            {
                state = tested.Interviewer.NextOnWalk(record.Ask(state, key, car.Answer(key)), record.Last);
            }
        }

        return record.Done();
    }

    /// <summary>Everything that is for this car, in walking order.</summary>
    public static Walk InFixedOrder(PackUnderTest tested, SimulatedCar car)
    {
        Recorder record = new(tested, PlanDepth.Quick);
        InterviewState state = new(car.Start, new(Section.WalkRound));
        record.Assess(state.Logbook);
        foreach (QuestionKey key in tested.Agenda.WalkQuestions())
        {
            if (tested.Agenda.Applies(key, record.Last.Situation) && tested.Agenda.IsOpen(key, record.Last.Situation))
            {
                state = record.Ask(state with { Place = new(Section.WalkRound, key) }, key, car.Answer(key));
            }
        }

        return record.Done();
    }

    private sealed class Recorder(PackUnderTest tested, PlanDepth depth)
    {
        private readonly List<IReadOnlySet<string>> plans = [];
        private double minutes;

        public Assessment Last { get; private set; } = null!;

        public Assessment Assess(Logbook logbook)
        {
            Last = tested.Assessor.Assess(logbook, PackUnderTest.Today, depth);
            plans.Add(Last.Plan.Items.Select(i => i.Fix.Id).ToHashSet());
            return Last;
        }

        public InterviewState Ask(InterviewState state, QuestionKey key, Given given)
        {
            minutes += key.Kind == QuestionKind.Observation ? Math.Max(1, tested.Pack.Observation(key.Id)!.EffortMinutes) : 1;
            Step step = tested.Interviewer.Answer(state, given);
            if (step.Refusal is { } refusal)
            {
                throw new InvalidOperationException($"{key} takes no {given}: {refusal.What}");
            }

            Assess(step.State.Logbook);
            return step.State;
        }

        public Walk Done() => new(plans, Last, minutes);
    }
}
