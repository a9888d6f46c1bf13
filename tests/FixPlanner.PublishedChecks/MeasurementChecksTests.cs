namespace FixPlanner.PublishedChecks;

public sealed class MeasurementChecksTests
{
    private static readonly Dictionary<string, CheckRow> Rows = CheckFile.Read("measurement.csv").ToDictionary(row => row.Id);

    public static TheoryData<string> Ids => [.. Rows.Keys];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Computed_Row_IsWithinItsToleranceOfThePrintedValue(string id)
    {
        CheckRow row = Rows[id];
        double computed = MeasurementChecks.Compute(row);
        Assert.True(
            Math.Abs(computed - row.Expected) <= row.Tolerance * Math.Abs(row.Expected),
            $"{id}, {row.Quantity}: computed {computed} {row.Unit}, printed {row.Expected} ± {row.Tolerance * 100} % ({row.WhyTolerance}); {row.Source}, {row.Place}");
    }

    [Fact]
    public void Rows_Texts_SayWhereTheyComeFromAndWhyTheirTolerance() =>
        Assert.All(Rows.Values, row => Assert.All([row.Source, row.Place, row.WhyTolerance], text => Assert.NotEmpty(text)));

    [Fact]
    public void Rows_Count_IsAtLeastWhatWeClaim() =>
        Assert.True(Rows.Values.Count(row => row.Mark == CheckMark.Read) >= 118, "read in the named source and computed by the program");
}
