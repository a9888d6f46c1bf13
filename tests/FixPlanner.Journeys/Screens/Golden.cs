using System.Runtime.CompilerServices;

namespace FixPlanner.Journeys.Screens;

/// <summary>Compares a text with the one kept in the folder 'golden' beside the test.</summary>
/// <remarks>To take new texts over, run the tests with FIXPLANNER_GOLDEN=write, then review the change as text.</remarks>
internal static class Golden
{
    public const string Variable = "FIXPLANNER_GOLDEN";

    /// <summary>A text kept for the screens.</summary>
    public static string Kept(string name) => File.ReadAllText(PathOf(name, Here())).ReplaceLineEndings("\n");

    public static void Matches(string name, string actual, [CallerFilePath] string caller = "")
    {
        string path = PathOf(name, caller);
        string text = actual + "\n";
        if (Environment.GetEnvironmentVariable(Variable) == "write")
        {
            Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            File.WriteAllText(path, text);
            return;
        }
        Assert.True(File.Exists(path), $"No golden text {path}: run with {Variable}=write and review it.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), text);
    }

    private static string PathOf(string name, string caller) => Path.Combine(Path.GetDirectoryName(caller)!, "golden", name + ".txt");

    private static string Here([CallerFilePath] string here = "") => here;
}
