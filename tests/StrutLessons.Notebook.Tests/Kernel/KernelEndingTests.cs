using System.Diagnostics;
using StrutLessons.Kernel.Client;

namespace StrutLessons.Notebook.Tests.Kernel;

public sealed class KernelEndingTests
{
    private static readonly TimeSpan Soon = TimeSpan.FromSeconds(5);

    [Theory]
    [InlineData("while (true) { }")]
    [InlineData("while (true) { Console.WriteLine(\"more\"); }")]
    [InlineData("await Task.Delay(-1);")]
    [InlineData("System.Threading.Thread.Sleep(-1);")]
    [InlineData("while (true) { try { Task.Delay(-1).Wait(); } catch { } }")]
    public async Task An_interrupted_cell_stops_and_what_was_defined_stays(string endless)
    {
        await using var kernel = await KernelProcess.StartAsync();
        await kernel.RunAsync("var kept = 5;");
        // A second time as well: what stopped the first cell must not wear off.
        for (var time = 0; time < 2; time++)
        {
            var running = await BeginAsync(kernel, endless);

            await kernel.InterruptAsync();
            var run = await running.WaitAsync(Soon);

            Assert.Equal((CellEnding.Failed, "Interrupt"), (run.Ending, run.Error!.Name));
            Assert.Equal("5", (await kernel.RunAsync("kept")).Result?.Content("text/plain"));
        }
    }

    [Theory]
    [InlineData("await Task.Delay(1); while (true) { count++; }")]
    [InlineData("while (true) { await Task.Delay(1); count++; }")]
    [InlineData("async Task Counting() { while (true) { await Task.Yield(); count++; } }\nCounting().Wait();")]
    public async Task What_follows_an_await_does_not_go_on_after_an_interrupt(string endless)
    {
        await using var kernel = await KernelProcess.StartAsync();
        await kernel.RunAsync("var count = 0L;");
        var running = await BeginAsync(kernel, endless);
        await Task.Delay(200);

        await kernel.InterruptAsync();
        await running.WaitAsync(Soon);

        Assert.Equal("True", (await kernel.RunAsync("count > 0")).Result?.Content("text/plain"));
        Assert.Equal("True", (await kernel.RunAsync("var before = count; await Task.Delay(500); count == before")).Result?.Content("text/plain"));
    }

    [Theory]
    [InlineData("async Task<int> Later() { await Task.Delay(20); return 7; }\nLater().Result")]
    [InlineData("var sum = 0; for (var i = 0; i < 7; i++) { await Task.Yield(); sum++; } sum")]
    [InlineData("(await Task.WhenAll(Enumerable.Range(0, 7).Select(async i => { await Task.Delay(20); return 1; }))).Sum()")]
    public async Task A_cell_may_await_and_may_block_on_its_own_tasks(string code)
    {
        await using var kernel = await KernelProcess.StartAsync();

        var run = await kernel.RunAsync(code, timeLimit: TimeSpan.FromSeconds(30));

        Assert.Equal("7", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task An_endless_loop_is_killed_at_its_time_limit()
    {
        await using var kernel = await KernelProcess.StartAsync();

        var run = await kernel.RunAsync("while (true) { }", timeLimit: TimeSpan.FromSeconds(1));

        Assert.Equal((CellEnding.TimedOut, "TimeLimit"), (run.Ending, run.Error!.Name));
        Assert.True(IsGone(kernel.ProcessId, Soon));
    }

    [Fact]
    public async Task Killing_a_kernel_takes_along_what_its_cells_have_started()
    {
        await using var kernel = await KernelProcess.StartAsync();
        var child = OperatingSystem.IsWindows() ? "(\"ping\", \"-n 1000 127.0.0.1\")" : "(\"sleep\", \"1000\")";
        var run = await kernel.RunAsync($"System.Diagnostics.Process.Start{child}.Id");
        var childId = int.Parse(run.Result!.Content("text/plain")!);
        Assert.False(IsGone(childId, TimeSpan.Zero));

        kernel.Kill();

        Assert.True(IsGone(childId, Soon));
    }

    [Fact]
    public async Task A_method_that_calls_itself_without_end_is_named_as_the_reason_of_the_crash()
    {
        await using var kernel = await KernelProcess.StartAsync();

        var run = await kernel.RunAsync("int Deeper(int n) => Deeper(n + 1) + 1;\nDeeper(0)");

        Assert.Equal(CellEnding.Crashed, run.Ending);
        Assert.Contains("calls itself without end", run.Error!.Message, StringComparison.Ordinal);
        Assert.Equal(CellEnding.Crashed, (await kernel.RunAsync("1")).Ending);
    }

    [Fact]
    public async Task A_cell_that_eats_memory_fails_before_the_machine_does()
    {
        await using var kernel = await KernelProcess.StartAsync(new KernelSettings { MemoryLimitMiB = 300 });

        var run = await kernel.RunAsync("var eaten = new List<byte[]>();\nwhile (true) eaten.Add(new byte[10_000_000]);");

        Assert.Contains(run.Ending, new[] { CellEnding.Failed, CellEnding.Crashed });
        Assert.Contains("memory", run.Error!.Message, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_cell_that_ends_its_process_is_a_crash_in_words()
    {
        await using var kernel = await KernelProcess.StartAsync();

        var run = await kernel.RunAsync("Environment.Exit(3);");

        Assert.Equal(CellEnding.Crashed, run.Ending);
        Assert.Contains("has ended", run.Error!.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_disposed_kernel_leaves_no_process_and_no_file()
    {
        int id;
        await using (var kernel = await KernelProcess.StartAsync())
        {
            id = kernel.ProcessId;
            await kernel.RunAsync("1");
        }

        Assert.True(IsGone(id, Soon));
        // The runtime's diagnostic port and debugger pipes carry the process's number in their names.
        Assert.DoesNotContain(Directory.EnumerateFileSystemEntries(Path.GetTempPath()), file => Path.GetFileName(file).Contains($"-{id}-", StringComparison.Ordinal));
    }

    /// <summary>The run of a cell without an end, once the cell has begun.</summary>
    private static async Task<Task<CellRun>> BeginAsync(KernelProcess kernel, string endless)
    {
        var begun = new TaskCompletionSource();
        var running = kernel.RunAsync("Console.Write(\"started\");\n" + endless, _ => begun.TrySetResult());
        await begun.Task.WaitAsync(TimeSpan.FromSeconds(30));
        return running;
    }

    private static bool IsGone(int processId, TimeSpan patience)
    {
        var clock = Stopwatch.StartNew();
        do
        {
            try
            {
                using var process = Process.GetProcessById(processId);
                if (process.HasExited)
                {
                    return true;
                }
            }
            catch (ArgumentException)
            {
                return true;
            }
            if (patience > TimeSpan.Zero)
            {
                Thread.Sleep(50);
            }
        }
        while (clock.Elapsed < patience);
        return false;
    }
}
