using System.Text.RegularExpressions;
using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Core.Quantities;
using FixPlanner.Files.Logbooks;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Interview;

/// <summary>The speed of a look is said once, with its unit once.</summary>
public sealed class SpeedOfLooksTests
{
    [Fact]
    public void Cautions_OfEveryLook_NameEachSpeedWithItsUnitOnce()
    {
        Logbook logbook = LogbookReader.Read("car.yaml", "logbook: 1\n", ShippedPack.Pack).Logbook!;
        Interviewer interviewer = new(ShippedPack.Pack, ShippedPack.Today);
        List<string> speeds = [];
        foreach (Observation look in ShippedPack.Pack.Observations)
        {
            InterviewState at = interviewer.Start(logbook) with { Place = new(Section.WalkRound, new(QuestionKind.Observation, look.Id)) };
            speeds.AddRange(interviewer.Current(at)!.Cautions.Select(Prose.Plain).Where(c => c.StartsWith("Speed: ", StringComparison.Ordinal)));
        }

        Assert.True(speeds.Count > 50, $"only {speeds.Count} looks name a speed");
        Assert.All(speeds, said => Assert.Equal(Regex.Count(said, "[0-9]+"), Regex.Count(said, "km/h")));
    }
}
