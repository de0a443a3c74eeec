using System.Text.Json;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>The live page by keyboard alone, in windows of several sizes, light and dark, and on paper.</summary>
[Collection("live")]
public sealed class KeyboardTests(LiveFixture live)
{
    private const string Lesson = "02-a-lesson-to-change";

    [Fact]
    public async Task A_lesson_can_be_changed_and_run_by_keyboard_alone()
    {
        await using var open = await live.OpenAsync(Lesson);
        var keys = open.Page.Keyboard;
        async Task TabToAsync(ILocator target)
        {
            for (var i = 0; i < 60 && !await target.EvaluateAsync<bool>("e => e === document.activeElement"); i++)
            {
                await keys.PressAsync("Tab");
            }
            await Expect(target).ToBeFocusedAsync();
        }

        await keys.PressAsync("Tab");
        await Expect(open.Page.GetByText("Skip to the content")).ToBeFocusedAsync();
        await keys.PressAsync("Enter");
        await TabToAsync(open.Editor("length"));
        await keys.PressAsync("Control+A");
        await keys.TypeAsync("double length = 5; length * 2");
        await keys.PressAsync("Shift+Enter");
        await open.StateAsync("length", "done");
        await Expect(open.Outputs("length")).ToContainTextAsync("10");
        await Expect(open.Editor("double")).ToBeFocusedAsync();

        // Escape leaves the editor, and Tab goes on from there.
        await keys.PressAsync("Escape");
        await Expect(open.Cell("double").GetByRole(AriaRole.Button, new() { Name = "Run cell 2" })).ToBeFocusedAsync();
        await keys.PressAsync("Enter");
        await open.StateAsync("double", "done");
        await Expect(open.Outputs("double")).ToContainTextAsync("Twice that: 10 m");
        await keys.PressAsync("Tab");
        await keys.PressAsync("Enter");
        await keys.PressAsync("Tab");
        await Expect(open.Cell("double").GetByRole(AriaRole.Button, new() { Name = "Run from here to the end" })).ToBeFocusedAsync();
        await keys.PressAsync("Escape");
        await Expect(open.Cell("double").Locator(".choices")).ToBeHiddenAsync();
    }

    [Theory]
    [InlineData(1280, false)]
    [InlineData(1280, true)]
    [InlineData(820, false)]
    [InlineData(820, true)]
    [InlineData(400, false)]
    public async Task The_page_fits_its_window_and_every_control_has_a_name(int width, bool dark)
    {
        await using var open = await live.OpenAsync("03-a-lesson-to-change", width: width, dark: dark);
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Run all" }).ClickAsync();
        await Expect(open.Page.Locator(".live-cell[data-state=done]")).ToHaveCountAsync(4, new() { Timeout = LivePage.Patience });
        var facts = JsonSerializer.Deserialize<Dictionary<string, JsonElement>>(await open.Page.EvaluateAsync<string>("""
            () => {
              const all = selector => [...document.querySelectorAll(selector)];
              const name = e => e.getAttribute("aria-label") || e.labels?.[0]?.textContent || e.textContent;
              return JSON.stringify({
                overflow: document.documentElement.scrollWidth - innerWidth,
                nameless: all("button, summary, input, select, [contenteditable]").filter(e => !name(e).trim()).map(e => e.outerHTML),
                unnamed: all(".live-cell [contenteditable]").map(e => e.getAttribute("aria-label")),
                small: all("button, summary").filter(e => e.checkVisibility() && e.getBoundingClientRect().height < 24).map(e => e.textContent),
                titles: all("h1").length, mains: all("main").length,
              });
            }
            """))!;

        Assert.True(facts["overflow"].GetInt32() <= 0, $"The page is {facts["overflow"]} px wider than its window of {width} px.");
        Assert.Equal(0, facts["nameless"].GetArrayLength());
        Assert.Equal(["Code of cell 1", "Code of cell 2", "Code of cell 3", "Code of cell 4"], facts["unnamed"].EnumerateArray().Select(one => one.GetString()));
        // WCAG 2.2, success criterion 2.5.8: targets of at least 24 by 24 CSS pixels.
        Assert.Equal("[]", facts["small"].ToString());
        Assert.Equal((1, 1), (facts["titles"].GetInt32(), facts["mains"].GetInt32()));
    }

    [Fact]
    public async Task On_paper_stand_text_code_and_results_and_no_buttons()
    {
        await using var open = await live.OpenAsync(Lesson);
        await open.Page.EmulateMediaAsync(new PageEmulateMediaOptions { Media = Media.Print });

        await Expect(open.Cell("free").Locator(".CodeMirror-line").First).ToBeVisibleAsync();
        await Expect(open.Page.Locator(".bar")).ToBeHiddenAsync();
        Assert.Equal(0, await open.Page.GetByRole(AriaRole.Button).CountAsync());
        await Expect(open.Page.Locator("footer")).ToContainTextAsync("not a design check");
    }
}
