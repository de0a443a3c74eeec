using System.Text.Json.Nodes;
using Microsoft.Playwright;
using StrutLessons.Desk.Live;
using static Microsoft.Playwright.Assertions;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>What the user typed is never lost, and the shipped lessons are never touched.</summary>
[Collection("live")]
public sealed class KeepingTests(LiveFixture live)
{
    [Fact]
    public async Task Text_and_outputs_outlive_a_reload_and_two_tabs_show_the_same()
    {
        const string Lesson = "14-a-lesson-to-change";
        await using var open = await live.OpenAsync(Lesson);
        await open.WriteAsync("free", "\"from the first tab\"");
        await open.RunAsync("free");

        await using (var second = await open.SecondTabAsync())
        {
            Assert.Equal("\"from the first tab\"", await second.TextAsync("free"));
            await Expect(second.Outputs("free")).ToContainTextAsync("from the first tab");
            await second.WriteAsync("free", "\"from the second tab\"");
            await second.RunAsync("free");
            await Expect(open.Outputs("free")).ToContainTextAsync("from the second tab");
            await Expect(open.Cell("free").Locator(".CodeMirror-line")).ToHaveTextAsync("\"from the second tab\"");
            await open.Page.ReloadAsync();
            await open.ReadyAsync();
            Assert.Equal("\"from the second tab\"", await open.TextAsync("free"));
            await Expect(open.Outputs("free")).ToContainTextAsync("from the second tab");

            // The reader takes the changes along as a notebook.
            var notebook = await open.Page.APIRequest.GetAsync(new Uri(live.Server.Address, Lesson + ".ipynb").AbsoluteUri);
            Assert.Contains("from the second tab", await notebook.TextAsync(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task One_cell_and_the_whole_lesson_go_back_to_the_original()
    {
        await using var open = await live.OpenAsync("15-a-lesson-to-change");
        var original = await open.TextAsync("length");
        await open.WriteAsync("length", "double length = 9;");
        await open.WriteAsync("free", "1 + 1");
        await Expect(open.Cell("length").Locator(".state")).ToContainTextAsync("your text");
        await open.Cell("length").GetByText("More").ClickAsync();
        await open.Cell("length").GetByRole(AriaRole.Button, new() { Name = "Back to the original" }).ClickAsync();
        await Expect(open.Cell("length").Locator(".state")).Not.ToContainTextAsync("your text");
        Assert.Equal(original, await open.TextAsync("length"));
        Assert.Equal("1 + 1", await open.TextAsync("free"));

        await open.Cell("free").GetByText("More").ClickAsync();
        await open.Cell("free").GetByRole(AriaRole.Button, new() { Name = "Add a cell below" }).ClickAsync();
        await Expect(open.Page.Locator(".live-cell")).ToHaveCountAsync(5);
        await open.Page.Keyboard.TypeAsync("2 + 2");
        await live.KeptAsync("2 \\u002B 2");
        open.Page.Dialog += async (_, dialog) => await dialog.AcceptAsync();
        await open.Page.Locator(".bar").GetByRole(AriaRole.Button, new() { Name = "Back to the original" }).ClickAsync();
        await Expect(open.Page.Locator(".live-cell")).ToHaveCountAsync(4);
        Assert.Equal("// Your own lines.", await open.TextAsync("free"));
    }

    [Fact]
    public async Task Of_two_texts_written_at_the_same_time_the_later_stands_and_the_other_is_offered()
    {
        const string Lesson = "16-a-lesson-to-change";
        await using var open = await live.OpenAsync(Lesson);
        await using var other = await RawTab.ConnectAsync(live.Server.Address, Lesson, await live.CookieAsync(), $"http://{live.Server.Address.Authority}");
        var known = (long)(await other.HearAsync("all"))["cells"]!.AsArray().Single(cell => (string?)cell!["text"]!["cell"] == "free")!["text"]!["revision"]!;
        await open.WriteAsync("free", "\"mine\"");
        await other.HearAsync(said => (string?)said["say"] == "text" && (string?)said["text"] == "\"mine\"");

        await other.AskAsync(new { ask = "edit", cell = "free", text = "\"theirs\"", @base = known });

        await Expect(open.Cell("free").Locator(".offer pre")).ToHaveTextAsync("\"mine\"");
        Assert.Equal("\"theirs\"", await open.TextAsync("free"));
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Take the other text" }).ClickAsync();
        await Expect(open.Cell("free").Locator(".offer")).ToBeHiddenAsync();
        Assert.Equal("\"mine\"", await open.TextAsync("free"));
    }

    [Fact]
    public async Task A_page_that_was_cut_off_connects_again_and_hands_in_what_was_typed_meanwhile()
    {
        const string Lesson = "17-a-lesson-to-change";
        await using var open = await live.OpenAsync("02-a-lesson-to-change");
        IWebSocketRoute? socket = null;
        var isOpen = true;
        await open.Page.RouteWebSocketAsync("**/socket", route =>
        {
            socket = route;
            if (isOpen)
            {
                route.ConnectToServer();
            }
            else
            {
                _ = route.CloseAsync(new WebSocketRouteCloseOptions { Code = 1011 });
            }
        });
        await open.GoAsync(new Uri(live.Server.Address, Lesson + ".html"));
        isOpen = false;
        await socket!.CloseAsync(new WebSocketRouteCloseOptions { Code = 1011 });
        await open.WriteAsync("free", "\"typed while asleep\"");
        await Expect(open.Page.GetByRole(AriaRole.Status)).ToContainTextAsync("Not connected");

        isOpen = true;
        await live.KeptAsync("typed while asleep");
        await open.RunAsync("free");
        await Expect(open.Outputs("free")).ToContainTextAsync("typed while asleep");
    }

    [Fact]
    public async Task A_lesson_that_changed_keeps_the_users_text_and_says_so_after_a_restart_of_the_program()
    {
        const string Lesson = "18-a-lesson-to-change";
        await using (var open = await live.OpenAsync(Lesson))
        {
            await open.WriteAsync("free", "\"my own\"");
            await live.KeptAsync("my own");
        }
        var file = Path.Combine(live.Lessons, Lesson + ".ipynb");
        await File.WriteAllTextAsync(file, (await File.ReadAllTextAsync(file)).Replace("// Your own lines.", "// A better hint.", StringComparison.Ordinal));
        await using var server = await LiveServer.StartAsync(live.Settings());
        await using var again = await live.OpenAsync(Lesson, server);

        Assert.Equal("\"my own\"", await again.TextAsync("free"));
        await Expect(again.Cell("free").Locator(".offer")).ToContainTextAsync("The lesson has changed here");
        await Expect(again.Cell("free").Locator(".offer pre")).ToHaveTextAsync("// A better hint.");
        await again.Page.GetByRole(AriaRole.Button, new() { Name = "Keep the text above" }).ClickAsync();
        await Expect(again.Cell("free").Locator(".offer")).ToBeHiddenAsync();
        Assert.Equal("\"my own\"", await again.TextAsync("free"));
    }

    [Fact]
    public async Task Nothing_is_written_beside_the_lessons_and_a_file_that_cannot_be_read_is_put_aside()
    {
        const string Lesson = "19-a-lesson-to-change";
        var before = Traces(live.Lessons);
        await using (var first = await live.OpenAsync(Lesson))
        {
            await first.WriteAsync("free", "System.IO.File.WriteAllText(\"made-by-a-cell.txt\", \"x\"); \"first words\"");
            await first.RunAsync("free");
            await live.KeptAsync("first words");
        }
        // The file of a lesson from outside the course carries its place in its name.
        var kept = Directory.GetFiles(Path.Combine(live.Folder, "edits"), Lesson + "-*.json").Single();
        await File.WriteAllTextAsync(kept, "{ broken");
        await using (var open = await live.OpenAsync(Lesson))
        {
            await open.WriteAsync("free", "\"later words\"");
            await live.KeptAsync("later words");
        }

        Assert.Equal("{ broken", await File.ReadAllTextAsync(kept[..^".json".Length] + ".2.json"));
        Assert.Contains("later words", (string?)JsonNode.Parse(await File.ReadAllTextAsync(kept))!["edits"]![0]!["text"], StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(live.Folder, "files", "made-by-a-cell.txt")));
        Assert.Equal(before, Traces(live.Lessons));
        if (!OperatingSystem.IsWindows())
        {
            Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute, File.GetUnixFileMode(Path.Combine(live.Folder, "edits")));
        }
    }

    private static string[] Traces(string folder) =>
        [.. new DirectoryInfo(folder).GetFiles("*", SearchOption.AllDirectories).Select(file => $"{file.Name} {file.Length}").Order(StringComparer.Ordinal).Where(trace => !trace.StartsWith("18-", StringComparison.Ordinal))];
}
