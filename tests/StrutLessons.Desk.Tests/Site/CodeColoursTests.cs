using System.Text.RegularExpressions;
using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Tests.Site;

public sealed partial class CodeColoursTests
{
    [Theory]
    [InlineData("var x = 3;", "<span class=\"k\">var</span> x = <span class=\"n\">3</span>;")]
    [InlineData("// why", "<span class=\"c\">// why</span>")]
    [InlineData("new Planar(1, 2)", "<span class=\"k\">new</span> <span class=\"t\">Planar</span>(<span class=\"n\">1</span>, <span class=\"n\">2</span>)")]
    [InlineData("Math.Sin(x)", "<span class=\"t\">Math</span>.<span class=\"m\">Sin</span>(x)")]
    [InlineData("\"a < b\"", "<span class=\"s\">&quot;a &lt; b&quot;</span>")]
    public void Words_are_marked_by_what_they_are(string code, string html) => Assert.Equal(html, CodeColours.ToHtml(code));

    [Theory]
    [InlineData("var x = 3;\n\n  // c\n\"\"\"\nraw\n\"\"\"")]
    [InlineData("#r \"lib.dll\"\nvar y = $\"{x:0.0} & {z}\";")]
    [InlineData("this is ) not ( code }{ \u00e9")]
    [InlineData("")]
    public void No_character_is_lost_not_even_in_wrong_code(string code) =>
        Assert.Equal(code, System.Net.WebUtility.HtmlDecode(Tag().Replace(CodeColours.ToHtml(code), "")));

    [GeneratedRegex("<[^>]+>")]
    private static partial Regex Tag();
}
