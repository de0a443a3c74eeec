using System.Text;
using Markdig;
using Markdig.Extensions.Mathematics;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Renderers.Html.Inlines;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace StrutLessons.Desk.Site;

/// <summary>
/// Turns the text cells of one lesson into HTML: headings get ids that are unique on the page, mathematics is marked for
/// typesetting, and the course's fixed words at the start of a paragraph open a box.
/// </summary>
public sealed class Prose
{
    /// <summary>The words that open a box when they stand in bold at the start of a paragraph, in the order of a lesson.</summary>
    public static IReadOnlyList<string> BoxWords { get; } =
        ["Predict", "Look", "Why", "Limit case", "Change it", "Check yourself", "Sources", "Caution"];

    private static readonly MarkdownPipeline Pipeline = new MarkdownPipelineBuilder()
        .UsePipeTables().UseMathematics().UseFootnotes().UseEmphasisExtras().UseDefinitionLists().UseGenericAttributes().Build();

    private readonly HashSet<string> _ids = [];
    private readonly List<Heading> _headings = [];

    /// <summary>A heading of the lesson, for the list of contents.</summary>
    /// <param name="Level">1 for the title.</param>
    /// <param name="Id">Its id on the page.</param>
    /// <param name="Text">Its words without mark-up.</param>
    public sealed record Heading(int Level, string Id, string Text);

    /// <summary>The headings met so far.</summary>
    public IReadOnlyList<Heading> Headings => _headings;

    /// <summary>True if any text so far holds mathematics.</summary>
    public bool HasMaths { get; private set; }

    /// <summary>Turns one text cell into HTML.</summary>
    public string ToHtml(string markdown)
    {
        var document = Markdown.Parse(markdown, Pipeline);
        foreach (var heading in document.Descendants<HeadingBlock>())
        {
            Register(heading);
        }
        MarkupFilter.Apply(document);
        HasMaths |= document.Descendants<MathInline>().Any() || document.Descendants<MathBlock>().Any();

        using var text = new StringWriter();
        var renderer = new HtmlRenderer(text);
        Pipeline.Setup(renderer);
        renderer.ObjectRenderers.Replace<HtmlMathInlineRenderer>(new MathSpans());
        renderer.ObjectRenderers.Replace<HtmlBlockRenderer>(new MarkupFilter.Blocks());
        renderer.ObjectRenderers.Replace<HtmlInlineRenderer>(new MarkupFilter.Inlines());
        var isOpen = false;
        foreach (var block in document)
        {
            var word = BoxWord(block);
            if (isOpen && (word is not null || block is HeadingBlock))
            {
                text.Write("</div>\n");
                isOpen = false;
            }
            if (word is not null)
            {
                text.Write($"<div class=\"box box-{Slug(word)}\" role=\"note\" aria-label=\"{word}\">\n");
                isOpen = true;
            }
            renderer.Render(block);
        }
        if (isOpen)
        {
            text.Write("</div>\n");
        }
        return text.ToString();
    }

    /// <summary>Turns one line of text into HTML without a paragraph around it.</summary>
    public string Inline(string line)
    {
        var html = ToHtml(line).Trim();
        return html.StartsWith("<p>", StringComparison.Ordinal) && html.EndsWith("</p>", StringComparison.Ordinal) ? html[3..^4] : html;
    }

    /// <summary>The box word with which a block begins; null if it begins with none.</summary>
    private static string? BoxWord(Block block)
    {
        if (block is not ParagraphBlock { Inline.FirstChild: EmphasisInline { DelimiterCount: 2 } lead })
        {
            return null;
        }
        var words = Words(lead).Trim().TrimEnd('.', ':', '?', '!');
        return BoxWords.FirstOrDefault(word => word.Equals(words, StringComparison.OrdinalIgnoreCase));
    }

    private void Register(HeadingBlock heading)
    {
        var words = heading.Inline is null ? "" : Words(heading.Inline);
        var slug = Slug(words);
        var id = slug;
        for (var n = 2; !_ids.Add(id); n++)
        {
            id = $"{slug}-{n}";
        }
        heading.GetAttributes().Id = id;
        _headings.Add(new Heading(heading.Level, id, words));
    }

    private static string Words(ContainerInline inline) => string.Concat(inline.Descendants().Select(part => part switch
    {
        LiteralInline literal => literal.Content.ToString(),
        CodeInline code => code.Content,
        MathInline maths => maths.Content.ToString(),
        LineBreakInline => " ",
        _ => "",
    }));

    private static string Slug(string words)
    {
        var slug = new StringBuilder();
        foreach (var c in words.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
            {
                slug.Append(c);
            }
            else if (slug.Length > 0 && slug[^1] != '-')
            {
                slug.Append('-');
            }
        }
        var text = slug.ToString().TrimEnd('-');
        return text.Length > 0 && char.IsAsciiLetter(text[0]) ? text : "part-" + text;
    }
}
