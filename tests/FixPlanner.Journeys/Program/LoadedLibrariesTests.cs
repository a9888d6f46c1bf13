using FixPlanner.Journeys.Jobs;

namespace FixPlanner.Journeys.Program;

/// <summary>What has no screen does not wait for the screen library.</summary>
public sealed class LoadedLibrariesTests
{
    private const string ScreenLibrary = "Terminal.Gui";

    [Theory]
    [InlineData("--help")]
    [InlineData("rules", "check")]
    [InlineData("calc", "drag", "--help")]
    [InlineData("calc")]
    [InlineData("plan", "lindle", "--format", "json")]
    [InlineData("testday", "lindle")]
    [InlineData("explain", "FP1104")]
    public void A_command_without_a_screen_does_not_load_the_screen_library(params string[] arguments)
    {
        IReadOnlyCollection<string> loaded = LoadedBy([.. arguments], out Ran ran);
        Assert.True(loaded.Contains("fixplanner"), ran.Talk);
        Assert.DoesNotContain(ScreenLibrary, loaded);
    }

    [Fact]
    public void The_hook_sees_a_library_that_is_loaded()
    {
        // Guards the test above: a hook that saw nothing would let everything pass.
        IReadOnlyCollection<string> loaded = LoadedBy(["plan", "lindle", "--format", "json"], out Ran ran);
        Assert.True(ran.Exit == 0, ran.Talk);
        Assert.Contains("YamlDotNet", loaded);
    }

    private static string[] LoadedBy(string[] arguments, out Ran ran)
    {
        using JobFiles files = new();
        string list = files.New("loaded.txt");
        string[] named = [.. arguments.Select(a => a == "lindle" ? files.Copy("lindle") : a)];
        ran = Ran.In(files.Folder, "", new Dictionary<string, string>
        {
            ["DOTNET_STARTUP_HOOKS"] = typeof(StartupHook).Assembly.Location,
            [StartupHook.FileVariable] = list,
        }, named);
        return File.Exists(list) ? File.ReadAllLines(list) : [];
    }
}
