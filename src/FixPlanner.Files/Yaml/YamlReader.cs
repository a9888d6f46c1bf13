using FixPlanner.Files.Problems;
using FixPlanner.Files.Texts;
using YamlDotNet.Core;

namespace FixPlanner.Files.Yaml;

/// <summary>
/// Reads YAML to our own nodes from the stream of events, without recursion: nesting is counted and refused beyond
/// <see cref="DeepestNesting"/>, and anchors, aliases and tags are refused, so that no file can use up stack or memory.
/// </summary>
internal static class YamlReader
{
    public const int DeepestNesting = 64;

    /// <summary>Reads a file; null, with the reasons among the problems, when it cannot be understood.</summary>
    public static YamlDocument? ReadFile(string file, IFileCalls calls, ProblemList problems)
    {
        string? text = TextFile.Read(file, calls, problems);
        return text is null ? null : Read(file, text, problems);
    }

    /// <summary>Reads a text; null, with the reasons among the problems, when it cannot be understood.</summary>
    public static YamlDocument? Read(string file, string text, ProblemList problems)
    {
        int skip = text.StartsWith(LineMap.ByteOrderMark) ? 1 : 0;
        var lines = new LineMap(text);
        var found = new ProblemList();
        var builder = new NodeBuilder(file, skip, text.Length, lines, found);
        try
        {
            var parser = new Parser(new StringReader(text[skip..] + MissingLineEnd(text)));
            while (parser.MoveNext() && builder.Take(parser.Current!))
            {
            }
        }
        catch (YamlException failure)
        {
            found.Add(new YamlSyntax(file, text, lines).Explain((int)failure.Start.Index + skip, failure.Message, builder.OpenBracket));
        }
        catch (Exception failure) when (failure is InvalidOperationException or ArgumentException or FormatException or IndexOutOfRangeException or OverflowException or InvalidCastException or NullReferenceException)
        {
            // The YAML library lets its own slips out on a few malformed texts; to the owner these are syntax errors.
            found.Add(new YamlSyntax(file, text, lines).Explain(builder.Reached, "", builder.OpenBracket));
        }

        problems.AddRange(found.InOrder());
        return found.HasErrors ? null : new YamlDocument(file, text, builder.Root);
    }

    // A last line says the same whether its editor ended it or not.
    private static string MissingLineEnd(string text) => text.EndsWith('\n') || text.EndsWith('\r') ? "" : "\n";
}
