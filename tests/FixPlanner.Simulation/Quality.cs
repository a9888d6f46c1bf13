using FixPlanner.Core.Interview;

namespace FixPlanner.Simulation;

/// <summary>What came of many simulated cars of one world.</summary>
internal sealed class Quality
{
    private readonly List<CarOutcome> cars = [];

    private Quality(World world) => World = world;

    public World World { get; }

    public IReadOnlyList<CarOutcome> Cars => cars;

    /// <summary>Calibration after the interview.</summary>
    public Calibration AfterInterview { get; } = new();

    /// <summary>Calibration after everything was asked.</summary>
    public Calibration AfterEverything { get; } = new();

    /// <summary>Points of the interview's plans over those of asking everything.</summary>
    public Ratio ShareOfEverything => Ratio.Of(cars, c => c.Interview, c => c.Everything);

    /// <summary>The same, measured by what is believed once everything was asked.</summary>
    public Ratio ShareAsBelieved => Ratio.Of(cars, c => c.InterviewAsBelieved, c => c.EverythingAsBelieved);

    /// <summary>The same for what the answers add to the plan without a walk.</summary>
    public Ratio ShareOfGain => Ratio.Of(cars, c => c.Interview - c.Nothing, c => c.Everything - c.Nothing);

    /// <summary>Questions of the interview over those of asking everything.</summary>
    public Ratio ShareOfQuestions => Ratio.Of(cars, c => c.Asked, c => c.AskedInFull);

    /// <summary>Lives through a number of cars.</summary>
    public static Quality Of(PackUnderTest tested, World world, int count, int seed)
    {
        Quality quality = new(world);
        for (int i = 0; i < count; i++)
        {
            SimulatedCar car = new(tested, world, (seed * 100_003) + i);
            Walk everything = Walk.InFixedOrder(tested, car);
            Walk interview = Walk.ByInterview(tested, car);
            TrueWorth worth = new(tested, car, everything.Last);
            quality.AfterInterview.Add(interview.Last.Beliefs.Probabilities, interview.Last.Beliefs.PriorProbabilities, car.There);
            quality.AfterEverything.Add(everything.Last.Beliefs.Probabilities, everything.Last.Beliefs.PriorProbabilities, car.There);
            quality.cars.Add(new(
                worth.Of(interview.Plans[0]),
                worth.Of(interview.Plans[^1]),
                worth.Of(everything.PlanAfter(interview.Asked)),
                worth.Of(everything.Plans[^1]),
                worth.Best,
                worth.AsBelieved(interview.Plans[^1]),
                worth.AsBelieved(everything.Plans[^1]),
                interview.Asked,
                everything.Asked,
                interview.SettledAfter,
                everything.SettledAfter,
                interview.Minutes,
                everything.Minutes,
                PlaceOf(worth.MainCause, interview.Last),
                PlaceOf(worth.MainCause, everything.Last),
                TopIsThere(interview.Last, car.There)));
        }

        return quality;
    }

    // Innocent sights and faults of the evidence stand in the list too, as the reports show it.
    private static int? PlaceOf(int? cause, Assessment a) =>
        cause is { } main ? 1 + a.Beliefs.Probabilities.Count(p => p > a.Beliefs.Probabilities[main]) : null;

    private static bool TopIsThere(Assessment a, bool[] truth) => truth[a.Beliefs.Probabilities.Index().MaxBy(p => p.Item).Index];
}

/// <summary>What came of one simulated car.</summary>
/// <param name="Nothing">Points of the plan before the walk.</param>
/// <param name="Interview">Points of the plan after the interview.</param>
/// <param name="FixedOrder">Points of the plan after as many questions in walking order.</param>
/// <param name="Everything">Points of the plan after all questions.</param>
/// <param name="Best">Points of the best plan for somebody who knows the causes.</param>
/// <param name="InterviewAsBelieved">Points of the interview's plan with the beliefs after all questions.</param>
/// <param name="EverythingAsBelieved">The same for the plan after all questions.</param>
/// <param name="Asked">Questions that the interview asked.</param>
/// <param name="AskedInFull">Questions there are for this car.</param>
/// <param name="SettledAfter">Questions of the interview until its plan changed no more.</param>
/// <param name="SettledInFull">Questions in walking order until the plan changed no more.</param>
/// <param name="Minutes">Effort of the interview.</param>
/// <param name="MinutesInFull">Effort of all questions.</param>
/// <param name="PlaceOfMain">Place of the true main cause among all causes by belief, after the interview; null when no cause is worth anything.</param>
/// <param name="PlaceInFull">The same after all questions.</param>
/// <param name="TopIsThere">The cause that is believed most is really there.</param>
internal sealed record CarOutcome(
    double Nothing,
    double Interview,
    double FixedOrder,
    double Everything,
    double Best,
    double InterviewAsBelieved,
    double EverythingAsBelieved,
    int Asked,
    int AskedInFull,
    int SettledAfter,
    int SettledInFull,
    double Minutes,
    double MinutesInFull,
    int? PlaceOfMain,
    int? PlaceInFull,
    bool TopIsThere);

/// <summary>A ratio of two sums over cars.</summary>
/// <param name="Value">The ratio.</param>
/// <param name="Error">Its standard error, cars taken as independent.</param>
internal readonly record struct Ratio(double Value, double Error)
{
    public static Ratio Of(IReadOnlyList<CarOutcome> cars, Func<CarOutcome, double> above, Func<CarOutcome, double> below)
    {
        double ratio = cars.Sum(above) / cars.Sum(below);
        double mean = cars.Average(below);
        double squares = cars.Sum(c => Math.Pow(above(c) - (ratio * below(c)), 2));
        return new(ratio, Math.Sqrt(squares / Math.Max(1, cars.Count - 1) / cars.Count) / mean);
    }
}
