namespace FixPlanner.RulePack.Tests;

/// <summary>Where the pack and the bad samples lie in the source tree.</summary>
internal static class PackFolders
{
    public static string Root { get; } = FindRoot();

    public static string Rules => Path.Combine(Root, "rules");

    public static string Tests => Path.Combine(Root, "tests", "FixPlanner.RulePack.Tests");

    public static string Samples => Path.Combine(Tests, "BadSamples");

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "FixPlanner.sln")))
            {
                return folder.FullName;
            }
        }

        throw new InvalidOperationException("the tests run inside the source tree");
    }
}
