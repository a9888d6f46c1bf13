using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Program;

/// <summary>What programs read is the same whatever the language of the machine, and people may type a decimal comma.</summary>
public sealed class FiveCulturesTests : IDisposable
{
    private static readonly string[] Languages = ["C", "de_DE.UTF-8", "fr_FR.UTF-8", "tr_TR.UTF-8", "ar_SA.UTF-8"];
    private readonly JobFiles files = new();

    public void Dispose() => files.Dispose();

    [Theory]
    [InlineData("plan", "lindle.logbook.yaml", "--format", "json")]
    [InlineData("runs", "lindle-roof-lip.csv", "--logbook", "lindle.logbook.yaml", "--format", "json")]
    [InlineData("calc", "air-density", "--format", "json")]
    public void Json_InEveryLanguage_HasTheSameBytes(params string[] arguments)
    {
        files.Copy("lindle");
        File.Copy(Path.Combine(AppContext.BaseDirectory, "Demo", "runs", "lindle-roof-lip.csv"), files.New("lindle-roof-lip.csv"));

        Ran[] ran = [.. Languages.Select(language => Ran.In(files.Folder, "", new Dictionary<string, string> { ["LC_ALL"] = language, ["LANG"] = language }, arguments))];

        Assert.All(ran, one => Assert.True(one.Exit == ran[0].Exit && one.Output == ran[0].Output, one.Talk));
        Assert.StartsWith("{", ran[0].Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Budget_WithDecimalComma_IsTheSameBudget()
    {
        files.Copy("lindle");

        string comma = Ran.In(files.Folder, "", "plan", "lindle.logbook.yaml", "--budget", "120,5 EUR", "--format", "json").Output;

        Assert.Equal(Ran.In(files.Folder, "", "plan", "lindle.logbook.yaml", "--budget", "120.5 EUR", "--format", "json").Output, comma);
        Assert.StartsWith("{", comma, StringComparison.Ordinal);
    }
}
