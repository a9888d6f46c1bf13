namespace FixPlanner.PublishedChecks;

public sealed class PhysicsChecksTests
{
    public static TheoryData<string> Ids => [.. PhysicsChecks.All().Select(check => check.Row.Id)];

    [Theory]
    [MemberData(nameof(Ids))]
    public void Computed_Row_IsWithinItsToleranceOfThePrintedValue(string id)
    {
        (CheckRow row, Func<CheckRow, double>? compute) = PhysicsChecks.All().Single(check => check.Row.Id == id);
        Assert.True(compute is not null, $"nothing computes {id}");
        double computed = compute(row);
        Assert.True(
            Math.Abs(computed - row.Expected) <= row.Tolerance * Math.Abs(row.Expected),
            $"{id}, {row.Quantity}: computed {computed} {row.Unit}, printed {row.Expected} ± {row.Tolerance * 100} % ({row.WhyTolerance}); {row.Source}, {row.Place}");
    }

    [Fact]
    public void Rows_Texts_SayWhereTheyComeFromAndWhyTheirTolerance() =>
        Assert.All(PhysicsChecks.All(), check => Assert.All([check.Row.Source, check.Row.Place, check.Row.WhyTolerance], text => Assert.NotEmpty(text)));

    [Fact]
    public void Functions_Ids_AllHaveARow() =>
        Assert.All(PhysicsChecks.Rooms, room => Assert.Empty(room.Computed.Keys.Except(CheckFile.Read(room.File).Select(row => row.Id))));

    // What the README claims. A row may be added; one that is lost must be missed.
    [Theory]
    [InlineData(CheckMark.Read, 120)]
    [InlineData(CheckMark.SecondHand, 18)]
    [InlineData(CheckMark.FromMemory, 15)]
    [InlineData(CheckMark.SelfComputed, 40)]
    public void Rows_Points_AreAtLeastAsManyAsWeClaim(CheckMark mark, int claimed) =>
        Assert.InRange(PhysicsChecks.All().Count(check => !check.Row.IsBand && check.Row.Mark == mark), claimed, int.MaxValue);

    [Fact]
    public void Rows_Ids_AreUnique() => Assert.Empty(PhysicsChecks.All().GroupBy(check => check.Row.Id).Where(same => same.Count() > 1).Select(same => same.Key));
}
