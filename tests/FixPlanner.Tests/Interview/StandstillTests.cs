using FixPlanner.Core.Interview;
using FixPlanner.Core.Knowledge;
using FixPlanner.Core.Logbooks;
using FixPlanner.Files.Logbooks;
using FixPlanner.Tests.Planning;

namespace FixPlanner.Tests.Interview;

/// <summary>While a stop is in force no look sends the owner on a drive without saying so first.</summary>
public sealed class StandstillTests
{
    private const string Smell = "logbook: 1\nrounds:\n  - {id: a, date: 2026-05-16, facts: {fumes_inside: yes}}\n";

    [Theory]
    [InlineData("logbook: 1\n", false)]
    [InlineData(Smell, true)]
    public void Of_ALookOnADrive_SaysThatTheCarStays_OnlyWhileAStopIsInForce(string text, bool stays)
    {
        Logbook logbook = LogbookReader.Read("car.yaml", text, ShippedPack.Pack).Logbook!;
        Interviewer interviewer = new(ShippedPack.Pack, ShippedPack.Today);
        foreach (Observation look in ShippedPack.Pack.Observations.Where(o => o.When is LookWhen.Drive or LookWhen.Film or LookWhen.Parked))
        {
            InterviewState at = interviewer.Start(logbook) with { Place = new(Section.WalkRound, new(QuestionKind.Observation, look.Id)) };
            bool said = interviewer.Current(at)!.Standstill?.StartsWith("The car stays where it is until", StringComparison.Ordinal) == true;
            Assert.Equal(stays && look.When != LookWhen.Parked, said);
        }
    }
}
