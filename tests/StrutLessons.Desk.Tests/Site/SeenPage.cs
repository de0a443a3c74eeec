using System.Text.Json;
using Microsoft.Playwright;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>What there is to see on a page once it stands, without touching it.</summary>
/// <param name="Complaints">What the browser complained about.</param>
/// <param name="Requests">What the page asked for.</param>
/// <param name="Facts">Counts and words of the page, by name.</param>
internal sealed record SeenPage(IReadOnlyList<string> Complaints, IReadOnlyList<string> Requests, IReadOnlyDictionary<string, JsonElement> Facts)
{
    private const string Look = """
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
            badFormulas: all(".katex-error").length,
            charts: all("figure.chart").length, chartLayers: all("figure.chart .live .main-svg").length,
          });
        }
        """;

    internal static async Task<SeenPage> OfAsync(IBrowser browser, string file, int width, bool dark)
    {
        await using var open = await OpenPage.OpenAsync(browser, file, width, dark);
        var facts = JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(await open.Page.EvaluateAsync<string>(Look))!;
        return new([.. open.Complaints], [.. open.Requests], facts);
    }

    internal int Count(string fact) => Facts[fact].GetInt32();

    internal string? Words(string fact) => Facts[fact].GetString();
}
