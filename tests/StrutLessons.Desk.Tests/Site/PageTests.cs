using System.Text.Json;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>Every page of the site, as a reader meets it.</summary>
[Collection("site")]
public sealed class PageTests(SiteFixture site)
{
    public static TheoryData<string, int, bool> Views { get; } = MakeViews();

    [Theory]
    [MemberData(nameof(Views))]
    public async Task A_page_opens_without_complaint_and_without_asking_another_host(string file, int width, bool dark)
    {
        await using var open = await OpenPage.OpenAsync(site.Browser, Path.Combine(site.Course, file), width, dark);

        Assert.Empty(open.Complaints);
        Assert.All(open.Requests, request => Assert.Matches("^(file|data|blob):", request));
        Assert.Equal(0, await open.Page.Locator(".katex-error").CountAsync());
        Assert.Equal(await open.Page.Locator("figure.chart").CountAsync(), await open.Page.Locator("figure.chart .live .main-svg").CountAsync() / 3);
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task A_page_fits_its_window_and_has_its_landmarks(string file, int width, bool dark)
    {
        await using var open = await OpenPage.OpenAsync(site.Browser, Path.Combine(site.Course, file), width, dark);
        var facts = JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(await open.Page.EvaluateAsync<string>("""
            () => {
              const all = selector => [...document.querySelectorAll(selector)];
              const ids = all("[id]").map(e => e.id);
              return JSON.stringify({
                overflow: document.documentElement.scrollWidth - innerWidth,
                titles: all("h1").length, mains: all("main").length, headers: all("body > header").length,
                caution: all("body > footer")[0]?.textContent ?? "",
                skip: all("body > a")[0]?.getAttribute("href"),
                twice: ids.filter((id, i) => ids.indexOf(id) !== i && !all(`.live [id="${id}"]`).length),
                mute: all(".drawing svg, .still svg").filter(e => !e.getAttribute("aria-label") && !e.querySelector("title")).length,
                skipped: all("main h1, main h2, main h3, main h4").map(e => +e.tagName[1]).filter((n, i, list) => i > 0 && n > list[i - 1] + 1).length,
              });
            }
            """))!;

        Assert.True(facts["overflow"].GetInt32() <= 0, $"The page is {facts["overflow"]} px wider than its window of {width} px.");
        Assert.Equal((1, 1, 1), (facts["titles"].GetInt32(), facts["mains"].GetInt32(), facts["headers"].GetInt32()));
        Assert.Contains("not a design check", facts["caution"].GetString(), StringComparison.Ordinal);
        Assert.Equal("#main", facts["skip"].GetString());
        Assert.Equal(0, facts["twice"].GetArrayLength());
        Assert.Equal(0, facts["mute"].GetInt32());
        Assert.Equal(0, facts["skipped"].GetInt32());
    }

    private static TheoryData<string, int, bool> MakeViews()
    {
        var views = new TheoryData<string, int, bool>();
        var files = NotebookFile.Find(Repository.Notebooks).Select(file => Path.GetFileNameWithoutExtension(file) + ".html").Prepend("index.html");
        foreach (var file in files)
        {
            views.Add(file, 1280, false);
            views.Add(file, 1280, true);
            views.Add(file, 820, false);
            views.Add(file, 820, true);
        }
        return views;
    }
}
