namespace FixPlanner.PublishedChecks;

/// <summary>Reads one file of rows: a header, then one row a line, fields quoted where they hold a comma.</summary>
internal static class CheckFile
{
    public static IReadOnlyList<CheckRow> Read(string name) => [.. Records(name).Select(Row)];

    /// <summary>The rows of any such file, each as column to text.</summary>
    public static IEnumerable<IReadOnlyDictionary<string, string>> Records(string name)
    {
        string[] lines = File.ReadAllLines(Path.Combine(AppContext.BaseDirectory, "Rows", name));
        List<string> header = Fields(lines[0]);
        return lines.Skip(1).Select(line => header.Zip(Fields(line)).ToDictionary(pair => pair.First, pair => pair.Second));
    }

    private static CheckRow Row(IReadOnlyDictionary<string, string> field)
    {
        return new(
            field["id"],
            field["quantity"],
            field["inputs"].Split(';', StringSplitOptions.RemoveEmptyEntries).Select(pair => pair.Split('=', 2)).ToDictionary(pair => pair[0], pair => pair[1]),
            double.Parse(field["expected"]),
            field["unit"],
            double.Parse(field["tolerance_rel"]),
            field["why"],
            Mark(field["mark"]),
            field["kind"] == "band",
            field["source"],
            field["place"]);
    }

    private static List<string> Fields(string line)
    {
        List<string> fields = [];
        System.Text.StringBuilder field = new();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            bool doubled = quoted && line[i] == '"' && i + 1 < line.Length && line[i + 1] == '"';
            if (line[i] == '"' && !doubled)
            {
                quoted = !quoted;
            }
            else if (line[i] == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(line[i]);
                i += doubled ? 1 : 0;
            }
        }

        fields.Add(field.ToString());
        return fields;
    }

    private static CheckMark Mark(string word) => word switch
    {
        "read" => CheckMark.Read,
        "second-hand" => CheckMark.SecondHand,
        "from-memory" => CheckMark.FromMemory,
        "self-computed" => CheckMark.SelfComputed,
        _ => throw new InvalidDataException($"unknown mark '{word}'"),
    };
}
