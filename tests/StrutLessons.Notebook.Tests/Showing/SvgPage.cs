using System.Globalization;
using System.Xml.Linq;

namespace StrutLessons.Notebook.Tests.Shown;

/// <summary>Reads an SVG as a browser would lay it out, with a rough measure of text of its own.</summary>
internal sealed class SvgPage
{
    private static readonly XNamespace Ns = "http://www.w3.org/2000/svg";

    internal SvgPage(string svg)
    {
        Root = XElement.Parse(svg);
        double[] box = [.. Root.Attribute("viewBox")!.Value.Split(' ').Select(Number)];
        ViewBox = (box[0], box[1], box[0] + box[2], box[1] + box[3]);
    }

    internal XElement Root { get; }

    internal (double Left, double Top, double Right, double Bottom) ViewBox { get; }

    internal IEnumerable<(string Text, double Left, double Top, double Right, double Bottom)> Texts =>
        Root.Descendants(Ns + "text").Select(Place);

    internal void AssertReadable()
    {
        Assert.NotEmpty(Root.Element(Ns + "title")!.Value);
        Assert.NotEmpty(Root.Element(Ns + "desc")!.Value);
        Assert.Equal("img", Root.Attribute("role")!.Value);
        Assert.NotEmpty(Root.Attribute("aria-label")!.Value);
        Assert.DoesNotContain(Root.DescendantsAndSelf().Attributes(), a => a.Name.LocalName is "href" or "src" || a.Value.Contains("url(", StringComparison.Ordinal));
        Assert.Empty(Root.Descendants(Ns + "script"));
        Assert.DoesNotContain("NaN", Root.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("∞", string.Concat(Root.Descendants().Attributes("points").Select(a => a.Value)), StringComparison.Ordinal);
        var texts = Texts.ToArray();
        Assert.All(texts, t => Assert.True(
            t.Left >= ViewBox.Left && t.Right <= ViewBox.Right && t.Top >= ViewBox.Top && t.Bottom <= ViewBox.Bottom, $"'{t.Text}' leaves the drawing"));
        for (int i = 0; i < texts.Length; i++)
        {
            for (int j = 0; j < i; j++)
            {
                bool apart = texts[i].Right <= texts[j].Left || texts[j].Right <= texts[i].Left || texts[i].Bottom <= texts[j].Top || texts[j].Bottom <= texts[i].Top;
                Assert.True(apart, $"'{texts[i].Text}' and '{texts[j].Text}' overlap in {Root.Element(Ns + "title")!.Value}");
            }
        }
    }

    /// <summary>Average letters are half the size wide and 0.74 high: narrower than the drawing's own cautious measure.</summary>
    private static (string, double, double, double, double) Place(XElement text)
    {
        double size = Number(text.Attribute("font-size")!.Value);
        double width = text.Elements(Ns + "tspan").Sum(run => run.Value.Length * 0.5 * (run.Attribute("font-size") is { } own ? Number(own.Value) : size));
        double shift = text.Attribute("text-anchor")!.Value switch { "start" => 0, "middle" => -width / 2, _ => -width };
        if (text.Attribute("transform")?.Value is { } turned)
        {
            double[] at = [.. turned["translate(".Length..turned.IndexOf(')', StringComparison.Ordinal)].Split(' ').Select(Number)];
            return (text.Value, at[0] - 0.72 * size, at[1] - shift - width, at[0], at[1] - shift);
        }

        double x = Number(text.Attribute("x")!.Value) + shift, y = Number(text.Attribute("y")!.Value);
        return (text.Value, x, y - 0.72 * size, x + width, y);
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
