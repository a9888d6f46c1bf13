using System.Globalization;
using System.Text;

namespace FixPlanner.Simulation;

/// <summary>The tables of docs/theory/diagnosis-quality.md.</summary>
internal static class QualityPage
{
    public static string Of(IReadOnlyList<Quality> worlds, int seed)
    {
        StringBuilder page = new();
        void Line(FormattableString line) => page.Append(line.ToString(CultureInfo.InvariantCulture)).Append('\n');
        Line($"Seed {seed}.");
        Line($"");
        Line($"| world | cars | plan value against asking everything | by the beliefs after everything | gain of the answers against asking everything | questions | of all | effort | fixed order, as many questions | main cause first | in the first three | the same, everything asked | top cause is there |");
        Line($"|---|---|---|---|---|---|---|---|---|---|---|---|---|");
        foreach (Quality q in worlds)
        {
            CarOutcome[] main = [.. q.Cars.Where(c => c.PlaceOfMain is not null)];
            Line($"| {q.World.Name} | {q.Cars.Count} | {Share(q.ShareOfEverything)} | {Share(q.ShareAsBelieved)} | {Share(q.ShareOfGain)} | {q.Cars.Average(c => c.Asked):0.0} of {q.Cars.Average(c => c.AskedInFull):0} | {Share(q.ShareOfQuestions)} | {100 * q.Cars.Sum(c => c.Minutes) / q.Cars.Sum(c => c.MinutesInFull):0} % | {Share(Ratio.Of(q.Cars, c => c.FixedOrder, c => c.Everything))} | {Percent(main, c => c.PlaceOfMain == 1)} | {Percent(main, c => c.PlaceOfMain <= 3)} | {Percent(main, c => c.PlaceInFull == 1)}, {Percent(main, c => c.PlaceInFull <= 3)} | {Percent(q.Cars, c => c.TopIsThere)} |");
        }

        Line($"");
        Line($"| world | without a walk | after the interview | everything asked | causes known | plan settled after, interview | fixed order | Brier score before, after the interview, everything asked | largest error of a tenth |");
        Line($"|---|---|---|---|---|---|---|---|---|");
        foreach (Quality q in worlds)
        {
            Line($"| {q.World.Name} | {q.Cars.Average(c => c.Nothing):0.00} | {q.Cars.Average(c => c.Interview):0.00} | {q.Cars.Average(c => c.Everything):0.00} | {q.Cars.Average(c => c.Best):0.00} | {q.Cars.Average(c => c.SettledAfter):0} | {q.Cars.Average(c => c.SettledInFull):0} | {q.AfterInterview.BrierOfPriors:0.000}, {q.AfterInterview.Brier:0.000}, {q.AfterEverything.Brier:0.000} | {100 * q.AfterInterview.LargestError:0} points |");
        }

        Line($"");
        Line($"Reliability in the world '{worlds[0].World.Name}': believed, and really there.");
        Line($"");
        Line($"| after the interview: beliefs | mean belief | there | after everything: beliefs | mean belief | there |");
        Line($"|---|---|---|---|---|---|");
        foreach (((int Count, double Believed, double There) a, (int Count, double Believed, double There) b) in worlds[0].AfterInterview.Curve.Zip(worlds[0].AfterEverything.Curve))
        {
            Line($"| {a.Count} | {100 * a.Believed:0.0} % | {100 * a.There:0.0} % | {b.Count} | {100 * b.Believed:0.0} % | {100 * b.There:0.0} % |");
        }

        return page.ToString();
    }

    private static string Share(Ratio r) => string.Create(CultureInfo.InvariantCulture, $"{100 * r.Value:0.0} ± {100 * r.Error:0.0} %");

    private static string Percent(IReadOnlyCollection<CarOutcome> cars, Func<CarOutcome, bool> which) =>
        string.Create(CultureInfo.InvariantCulture, $"{100.0 * cars.Count(which) / Math.Max(1, cars.Count):0} %");
}
