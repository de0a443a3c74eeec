using System.Text.RegularExpressions;
using Markdig.Renderers;
using Markdig.Renderers.Html;
using Markdig.Syntax;
using Markdig.Syntax.Inlines;

namespace StrutLessons.Desk.Site;

/// <summary>
/// A notebook may come from anywhere: of the HTML in its text only a few harmless tags pass, without attributes; the rest is
/// shown as text. Links lead to pages and nowhere else.
/// </summary>
internal static partial class MarkupFilter
{
    private static readonly string[] SafeSchemes = ["http", "https", "mailto"];

    /// <summary>Makes links and attributes of a text safe. Links to other hosts open in a tab of their own.</summary>
    internal static void Apply(MarkdownDocument document)
    {
        foreach (var part in document.Descendants())
        {
            part.TryGetAttributes()?.Properties?.RemoveAll(property =>
                property.Key.StartsWith("on", StringComparison.OrdinalIgnoreCase) || property.Key is "style" or "src" or "href" or "srcdoc" or "formaction");
        }
        foreach (var link in document.Descendants<LinkInline>())
        {
            link.Url = link.Url is { } address && IsSafe(address, link.IsImage) ? address : "";
            if (link.Url.Contains("://", StringComparison.Ordinal))
            {
                link.GetAttributes().AddPropertyIfNotExist("rel", "noopener noreferrer");
                link.GetAttributes().AddPropertyIfNotExist("target", "_blank");
            }
        }
        foreach (var link in document.Descendants<AutolinkInline>().Where(link => !link.IsEmail))
        {
            link.Url = IsSafe(link.Url, isImage: false) ? link.Url : "";
            link.GetAttributes().AddPropertyIfNotExist("rel", "noopener noreferrer");
            link.GetAttributes().AddPropertyIfNotExist("target", "_blank");
        }
    }

    /// <summary>The harmless tags of a piece of HTML, everything else as text.</summary>
    internal static string Filter(string html)
    {
        var text = Comment().Replace(html, "");
        var safe = new System.Text.StringBuilder();
        var end = 0;
        foreach (Match tag in HarmlessTag().Matches(text))
        {
            safe.Append(Html.Escape(text[end..tag.Index])).Append(tag.Value);
            end = tag.Index + tag.Length;
        }
        return safe.Append(Html.Escape(text[end..])).ToString();
    }

    private static bool IsSafe(string address, bool isImage)
    {
        // Browsers overlook control characters and blanks in front of a scheme.
        var plain = string.Concat(address.Where(c => c > ' '));
        var scheme = Scheme().Match(plain);
        return !scheme.Success || SafeSchemes.Contains(scheme.Groups[1].Value.ToLowerInvariant())
            || (isImage && plain.StartsWith("data:image/", StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>Writes blocks of HTML.</summary>
    internal sealed class Blocks : HtmlObjectRenderer<HtmlBlock>
    {
        protected override void Write(HtmlRenderer renderer, HtmlBlock obj) => renderer.Write(Filter(obj.Lines.ToString())).WriteLine();
    }

    /// <summary>Writes HTML inside a paragraph.</summary>
    internal sealed class Inlines : HtmlObjectRenderer<HtmlInline>
    {
        protected override void Write(HtmlRenderer renderer, HtmlInline obj) => renderer.Write(Filter(obj.Tag));
    }

    [GeneratedRegex(@"<(?:/?(?:details|summary|b|i|em|strong|sub|sup|kbd|small|p|ul|ol|li)|br\s*/?|hr\s*/?|details open)\s*>", RegexOptions.IgnoreCase)]
    private static partial Regex HarmlessTag();

    [GeneratedRegex(@"<!--.*?-->", RegexOptions.Singleline)]
    private static partial Regex Comment();

    [GeneratedRegex(@"^([a-z][a-z0-9+.-]*):", RegexOptions.IgnoreCase)]
    private static partial Regex Scheme();
}
