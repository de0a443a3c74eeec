using StrutLessons.Desk.Live.Running;
using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>Notebooks from anywhere: other formats, other intentions.</summary>
public sealed class ForeignNotebookTests
{
    [Fact]
    public void Cells_without_an_id_and_twins_get_names_of_their_own()
    {
        NotebookCell[] cells = [.. new[] { "", "a", "a", "" }.Select(id => new NotebookCell(id, CellKind.Code, "1", []))];

        Assert.Equal(["place-1", "a", "place-3", "place-4"], OpenLessons.WithIds(new NotebookFile("old.ipynb", cells, false)).Cells.Select(cell => cell.Id));
    }

    [Theory]
    [InlineData("<script>alert(1)</script>", "&lt;script&gt;alert(1)&lt;/script&gt;")]
    [InlineData("<details open><summary>A</summary>", "<details open><summary>A</summary>")]
    [InlineData("<b onclick=x>", "&lt;b onclick=x&gt;")]
    [InlineData("<meta http-equiv=refresh content=0>", "&lt;meta http-equiv=refresh content=0&gt;")]
    [InlineData("a<!-- hidden -->b<br/>", "ab<br/>")]
    [InlineData("<<b>script>", "&lt;<b>script&gt;")]
    public void Only_harmless_tags_pass_and_they_carry_nothing(string html, string passed) =>
        Assert.Equal(passed, MarkupFilter.Filter(html));

    [Theory]
    [InlineData("[x](javascript:alert(1))")]
    [InlineData("[x](JavaScript:alert(1))")]
    [InlineData("[x](\u0001javascript:alert(1))")]
    [InlineData("[x](data:text/html,x)")]
    [InlineData("![x](data:text/html,x)")]
    [InlineData("<javascript:alert(1)>")]
    [InlineData("[x](vbscript:x)")]
    [InlineData("[x](file:///etc/passwd)")]
    public void A_link_leads_to_pages_and_nowhere_else(string markdown) =>
        Assert.DoesNotMatch("(?i)(href|src)=\"[^\"]*(script|data|file):", new Prose().ToHtml(markdown));

    [Theory]
    [InlineData("[x](02-next.html)", "href=\"02-next.html\"")]
    [InlineData("[x](#part)", "href=\"#part\"")]
    [InlineData("[x](https://example.org/a?b=c)", "rel=\"noopener noreferrer\" target=\"_blank\"")]
    [InlineData("![x](data:image/png;base64,AAAA)", "src=\"data:image/png;base64,AAAA\"")]
    public void An_honest_link_stays(string markdown, string html) => Assert.Contains(html, new Prose().ToHtml(markdown), StringComparison.Ordinal);

    [Fact]
    public void Attributes_given_in_braces_bring_no_script() =>
        Assert.DoesNotContain("onclick", new Prose().ToHtml("# Title {onclick=alert(1) .big}\n\ntext{onmouseover=x}"), StringComparison.OrdinalIgnoreCase);
}
