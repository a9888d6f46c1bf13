using System.Diagnostics;

namespace FixPlanner.Journeys.Reports;

/// <summary>A test that prints a page with a Chromium; skipped with that reason where there is none.</summary>
internal sealed class BrowserTheoryAttribute : TheoryAttribute
{
    public BrowserTheoryAttribute() => Skip = Browser.Missing;
}

/// <summary>Prints pages without a window and without the network.</summary>
internal static class Browser
{
    private static readonly string? Program = ((string[])["chromium", "chromium-browser", "google-chrome"]).FirstOrDefault(Starts);

    /// <summary>Why pages cannot be printed here; null when they can.</summary>
    public static string? Missing => Program is null ? "no Chromium is installed" : null;

    /// <summary>Prints a page to PDF.</summary>
    /// <returns>The pages, by the page objects of the file.</returns>
    public static int Pages(string html, string paper)
    {
        string folder = Directory.CreateTempSubdirectory("fixplanner-print-").FullName;
        try
        {
            string page = Path.Combine(folder, "page.html");
            string pdf = Path.Combine(folder, "page.pdf");
            File.WriteAllText(page, html.Replace("</style>", $"@page {{ size: {paper}; }}</style>", StringComparison.Ordinal));
            using Process print = Process.Start(new ProcessStartInfo(Program!, ["--headless", "--no-sandbox", "--disable-gpu", "--disable-background-networking", $"--user-data-dir={folder}/profile", "--no-pdf-header-footer", $"--print-to-pdf={pdf}", $"file://{page}"]) { RedirectStandardError = true, RedirectStandardOutput = true })!;
            print.StandardError.ReadToEndAsync();
            Assert.True(print.WaitForExit(120_000), "the browser did not end");
            return System.Text.RegularExpressions.Regex.Count(System.Text.Encoding.Latin1.GetString(File.ReadAllBytes(pdf)), @"/Type\s*/Page\b");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static bool Starts(string program)
    {
        try
        {
            using Process version = Process.Start(new ProcessStartInfo(program, "--version") { RedirectStandardOutput = true, RedirectStandardError = true })!;
            version.WaitForExit();
            return version.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }
}
