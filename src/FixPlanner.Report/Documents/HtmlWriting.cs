namespace FixPlanner.Report.Documents;

/// <summary>A document as one self-contained HTML page: no script, nothing fetched, legible in black on white and on paper.</summary>
public static class HtmlWriting
{
    /// <summary>Writes a document.</summary>
    /// <param name="document">The document.</param>
    /// <returns>The page.</returns>
    public static string Write(Document document)
    {
        ArgumentNullException.ThrowIfNull(document);
        string title = HtmlBlocks.Escaped(document.Title);
        string style = HtmlStyle.Report + (document.IsForm ? "\n" + HtmlStyle.Form : "");
        string footer = document.Footer.Length > 0 ? $"<footer>{HtmlBlocks.Escaped(document.Footer)}</footer>\n" : "";
        return Characters.WithoutControls(
            "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
            + $"<title>{title}</title>\n<style>\n{style}\n</style>\n</head>\n<body{(document.IsForm ? " class=\"form\"" : "")}>\n"
            + $"<main>\n<h1>{title}</h1>\n{HtmlBlocks.All(document.Blocks)}</main>\n{footer}</body>\n</html>\n");
    }
}
