using FixPlanner.Core.Measurement.Comparing;
using FixPlanner.Core.Measurement.Statistics;

namespace FixPlanner.Tests.Measurement.Comparing;

public sealed class VerdictTests
{
    [Theory]
    [InlineData(0.01, 0.05, 0.02, 0.02, "shown-worse")]
    [InlineData(0.01, 0.05, 0.20, 0.02, "shown-worse")]
    [InlineData(-0.05, -0.01, 0.02, 0.02, "shown-better")]
    [InlineData(-0.05, -0.01, 0.021, 0.02, "shown-size-doubtful")]
    [InlineData(-0.01, 0.01, 0.03, 0.02, "no-change-above")]
    [InlineData(-0.04, 0.01, 0.03, 0.02, "too-weak")]
    [InlineData(-0.04, 0.01, 0.02, 0.02, "not-shown")]
    public void Of_IntervalsInTheOrderOfTheRule_GiveTheWord(double low, double high, double shown, double planned, string word)
    {
        ConfidenceInterval interval = new((low + high) / 2, low, high);
        Assert.Equal(word, Verdicts.Of(interval, interval, shown, planned, Better.Less).Key());
    }

    [Fact]
    public void Of_MoreIsBetter_TurnsTheSides()
    {
        ConfidenceInterval up = new(0.05, 0.02, 0.08);
        Assert.Equal(Verdict.ShownBetter, Verdicts.Of(up, up, 0.01, 0.05, Better.More));
        Assert.Equal(Verdict.ShownWorse, Verdicts.Of(up.Scaled(-1), up.Scaled(-1), 0.01, 0.05, Better.More));
    }

    [Fact]
    public void Sentence_EveryVerdict_HasWordsOfItsOwn()
    {
        ValueComparison comparison = Compare(-0.05, 0.001)!;
        string[] sentences = [.. Enum.GetValues<Verdict>().Select(verdict => VerdictWords.Sentence(comparison with { Verdict = verdict }, "drag area", "m2"))];
        Assert.Equal(sentences.Length, sentences.Distinct().Count());
        Assert.All(sentences, sentence => Assert.EndsWith(".", sentence, StringComparison.Ordinal));
    }

    [Fact]
    public void WhatItWouldTake_WeakTest_NamesAPossibleNumberOrSaysThatThereIsNone()
    {
        ValueComparison weak = Compare(-0.01, 0.03)!;
        Assert.Equal(Verdict.TooWeak, weak.Verdict);
        Assert.Contains("in all", VerdictWords.WhatItWouldTake(weak, "m2", "pairs"), StringComparison.Ordinal);
        Assert.Contains("more than 200", VerdictWords.WhatItWouldTake(Compare(-0.01, 0.3)!, "m2", "pairs"), StringComparison.Ordinal);
        Assert.Contains("No number", VerdictWords.WhatItWouldTake(Compare(-0.01, 0.03, 0.05)!, "m2", "pairs"), StringComparison.Ordinal);
        Assert.Empty(VerdictWords.WhatItWouldTake(Compare(-0.05, 0.001)!, "m2", "pairs"));
    }

    [Fact]
    public void Of_LinearDrift_IsTakenOutOfBlocksAndRegression()
    {
        MeasuredValue[] values = [.. "ABBABAAB".Select((letter, i) => new MeasuredValue(1 + (0.01 * i) + (letter == 'B' ? -0.1 : 0) + (i % 3 * 0.0001), letter == 'B', i))];
        ValueComparison comparison = ValueComparison.Of(values, new(0.05))!;
        Assert.Equal(-0.1, comparison.DriftCorrected!.Estimate, 3e-4);
        Assert.Equal(-0.1, comparison.BlockPaired!.Estimate, 3e-4);
        Assert.Equal(0.01, comparison.DriftPerUnit!.Value, 1e-4);
    }

    [Fact]
    public void Scatter_DaysOfDifferentLevel_IsThatWithinTheDays()
    {
        MeasuredValue[] values = [.. "ABBAABBA".Select((letter, i) => new MeasuredValue((i < 4 ? 0.8 : 1.2) + (letter == 'B' ? -0.05 : 0) + (0.002 * (i % 2)), letter == 'B', i, i < 4 ? "1" : "2"))];
        ValueComparison comparison = ValueComparison.Of(values, new(0.02))!;
        Assert.Equal(ComparisonMethod.WithinDays, comparison.Method);
        Assert.Equal(-0.05, comparison.Decisive.Estimate, 1e-9);
        Assert.InRange(comparison.Scatter, 0.0005, 0.003);
    }

    [Fact]
    public void Of_OneValueOnASide_IsNoComparison() =>
        Assert.Null(ValueComparison.Of([new(1, false, 0), new(1, false, 1), new(1, true, 2)], new(0.1)));

    [Fact]
    public void For_MoreScatter_NeedsMoreAndTheAnswerShowsTheChange()
    {
        int few = PairsNeeded.For(0.01, 0.02)!.Value;
        int many = PairsNeeded.For(0.03, 0.02)!.Value;
        Assert.True(many > few && few % 2 == 0);
        Assert.True(PairsNeeded.SmallestShown(0.03, many) <= 0.02 && PairsNeeded.SmallestShown(0.03, many - 2) > 0.02);
        Assert.Null(PairsNeeded.For(1, 0.001));
    }

    private static ValueComparison? Compare(double change, double scatter, double instrument = 0) => ValueComparison.Of(
        [.. "ABBABAAB".Select((letter, i) => new MeasuredValue(0.8 + (letter == 'B' ? change : 0) + (scatter * (i % 4 - 1.5)), letter == 'B', i))], new(0.02, InstrumentError: instrument));
}
