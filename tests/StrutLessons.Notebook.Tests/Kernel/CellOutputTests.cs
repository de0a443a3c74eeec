using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Notebook.Tests.Kernel;

public sealed class CellOutputTests(KernelFixture kernel) : IClassFixture<KernelFixture>
{
    private const string ManyForms = """
        record Many : IShown
        {
            public IReadOnlyList<ShownPart> Shown() =>
            [
                new("application/vnd.plotly.v1+json", "{\"data\":[]}"), new("image/svg+xml", "<svg/>"), new("text/latex", "$x$"),
                new("text/html", "<p>x</p>"), new("text/plain", "x"),
            ];
        }
        """;

    private static readonly string[] InTheOrderGiven =
        ["application/vnd.plotly.v1+json", "image/svg+xml", "text/latex", "text/html", "text/plain"];

    [Fact]
    public async Task The_last_expression_is_the_result()
    {
        var run = await kernel.Process.RunAsync("var six = 2 * 3;\nsix * 7");

        Assert.Equal(CellEnding.Succeeded, run.Ending);
        Assert.Equal("42", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task A_cell_that_ends_with_a_statement_shows_nothing()
    {
        var run = await kernel.Process.RunAsync("var quiet = 1;");

        Assert.Equal(CellEnding.Succeeded, run.Ending);
        Assert.Empty(run.Outputs);
    }

    [Fact]
    public async Task The_lessons_library_needs_no_reference_and_no_using()
    {
        var run = await kernel.Process.RunAsync("new Planar(3, 4).Length + new List<double> { 1 }.Sum()");

        Assert.Equal("6", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task Console_text_is_captured_in_the_order_written()
    {
        var run = await kernel.Process.RunAsync("Console.Write(\"a\");\nConsole.WriteLine(\"b\");\nConsole.Error.Write(\"c\");\nConsole.Write(\"d\");\n1");

        Assert.Equal(
            [new StreamOutput("stdout", "ab\n"), new StreamOutput("stderr", "c"), new StreamOutput("stdout", "d")],
            run.Outputs.OfType<StreamOutput>());
        Assert.Equal("1", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task Text_written_past_the_console_does_not_disturb_the_messages()
    {
        var run = await kernel.Process.RunAsync("""
            using (var raw = Console.OpenStandardOutput()) raw.Write("{\"say\":\"nonsense\"}\nplain words\n"u8);
            5
            """);

        Assert.Equal(CellEnding.Succeeded, run.Ending);
        Assert.Equal("5", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task A_value_with_several_forms_arrives_with_all_of_them_in_the_order_given()
    {
        var run = await kernel.Process.RunAsync(ManyForms + "\nnew Many()");

        Assert.Equal(InTheOrderGiven, run.Result?.Parts.Select(part => part.MimeType));
        Assert.Equal("{\"data\":[]}", run.Result?.Content("application/vnd.plotly.v1+json"));
    }

    [Fact]
    public async Task A_value_shown_on_the_way_has_the_same_forms_as_a_result()
    {
        var run = await kernel.Process.RunAsync(ManyForms + "\nShow(new Many());\nnew Many().Display();\n2");

        Assert.Equal(2, run.Outputs.OfType<ShownOutput>().Count(shown => !shown.IsResult));
        Assert.All(
            run.Outputs.OfType<ShownOutput>().Where(shown => !shown.IsResult),
            shown => Assert.Equal(InTheOrderGiven, shown.Parts.Select(part => part.MimeType)));
    }

    [Fact]
    public async Task A_shown_value_that_is_updated_keeps_its_place()
    {
        var run = await kernel.Process.RunAsync("var first = Show(\"one\");\nShow(\"two\");\nfirst.Replace(\"three\");");

        Assert.Equal(["three", "two"], run.Outputs.OfType<ShownOutput>().Select(shown => shown.Content("text/plain")));
    }

    [Fact]
    public async Task A_list_of_records_is_shown_as_a_table_without_a_style_sheet_of_its_own()
    {
        var run = await kernel.Process.RunAsync("new[] { new Planar(1, 2), new Planar(3, 4) }");

        var html = run.Result?.Content("text/html");
        Assert.Contains("<table>", html, StringComparison.Ordinal);
        Assert.DoesNotContain("<style", html, StringComparison.Ordinal);
        Assert.NotNull(run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task A_value_that_cannot_be_shown_says_so_and_does_not_fail_the_cell()
    {
        var run = await kernel.Process.RunAsync("""
            record Broken : IShown { public IReadOnlyList<ShownPart> Shown() => throw new InvalidOperationException("no ink"); }
            new Broken()
            """);

        Assert.Equal(CellEnding.Succeeded, run.Ending);
        Assert.Contains("no ink", run.Result?.Content("text/plain"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_flood_of_text_is_cut_off()
    {
        var run = await kernel.Process.RunAsync("var line = new string('x', 100_000);\nfor (var i = 0; i < 30; i++) Console.Write(line);\n7");

        Assert.InRange(run.Text("stdout").Length, 1_000_000, 1_200_000);
        Assert.Contains("left out", run.Text("stdout"), StringComparison.Ordinal);
        Assert.Equal("7", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task Outputs_arrive_while_the_cell_is_running()
    {
        var early = new TaskCompletionSource();
        var running = kernel.Process.RunAsync("Console.Write(\"early\");\nawait Task.Delay(3000);", _ => early.TrySetResult());

        await early.Task.WaitAsync(TimeSpan.FromSeconds(20));
        Assert.False(running.IsCompleted);
        await running;
    }

    [Fact]
    public async Task Completion_offers_the_members_of_the_library()
    {
        await kernel.Process.RunAsync("var arm = new Planar(1, 2);");
        var answer = await kernel.Process.CompleteAsync("var n = arm.Le", 14);

        Assert.NotNull(answer);
        Assert.Contains(answer.Items, item => item is { Text: "Length", Kind: "Property" });
        Assert.Equal((12, 14), (answer.Start, answer.End));
    }

    [Fact]
    public async Task No_output_names_an_address_or_a_port()
    {
        var run = await kernel.Process.RunAsync("Console.Write(\"x\");\nShow(3);\nnew Planar(1, 2)");
        var everything = string.Concat(run.Outputs.SelectMany(output => output switch
        {
            StreamOutput stream => [stream.Text],
            ShownOutput shown => shown.Parts.Select(part => part.Content),
            _ => [],
        }));

        Assert.DoesNotContain("http", everything, StringComparison.Ordinal);
        Assert.DoesNotContain("127.0.0.1", everything, StringComparison.Ordinal);
    }

    [Fact]
    public void The_kernel_process_opens_no_network_socket()
    {
        // The files below /proc exist on Linux only, and so does this check; elsewhere the same code opens as little.
        if (!OperatingSystem.IsLinux())
        {
            return;
        }
        var open = Directory.EnumerateFileSystemEntries($"/proc/{kernel.Process.ProcessId}/fd")
            .Select(file => new FileInfo(file).LinkTarget ?? "").Where(target => target.StartsWith("socket:[", StringComparison.Ordinal))
            .Select(target => target[8..^1]).ToArray();
        var network = new[] { "tcp", "tcp6", "udp", "udp6" }
            .SelectMany(table => File.ReadLines("/proc/net/" + table).Skip(1))
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[9]);

        Assert.Empty(open.Intersect(network));
    }
}
