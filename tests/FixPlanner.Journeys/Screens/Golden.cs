using System.Runtime.CompilerServices;

namespace FixPlanner.Journeys.Screens;

/// <summary>Compares a text with the one kept in the folder 'golden' beside the test.</summary>
/// <remarks>To take new texts over, run the tests with FIXPLANNER_GOLDEN=write, then review the change as text.</remarks>
internal static class Golden
{
    public const string Variable = "FIXPLANNER_GOLDEN";

    public static void Matches(string name, string actual, [CallerFilePath] string caller = "")
    {
        string path = Path.Combine(Path.GetDirectoryName(caller)!, "golden", name + ".txt");
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
}
