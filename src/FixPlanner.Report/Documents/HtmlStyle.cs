namespace FixPlanner.Report.Documents;

/// <summary>The style of the page: black on white, nothing by colour alone, the printer's own paper (A4 or Letter).</summary>
internal static class HtmlStyle
{
    /// <summary>For a document that is read.</summary>
    public const string Report = """
        body { font: 16px/1.45 Georgia, 'Times New Roman', serif; color: #111; background: #fff; max-width: 52rem; margin: 2rem auto; padding: 0 1rem; overflow-wrap: break-word; }
        h1, h2, h3, h4 { font-family: Helvetica, Arial, sans-serif; line-height: 1.2; }
        h1 { border-bottom: 3px solid #111; padding-bottom: .3rem; }
        h2 { border-bottom: 1px solid #111; margin-top: 2.2rem; }
        h4 { margin: .8rem 0 .2rem; }
        table { border-collapse: collapse; width: 100%; font: 14px/1.35 Helvetica, Arial, sans-serif; margin: .6rem 0; }
        th, td { border: 1px solid #555; padding: .3rem .45rem; text-align: left; vertical-align: top; }
        th { background: #eee; }
        thead { display: table-header-group; }
        ul.check { list-style: none; padding-left: .2rem; columns: 2; }
        .warning { border: 2px solid #111; border-left-width: 10px; padding: .5rem .8rem; margin: .8rem 0; }
        .card { border: 1px solid #333; padding: .2rem 1rem .8rem; margin: 1rem 0; }
        details { margin: .6rem 0; font-size: 14px; }
        summary { cursor: pointer; font-weight: bold; }
        .card h3 { margin: .6rem 0; }
        .sign { border: 1px solid #333; padding: .5rem .8rem; margin: .6rem 0; }
        .line { display: inline-block; border-bottom: 1px solid #111; width: 28%; height: 1.8rem; margin-right: 3%; font-size: 12px; color: #222; }
        .ask { break-inside: avoid; margin: 0 0 .35rem; }
        .blank { display: inline-block; border-bottom: 1px solid #111; min-width: 4.5rem; padding-right: 3rem; color: #222; }
        figure { margin: 1rem 0; }
        figcaption { font-size: 14px; }
        svg { max-width: 100%; height: auto; display: block; }
        footer { border-top: 1px solid #111; margin-top: 2rem; padding-top: .4rem; font: 13px/1.35 Helvetica, Arial, sans-serif; }
        @page { margin: 15mm; }
        @media print {
          body { margin: 0; padding: 0; max-width: none; font-size: 9.5pt; line-height: 1.35; }
          table { font-size: 8.5pt; margin: .35rem 0; }
          th, td { padding: .15rem .35rem; }
          figcaption { font-size: 8.5pt; }
          h2 { margin-top: 1.2rem; }
          p, ul, ol { margin: .35rem 0; }
          .warning { margin: .35rem 0; padding: .25rem .6rem; border-width: 1px; border-left-width: 6px; }
          .card { margin: .6rem 0; padding: .1rem .8rem .4rem; }
          .card, .sign, .warning, figure, tr { break-inside: avoid; }
          h2, h3, h4 { break-after: avoid; }
          .page { break-before: page; }
        }
        """;

    /// <summary>Added for a form that is filled in by hand and must fit on few pages.</summary>
    public const string Form = """
        body.form { font: 13px/1.3 Helvetica, Arial, sans-serif; }
        .form h1 { margin: 0 0 .3rem; font-size: 1.5em; border-bottom-width: 2px; padding-bottom: .1rem; }
        .form h2 { margin: .5rem 0 .2rem; font-size: 1.1em; }
        .form h3 { margin: .3rem 0 .1rem; font-size: 1em; }
        .form p, .form ul, .form ol, .form .warning { margin: .15rem 0; }
        .form ul, .form ol { padding-left: 1.1rem; }
        .form ul.check { columns: 3; padding-left: 0; }
        .form td:empty { height: 1.8em; }
        .form table { font-size: inherit; margin: .2rem 0; line-height: 1.25; }
        .form th, .form td { padding: .1rem .3rem; }
        .form .warning { border-width: 1px; border-left-width: 5px; padding: .1rem .4rem; }
        .form .asks { columns: 2; column-gap: 1.2rem; }
        .form figure { margin: .2rem 0; }
        .form figcaption { font-size: inherit; }
        .form svg { max-height: 9.5rem; margin: 0 auto; }
        .form footer { margin-top: .3rem; padding-top: .1rem; font-size: .9em; }
        @page { margin: 10mm; }
        @media print { body.form { font-size: 7.2pt; line-height: 1.22; } .form svg { max-height: 32mm; } .form table { font-size: 7pt; line-height: 1.15; } .form footer { font-size: 7pt; } }
        """;
}
