using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Planning;

namespace FixPlanner.Tests.Planning;

/// <summary>A long sitting must not fill the memory. Runs alone: other tests would be counted as well.</summary>
[Collection(nameof(Alone))]
public class BoundedMemoryTests
{
    private const int Answers = 10_000;

    [CollectionDefinition(nameof(Alone), DisableParallelization = true)]
    public sealed class Alone;

    [Fact]
    public void Assess_TenThousandAnswersAndUndos_MemoryStaysBounded()
    {
        Assessor assessor = new(ShippedPack.Pack);
        IReadOnlyList<Observation> observations = ShippedPack.Pack.Observations;
        Logbook standing = ShippedPack.Car(2);
        double points = 0;
        long early = 0;
        for (int i = 0; i < Answers; i++)
        {
            Observation o = observations[i * 7 % observations.Count];
            Logbook before = standing;
            standing = standing.With(new SetFinding("first-look", new(o.Id, o.Answers[i % o.Answers.Count].Id)));

            // Every tenth answer is assessed as the wizard does it, taken back and assessed again; one in five hundred with its questions.
            if (i % 10 == 0)
            {
                points += assessor.Assess(standing, ShippedPack.Today, i % 500 == 0 ? PlanDepth.WithQuestions : PlanDepth.Quick).Plan.Totals.Points;
                points += assessor.Assess(before, ShippedPack.Today, PlanDepth.Quick).Plan.Totals.Points;
            }

            standing = i % 3 == 0 ? standing : before;
            early = i == Answers / 10 ? GC.GetTotalMemory(forceFullCollection: true) : early;
        }

        long late = GC.GetTotalMemory(forceFullCollection: true);
        Assert.True(points != 0);
        Assert.True(late - early < 2_000_000, $"{(late - early) / 1e6:0.0} MB more after {Answers} answers and undos than after a tenth of them");
    }
}
