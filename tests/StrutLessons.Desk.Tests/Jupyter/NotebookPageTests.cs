using System.Collections.Concurrent;
using Microsoft.Playwright;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>A lesson in the classic Notebook, seen in a real browser.</summary>
[Collection("jupyter")]
public sealed class NotebookPageTests(JupyterFixture jupyter)
{
    private const string Lesson = "10-the-capacity-curve.ipynb";

    [Fact]
    public async Task A_lesson_shows_its_drawings_charts_and_moving_controls_and_nothing_leaves_the_machine()
    {
        await using var server = await NotebookServer.StartAsync(jupyter, Path.Combine(Repository.Notebooks, Lesson));
        var (driver, browser) = await Browser.StartAsync();
        using var _ = driver;
        await using var __ = browser;
        await using var context = await browser.NewContextAsync();
        var requests = new ConcurrentQueue<string>();
        context.Request += (_, request) => requests.Enqueue(request.Url);
        var page = await server.OpenAsync(context, Lesson, "strut-lessons");

        await page.EvaluateAsync("() => Jupyter.notebook.execute_all_cells()");
        await page.WaitForFunctionAsync("""
            () => Jupyter.notebook.get_cells().filter(cell => cell.cell_type === "code" && cell.get_text().trim()).every(cell => cell.input_prompt_number > 0)
            """);

        Assert.Equal(0, await page.Locator(".output_error").CountAsync());
        Assert.True(await page.Locator(".output_svg svg").First.IsVisibleAsync());
        // A chart is a picture whose axes are titled with their units.
        Assert.True(await page.Locator(".output_svg svg text", new() { HasTextRegex = new(@"\((mm|kN|–|-|MPa)\)|λ|slenderness", System.Text.RegularExpressions.RegexOptions.IgnoreCase) }).CountAsync() > 0);
        await MoveAsync(page);
        Assert.All(requests, request => Assert.Matches($"^(http://127.0.0.1:{server.Port}/|data:|blob:|about:blank$)", request));
    }

    /// <summary>Moves the first control of the lesson to its end: the picture under it changes.</summary>
    private static async Task MoveAsync(IPage page)
    {
        var view = page.Locator(".sl-live").First;
        var before = await view.Locator("[data-frame]").InnerHTMLAsync();
        var control = view.Locator("input[type=range], select").First;

        await control.FocusAsync();
        await control.PressAsync("End");
        await control.DispatchEventAsync("input");

        Assert.NotEqual(before, await view.Locator("[data-frame]").InnerHTMLAsync());
    }
}
