using System.Diagnostics;
using Microsoft.Playwright;
using static Microsoft.Playwright.Assertions;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>Cells that do not end, or end their kernel process: the page and its text stay.</summary>
[Collection("live")]
public sealed class StoppingTests(LiveFixture live)
{
    /// <summary>Asked to stop, a cell has gone within this time, whatever it does.</summary>
    private static readonly TimeSpan Bar = TimeSpan.FromSeconds(5);

    private const string Begun = "Console.WriteLine(\"begun.\"); ";

    /// <summary>Code in a finally block is never broken off.</summary>
    private const string Deaf = "try { } finally { while (true) { } }";

    [Fact]
    public async Task An_endless_loop_stops_when_asked_and_earlier_cells_keep_what_they_defined()
    {
        await using var open = await live.OpenAsync("09-a-lesson-to-change");
        await open.RunAsync("length");
        await open.WriteAsync("free", Begun + "while (true) { }");
        await open.RunAsync("free", "running");

        await StopAsync(open);
        await Expect(open.Outputs("free")).ToContainTextAsync("The cell was interrupted.");
        await open.RunAsync("double");
        await Expect(open.Outputs("double")).ToContainTextAsync("Twice that: 4 m");
    }

    [Fact]
    public async Task A_cell_that_does_not_listen_loses_its_kernel_and_the_page_offers_a_fresh_one()
    {
        await using var open = await live.OpenAsync("10-a-lesson-to-change");
        await open.RunAsync("length");
        await open.WriteAsync("free", Begun + Deaf);
        await open.RunAsync("free", "running");

        await StopAsync(open);
        await Expect(open.Outputs("free")).ToContainTextAsync("did not stop within 3 s");
        await RecoverAsync(open, Begun + Deaf);
    }

    [Fact]
    public async Task A_kernel_killed_in_the_middle_of_a_cell_takes_no_text_with_it()
    {
        await using var open = await live.OpenAsync("11-a-lesson-to-change");
        await open.WriteAsync("free", "Console.WriteLine($\"process {Environment.ProcessId}.\"); while (true) { }");
        await open.RunAsync("free", "running");
        await Expect(open.Outputs("free")).ToContainTextAsync(".");
        var number = (await open.Outputs("free").InnerTextAsync()).Trim()["process ".Length..^1];

        using var kernel = Process.GetProcessById(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture));
        kernel.Kill();
        await open.StateAsync("free", "failed");
        await RecoverAsync(open, "Console.WriteLine($\"process {Environment.ProcessId}.\"); while (true) { }");
    }

    [Theory]
    [InlineData("12", "var all = new List<byte[]>(); while (true) { var one = new byte[10_000_000]; Array.Fill(one, (byte)1); all.Add(one); }")]
    [InlineData("13", "unsafe { while (true) System.Runtime.InteropServices.NativeMemory.Fill(System.Runtime.InteropServices.NativeMemory.Alloc(20_000_000), 20_000_000, 1); }")]
    public async Task A_cell_that_takes_ever_more_memory_ends_by_itself(string number, string code)
    {
        await using var open = await live.OpenAsync(number + "-a-lesson-to-change");
        await open.WriteAsync("free", code);
        await open.RunAsync("free", "failed");

        Assert.Matches("memory|Memory", await open.Outputs("free").InnerTextAsync());
        Assert.Equal(code, await open.TextAsync("free"));
        await open.RunAsync("length");
    }

    /// <summary>Presses the cell's stop button and holds the bar.</summary>
    private static async Task StopAsync(LivePage open)
    {
        await Expect(open.Outputs("free")).ToContainTextAsync("begun.");
        var clock = Stopwatch.StartNew();
        await open.Cell("free").GetByRole(AriaRole.Button, new() { Name = "Stop cell" }).ClickAsync();
        await open.StateAsync("free", "failed");
        Assert.True(clock.Elapsed < Bar, $"The cell ran on for {clock.Elapsed.TotalSeconds:0.0} s.");
    }

    private static async Task RecoverAsync(LivePage open, string text)
    {
        await Expect(open.Page.GetByRole(AriaRole.Alert)).ToContainTextAsync("Your text is kept");
        Assert.Equal(text, await open.TextAsync("free"));
        await open.Page.GetByRole(AriaRole.Button, new() { Name = "Start a fresh one" }).ClickAsync();
        await Expect(open.Page.GetByRole(AriaRole.Alert)).ToBeHiddenAsync();
        await open.RunAsync("length");
        await Expect(open.Outputs("length")).ToContainTextAsync("The strut is 2 m long.");
    }
}
