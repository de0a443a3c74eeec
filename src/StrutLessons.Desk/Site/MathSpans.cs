using Markdig.Extensions.Mathematics;
using Markdig.Renderers;
using Markdig.Renderers.Html;

namespace StrutLessons.Desk.Site;

/// <summary>
/// Writes a formula inside a paragraph. One between double dollars stands on a line of its own, also where the source has it
/// all on one line.
/// </summary>
internal sealed class MathSpans : HtmlObjectRenderer<MathInline>
{
    protected override void Write(HtmlRenderer renderer, MathInline obj)
    {
        var isBlock = obj.DelimiterCount == 2;
        renderer.Write(isBlock ? "<span class=\"math display\">\\[" : "<span class=\"math\">\\(");
        renderer.WriteEscape(ref obj.Content);
        renderer.Write(isBlock ? "\\]</span>" : "\\)</span>");
    }
}
