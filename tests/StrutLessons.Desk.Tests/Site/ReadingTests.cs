using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>What a reader does with the pages: turn them, use the keyboard, print, read without scripts.</summary>
[Collection("site")]
public sealed partial class ReadingTests(SiteFixture site)
{
    private const string First = "01-a-bar-that-leans.html";
    private const string Second = "02-a-curve-with-two-branches.html";
    private const string Third = "03-a-picture-without-words.html";

    [Fact]
    public async Task Next_and_previous_lead_through_the_course_and_back_to_the_list()
    {
        await using var open = await OpenAsync("index.html");
        var seen = new List<string>();
        await TurnAsync("ol.lessons li:first-child a");
        await TurnAsync("a[rel=next]");
        await TurnAsync("a[rel=next]");
        Assert.Equal(0, await open.Page.Locator("a[rel=next]").CountAsync());
        await TurnAsync("a[rel=prev]");
        await TurnAsync("nav.turn .up");

        Assert.Equal([First, Second, Third, Second, "index.html"], seen);
        Assert.Empty(open.Complaints);

        async Task TurnAsync(string link)
        {
            await open.Page.ClickAsync(link);
            // Leaving a page before it is complete would break off its requests.
            await open.Page.WaitForLoadStateAsync(LoadState.Load);
            seen.Add(Address(open.Page));
        }
    }

    [Fact]
    public async Task The_list_says_what_each_lesson_is_for_and_how_long_it_takes()
    {
        await using var open = await OpenAsync("index.html");

        var item = await open.Page.Locator("ol.lessons > li").Nth(0).InnerTextAsync();
        Assert.Contains("A bar that leans", item, StringComparison.Ordinal);
        Assert.Contains("10 minutes", item, StringComparison.Ordinal);
        Assert.Contains("read the output of a cell", item, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_list_numbers_lessons_by_their_files_and_typesets_formulas()
    {
        await using var open = await OpenPage.OpenAsync(site.Browser, Path.Combine(site.Course, "index.html"));

        Assert.Equal(
            await open.Page.Locator("ol.lessons > li").EvaluateAllAsync<int[]>("items => items.map(item => parseInt(item.querySelector('a').getAttribute('href'), 10))"),
            await open.Page.Locator("ol.lessons > li").EvaluateAllAsync<int[]>("items => items.map(item => item.value)"));
        Assert.DoesNotContain("\\(", await open.Page.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Formulas_are_typeset_in_prose_and_in_outputs()
    {
        await using var open = await OpenAsync(First);

        Assert.True(await open.Page.Locator(".prose .katex").CountAsync() >= 5);
        Assert.Equal(1, await open.Page.Locator(".output.tex .katex-display").CountAsync());
        Assert.Equal(1, await open.Page.Locator(".prose .katex-display").CountAsync());
    }

    [Fact]
    public async Task The_fixed_words_open_boxes()
    {
        await using var open = await OpenAsync(First);

        foreach (var word in new[] { "Predict", "Look", "Why", "Limit case", "Change it", "Check yourself", "Sources", "Caution" })
        {
            Assert.Equal(1, await open.Page.Locator($".box[aria-label='{word}']").CountAsync());
        }
        // A table that belongs to the explanation stays inside its box; the next heading ends a box.
        Assert.Equal(1, await open.Page.Locator(".box[aria-label='Why'] table").CountAsync());
        Assert.Equal(0, await open.Page.Locator(".box h2").CountAsync());
    }

    [Fact]
    public async Task A_chart_is_drawn_from_the_local_library_and_hides_its_still_picture()
    {
        await using var open = await OpenAsync(Second);

        await open.Page.Locator("figure.chart .live .main-svg").First.WaitForAsync();
        Assert.Contains("slenderness (-)", await open.Page.Locator("figure.chart .live").InnerTextAsync(), StringComparison.Ordinal);
        Assert.False(await open.Page.Locator("figure.chart .still").IsVisibleAsync());
        Assert.Contains(open.Requests, request => request.Contains("/plotly", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_page_without_charts_does_not_load_the_chart_library()
    {
        await using var open = await OpenAsync(First);

        Assert.DoesNotContain(open.Requests, request => request.Contains("plotly", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Without_scripts_charts_are_still_pictures_and_answers_open()
    {
        await using var chart = await OpenAsync(Second, script: false);
        await using var lesson = await OpenAsync(First, script: false);

        Assert.True(await chart.Page.Locator("figure.chart .still svg").IsVisibleAsync());
        Assert.True(await lesson.Page.Locator(".box[aria-label='Why'] span.math").First.IsVisibleAsync());
        await lesson.Page.Locator("summary").First.ClickAsync();
        Assert.Contains("By Pythagoras", await lesson.Page.Locator("details").First.InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_keyboard_skips_to_the_content_and_opens_an_answer()
    {
        await using var open = await OpenAsync(First);

        await open.Page.Keyboard.PressAsync("Tab");
        Assert.Equal("Skip to the content", await open.Page.EvaluateAsync<string>("() => document.activeElement.textContent"));
        await open.Page.Keyboard.PressAsync("Enter");
        Assert.Equal("main", await open.Page.EvaluateAsync<string>("() => document.activeElement.id"));
        await open.Page.Locator("summary").First.FocusAsync();
        await open.Page.Keyboard.PressAsync("Enter");
        Assert.True(await open.Page.Locator("details").First.EvaluateAsync<bool>("e => e.open"));
    }

    [Fact]
    public async Task Focus_is_visible()
    {
        await using var open = await OpenAsync(First);

        await open.Page.Keyboard.PressAsync("Tab");
        await open.Page.Keyboard.PressAsync("Tab");
        Assert.NotEqual("none", await open.Page.EvaluateAsync<string>("() => getComputedStyle(document.activeElement).outlineStyle"));
    }

    [Fact]
    public async Task On_paper_stand_the_still_pictures_and_no_navigation()
    {
        await using var open = await OpenAsync(Second);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });

        Assert.True(await open.Page.Locator("figure.chart .still svg").IsVisibleAsync());
        Assert.False(await open.Page.Locator("figure.chart .live").IsVisibleAsync());
        Assert.False(await open.Page.Locator("nav.turn").IsVisibleAsync());
        Assert.True(await open.Page.Locator("footer").IsVisibleAsync());
    }

    [Fact]
    public async Task Ids_inside_drawings_are_made_unique_and_still_point_to_each_other()
    {
        await using var open = await OpenAsync(First);

        var drawing = open.Page.Locator(".drawing svg").First;
        Assert.Equal("A leaning bar It rises 3 m.", await drawing.EvaluateAsync<string>(
            "e => e.getAttribute('aria-labelledby').split(' ').map(id => document.getElementById(id).textContent).join(' ')"));
        Assert.True(await drawing.EvaluateAsync<bool>(
            "e => e.querySelector(e.querySelector('[marker-end]').getAttribute('marker-end').slice(4, -1)).tagName === 'marker'"));
    }

    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public async Task Words_stand_out_from_their_ground(bool dark)
    {
        await using var open = await OpenAsync(First, dark: dark);
        var pairs = await open.Page.EvaluateAsync<string[]>("""
            () => {
              const ground = e => { for (; e; e = e.parentElement) { const c = getComputedStyle(e).backgroundColor; if (c !== "rgba(0, 0, 0, 0)") return c; } return "rgb(255, 255, 255)"; };
              return ["body", ".place", ".foot p", "main a, nav a", ".box strong", ".code .k", ".code .t", ".code .s", ".code .n", ".code .c", ".output.error strong", ".output.error .name", "summary"]
                .map(s => [s, document.querySelector(s)]).filter(p => p[1]).map(([s, e]) => `${s}|${getComputedStyle(e).color}|${ground(e)}`);
            }
            """);

        Assert.True(pairs.Length >= 12);
        // WCAG 2.2, success criterion 1.4.3: at least 4.5 to 1 for text of ordinary size.
        Assert.All(pairs, pair =>
        {
            var parts = pair.Split('|');
            var ratio = Contrast(parts[1], parts[2]);
            Assert.True(ratio >= 4.5, $"{parts[0]}: {parts[1]} on {parts[2]} has a contrast of {ratio:0.00}.");
        });
    }

    private Task<OpenPage> OpenAsync(string file, bool dark = false, bool script = true) =>
        OpenPage.OpenAsync(site.Browser, Path.Combine(site.Samples, file), dark: dark, script: script);

    private static string Address(IPage page) => Path.GetFileName(new Uri(page.Url).LocalPath);

    /// <summary>Contrast of two colours after WCAG 2.2, definitions of "contrast ratio" and "relative luminance".</summary>
    private static double Contrast(string one, string other)
    {
        var (a, b) = (Luminance(one), Luminance(other));
        return (Math.Max(a, b) + 0.05) / (Math.Min(a, b) + 0.05);
    }

    private static double Luminance(string colour)
    {
        var channels = Number().Matches(colour).Take(3).Select(match => double.Parse(match.Value, CultureInfo.InvariantCulture) / 255)
            .Select(c => c <= 0.04045 ? c / 12.92 : Math.Pow((c + 0.055) / 1.055, 2.4)).ToArray();
        return 0.2126 * channels[0] + 0.7152 * channels[1] + 0.0722 * channels[2];
    }

    [GeneratedRegex(@"[\d.]+")]
    private static partial Regex Number();
}
