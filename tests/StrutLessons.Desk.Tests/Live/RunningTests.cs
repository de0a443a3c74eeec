using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>Lessons run in a real browser.</summary>
[Collection("live")]
public sealed class RunningTests(LiveFixture live)
{
    [Fact]
    public async Task Lesson_1_runs_from_the_top_without_complaint_and_without_asking_another_host()
    {
        await using var open = await live.OpenAsync("01-the-angle-and-its-axes");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Run all" }).ClickAsync();
        var cells = open.Page.Locator(".live-cell");
        await Expect(open.Page.Locator(".live-cell[data-state=done]")).ToHaveCountAsync(await cells.CountAsync(), new() { Timeout = LivePage.Patience });

        await Expect(open.Outputs("picture").Locator("svg[role=img]")).ToBeVisibleAsync();
        await Expect(open.Outputs("area-steps").Locator("math, .katex").First).ToBeVisibleAsync();
        Assert.Empty(open.Complaints);
        Assert.All(open.Requests, request => Assert.StartsWith(live.Server.Address.AbsoluteUri, request, StringComparison.Ordinal));
        Assert.DoesNotContain(open.Requests.Skip(1), request => request.Contains("key=", StringComparison.Ordinal));
        Assert.Equal(0, await open.Page.EvaluateAsync<int>("() => { const ids = [...document.querySelectorAll('[id]')].filter(e => !e.closest('.live')).map(e => e.id); return ids.length - new Set(ids).size; }"));

        await open.Page.GotoAsync(live.Server.Address.AbsoluteUri);
        await Expect(open.Page.Locator(".lessons > li").First.Locator(".progress")).ToHaveTextAsync("✓ all cells run");
    }

    [Fact]
    public async Task Changing_a_value_changes_the_numbers_that_follow_from_it()
    {
        await using var open = await live.OpenAsync("03-a-lesson-to-change");
        await open.RunAsync("length");
        await Expect(open.Outputs("length")).ToContainTextAsync("The strut is 2 m long.");

        await open.WriteAsync("length", "double length = 3.5;\nConsole.WriteLine($\"The strut is {length} m long.\");\nlength * 1000");
        await open.RunAsync("length");
        await open.RunAsync("double");

        await Expect(open.Outputs("length")).ToContainTextAsync("The strut is 3.5 m long.");
        await Expect(open.Outputs("length")).ToContainTextAsync("3500");
        await Expect(open.Outputs("length")).Not.ToContainTextAsync("2 m");
        await Expect(open.Outputs("double")).ToContainTextAsync("Twice that: 7 m");
        await Expect(open.Cell("length").Locator(".state")).ToContainTextAsync("your text");
    }

    [Fact]
    public async Task A_slider_moves_number_and_chart_and_keeps_the_focus()
    {
        await using var open = await live.OpenAsync("04-a-lesson-to-change");
        await open.RunAsync("slider");
        var slider = open.Page.GetByLabel("Length", new() { Exact = true });
        var line = open.Outputs("slider").Locator(".live path.js-line");
        await Expect(open.Outputs("slider")).ToContainTextAsync("Up to 2 m");
        Assert.Equal("0 2", await XAsync(open));

        await slider.FocusAsync();
        await line.EvaluateAsync("e => e.dataset.stays = 'yes'");
        for (var i = 0; i < 4; i++)
        {
            await open.Page.Keyboard.PressAsync("ArrowRight");
        }
        await Expect(open.Outputs("slider")).ToContainTextAsync("Up to 4 m");

        Assert.Equal("0 4", await XAsync(open));
        await Expect(open.Outputs("slider").Locator("output")).ToHaveTextAsync("4 m");
        await Expect(slider).ToBeFocusedAsync();
        await Expect(slider).ToHaveAttributeAsync("aria-valuetext", "4 m");
        Assert.Empty(open.Complaints);

        // Another tab sees the same place.
        await using var second = await open.SecondTabAsync();
        await Expect(second.Outputs("slider")).ToContainTextAsync("Up to 4 m");
        await Expect(second.Page.GetByLabel("Length", new() { Exact = true })).ToHaveValueAsync("4");

        static Task<string> XAsync(LivePage open) =>
            open.Outputs("slider").Locator("figure.chart .live").EvaluateAsync<string>("e => Array.from(e.data[0].x).join(' ')");
    }

    [Fact]
    public async Task Outputs_come_while_the_cell_runs_and_a_shown_value_is_replaced_in_its_place()
    {
        await using var open = await live.OpenAsync("05-a-lesson-to-change");
        await open.WriteAsync("free", """
            var place = Show("at first");
            Console.WriteLine("one"); Console.WriteLine("two");
            while (!System.IO.File.Exists("go-on")) System.Threading.Thread.Sleep(20);
            place.Replace("in the end"); Console.Write("three");
            """);
        await open.RunAsync("free", "running");
        await Expect(open.Outputs("free").Locator("pre").First).ToHaveTextAsync("at first");
        await Expect(open.Outputs("free").Locator("pre.stdout")).ToHaveTextAsync("one\ntwo\n");
        await Expect(open.Cell("free")).ToHaveAttributeAsync("aria-busy", "true");
        await Expect(open.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("running");

        await File.WriteAllTextAsync(Path.Combine(live.Folder, "files", "go-on"), "");
        await open.StateAsync("free", "done");
        await Expect(open.Outputs("free").Locator("pre").First).ToHaveTextAsync("in the end");
        await Expect(open.Outputs("free").Locator("pre.stdout")).ToHaveTextAsync("one\ntwo\nthree");
        await Expect(open.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("done");
    }

    [Fact]
    public async Task A_flood_of_text_is_cut_off_and_the_page_stays_quick()
    {
        await using var open = await live.OpenAsync("07-a-lesson-to-change");
        await open.WriteAsync("free", "for (var i = 0; i < 20000; i++) Console.WriteLine(new string('x', 99));");
        await open.RunAsync("free");

        var text = await open.Outputs("free").Locator("pre").InnerTextAsync();
        Assert.InRange(text.Length, 180_000, 220_000);
        Assert.Contains("the rest is left out", text, StringComparison.Ordinal);
        Assert.Single(open.Requests, request => request.EndsWith("07-a-lesson-to-change.html", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_control_whose_calculation_has_no_end_can_be_stopped()
    {
        await using var open = await live.OpenAsync("08-a-lesson-to-change");
        await open.WriteAsync("slider", "Live.Of(Slider.Of(\"Length\", 1, 3, step: 1, start: 1, \"m\"), at => { while (at == 2) { } return $\"place {at}\"; })");
        await open.RunAsync("slider");
        await open.Page.GetByLabel("Length", new() { Exact = true }).FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await open.Page.Locator(".bar").GetByRole(AriaRole.Button, new() { Name = "Stop" }).ClickAsync();
        await Expect(open.Outputs("slider")).ToContainTextAsync("interrupted");

        await open.Page.GetByLabel("Length", new() { Exact = true }).FocusAsync();
        await open.Page.Keyboard.PressAsync("ArrowRight");
        await Expect(open.Outputs("slider")).ToContainTextAsync("place 3");
    }

    [Fact]
    public async Task An_error_is_said_in_words_its_line_is_marked_and_the_cells_behind_it_wait_no_longer()
    {
        await using var open = await live.OpenAsync("06-a-lesson-to-change");
        await open.WriteAsync("length", "double length = 2;\nvar wrong = lenght + 1;\nlength");
        await live.KeptAsync("lenght");
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Run all" }).ClickAsync();
        await open.StateAsync("length", "failed");

        await Expect(open.Outputs("length")).ToContainTextAsync("Error in line 2.");
        await Expect(open.Cell("length").Locator(".wrong")).ToContainTextAsync("lenght");
        await open.StateAsync("double", "idle");
        Assert.DoesNotContain("   at ", await open.Outputs("length").InnerTextAsync(), StringComparison.Ordinal);

        await open.WriteAsync("length", "double length = 2;\nlength");
        await Expect(open.Cell("length").Locator(".wrong")).ToHaveCountAsync(0);
    }

    [Fact]
    public async Task The_engine_offers_names_to_type()
    {
        await using var open = await live.OpenAsync("07-a-lesson-to-change");
        await open.WriteAsync("free", "AngleCatalogue.F");
        await open.Page.Keyboard.PressAsync("Control+Space");
        await Expect(open.Cell("free").Locator(".CodeMirror-line")).ToHaveTextAsync("AngleCatalogue.Find", new() { Timeout = LivePage.Patience });

        await open.Page.Keyboard.PressAsync("Control+A");
        await open.Page.Keyboard.TypeAsync("Math.S");
        await open.Page.Keyboard.PressAsync("Control+Space");
        await Expect(open.Page.Locator(".CodeMirror-hint").Filter(new() { HasText = "Sqrt" })).ToBeVisibleAsync();
        await open.Page.Keyboard.PressAsync("Escape");
        await Expect(open.Page.Locator(".CodeMirror-hints")).ToHaveCountAsync(0);
        Assert.Equal("Math.S", await open.TextAsync("free"));
    }

    [Fact]
    public async Task HTML_in_a_notebooks_text_takes_nothing_over()
    {
        await using var open = await live.OpenAsync("08-a-lesson-to-change");

        await Expect(open.Page).ToHaveTitleAsync("A lesson to change · StrutLessons");
        Assert.Equal(0, await open.Page.Locator(".prose script, .prose img, .prose [onerror], .prose a[href^=javascript]").CountAsync());
        var link = open.Page.GetByText("page elsewhere");
        await Expect(link).ToHaveAttributeAsync("rel", "noopener noreferrer");
        await Expect(link).ToHaveAttributeAsync("target", "_blank");
        await open.Page.GetByText("Answer").ClickAsync();
        await Expect(open.Page.GetByText("It is shown.")).ToBeVisibleAsync();
    }
}
