using Markdig;
using Markdig.Parsers.Inlines;
using Markdig.Renderers;

namespace FixPlanner.Report.Documents;

/// <summary>Markdown without links and pictures: a note in a logbook must not make the page fetch anything or lead anywhere.</summary>
internal sealed class NothingFetched : IMarkdownExtension
{
    public void Setup(MarkdownPipelineBuilder pipeline)
    {
        pipeline.InlineParsers.TryRemove<LinkInlineParser>();
        pipeline.InlineParsers.TryRemove<AutolinkInlineParser>();
        pipeline.BlockParsers.TryRemove<Markdig.Parsers.HtmlBlockParser>();
    }

    public void Setup(MarkdownPipeline pipeline, IMarkdownRenderer renderer)
    {
    }
}
