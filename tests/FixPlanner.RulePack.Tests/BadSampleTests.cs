using System.Text.RegularExpressions;
using FixPlanner.Files.Problems;
using FixPlanner.Files.Rules;

namespace FixPlanner.RulePack.Tests;

/// <summary>
/// Each check of the pack has a small layer that breaks just it: the folder is named for the code,
/// <c>expected.txt</c> holds file:line:column and code of every problem that must be found, and no other may be.
/// </summary>
public class BadSampleTests
{
    public static TheoryData<string> Samples => new(Directory.GetDirectories(PackFolders.Samples).Select(folder => Path.GetFileName(folder)).Order());

    [Theory]
    [MemberData(nameof(Samples))]
    public void Check_BadSample_FindsThatProblemOnceAtItsPlace(string sample)
    {
        string folder = Path.Combine(PackFolders.Samples, sample);
        string[] expected = File.ReadAllLines(Path.Combine(folder, "expected.txt"));
        HashSet<string> anyway = [.. ShippedPack.Problems.Select(problem => problem.ToString())];

        var found = RulePackChecks.Check([PackFolders.Rules, folder]).Problems
            .Where(problem => !anyway.Contains(problem.ToString()))
            .Select(problem => Relative(problem, folder));

        Assert.Equal(expected, found);
        Assert.All(expected, line => Assert.EndsWith(sample[..6], line, StringComparison.Ordinal));
    }

    [Fact]
    public void Samples_Together_CoverEveryCheckOfThePack()
    {
        // FP2001 and FP2005 are about whole folders: see LayerTests.
        string wording = File.ReadAllText(Path.Combine(PackFolders.Root, "src", "FixPlanner.Files", "Messages.Rules.cs"));
        var codes = Regex.Matches(wording, "\"(FP2[0-9]{3})\"").Select(match => match.Groups[1].Value).Except(["FP2001", "FP2005"]).Distinct().Order();

        Assert.Equal(codes, Directory.GetDirectories(PackFolders.Samples).Select(folder => Path.GetFileName(folder)[..6]).Where(code => code.StartsWith("FP2", StringComparison.Ordinal)).Distinct().Order());
    }

    private static string Relative(Problem problem, string folder)
    {
        string place = problem.Place.ToString().Replace('\\', '/');
        return $"{place.Replace(folder.Replace('\\', '/') + "/", "").Replace(PackFolders.Rules.Replace('\\', '/') + "/", "").Replace(PackFolders.Rules.Replace('\\', '/'), "")} {problem.Code}";
    }
}
