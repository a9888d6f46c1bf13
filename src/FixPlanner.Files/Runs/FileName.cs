using System.Text.RegularExpressions;

namespace FixPlanner.Files.Runs;

/// <summary>What the name of a file says of its runs where the file says nothing: 'before-out-1.csv'.</summary>
internal sealed partial record FileName(string Configuration, string Direction)
{
    public static FileName Of(string path)
    {
        string stem = Path.GetFileNameWithoutExtension(path);
        Match match = Parts().Match(stem);
        string configuration = match.Groups[1].Value;
        return new(configuration.Length > 0 ? configuration : stem, match.Groups[2].Value.ToLowerInvariant());
    }

    [GeneratedRegex(@"^(.*?)(?:[-_ ]+(out|back))?(?:[-_ ]+\d+)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Parts();
}
