using System.Text;
using System.Text.RegularExpressions;

namespace StrutLessons.Desk.Site;

/// <summary>Marks the formulas in a text/latex output for typesetting; the words between them stay words.</summary>
internal static partial class TexText
{
    internal static string ToHtml(string latex)
    {
        var html = new StringBuilder();
        var end = 0;
        foreach (Match formula in Formula().Matches(latex))
        {
            AppendWords(html, latex[end..formula.Index]);
            end = formula.Index + formula.Length;
            var inline = formula.Groups["inline"];
            var tex = inline.Success ? inline.Value : formula.Groups["block"].Success ? formula.Groups["block"].Value : formula.Value;
            html.Append(inline.Success
                ? $"<span class=\"math\">\\({Html.Escape(tex)}\\)</span>"
                : $"<div class=\"math\">\\[{Html.Escape(tex)}\\]</div>");
        }
        AppendWords(html, latex[end..]);
        return html.ToString();
    }

    private static void AppendWords(StringBuilder html, string words)
    {
        if (!string.IsNullOrWhiteSpace(words))
        {
            html.Append("<span>").Append(Html.Escape(words.Trim())).Append("</span>");
        }
    }

    [GeneratedRegex(@"\$\$(?<block>.+?)\$\$|\\\[(?<block>.+?)\\\]|\\\((?<inline>.+?)\\\)|(?<!\\)\$(?<inline>.+?)(?<!\\)\$|\\begin\{(?<env>[a-z]+\*?)\}.+?\\end\{\k<env>\}", RegexOptions.Singleline)]
    private static partial Regex Formula();
}
