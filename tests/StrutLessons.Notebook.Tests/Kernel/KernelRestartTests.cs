using System.Diagnostics;
using StrutLessons.Kernel.Client;

namespace StrutLessons.Notebook.Tests.Kernel;

public sealed class KernelRestartTests
{
    private const int Cycles = 200;

    /// <summary>
    /// A kernel process is started and killed again and again, each time at another moment: while the runtime comes up, while the
    /// engine does, and now and then while a cell runs without end. A full start for each would take minutes. At the end a kernel
    /// works as if nothing had happened. Home and temporary folder belong to these processes alone and must stay empty.
    /// </summary>
    [Fact]
    public async Task Two_hundred_kernels_killed_at_any_moment_leave_no_process_and_no_file()
    {
        var folder = Directory.CreateTempSubdirectory("killed").FullName;
        var ids = new List<int>();
        for (var cycle = 0; cycle < Cycles; cycle++)
        {
            using var process = Process.Start(CommandLine(folder))!;
            ids.Add(process.Id);
            if (cycle % 25 == 24)
            {
                await RunEndlessCellAsync(process);
            }
            else
            {
                // Any moment of the first half second, in no order.
                await Task.Delay(cycle * 37 % 500);
            }
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
        }

        await using var kernel = await KernelProcess.StartAsync();
        Assert.Equal("2", (await kernel.RunAsync("1 + 1")).Result?.Content("text/plain"));
        Assert.All(ids, id => Assert.False(File.Exists($"/proc/{id}/stat") && File.ReadAllText($"/proc/{id}/cmdline").Contains("StrutLessons.Kernel", StringComparison.Ordinal)));
        Assert.Empty(Directory.EnumerateFileSystemEntries(folder));
        Directory.Delete(folder);
    }

    private static ProcessStartInfo CommandLine(string folder)
    {
        var start = KernelCommandLine.Build(new KernelSettings { WorkingFolder = folder });
        foreach (var name in new[] { "HOME", "TMPDIR", "TEMP", "TMP", "DOTNET_CLI_HOME", "XDG_DATA_HOME", "XDG_CACHE_HOME" })
        {
            start.Environment[name] = folder;
        }
        return start;
    }

    private static async Task RunEndlessCellAsync(Process process)
    {
        Assert.Contains("ready", await process.StandardOutput.ReadLineAsync(), StringComparison.Ordinal);
        await process.StandardInput.WriteLineAsync("""{"ask":"run","id":1,"code":"Console.Write(1); while (true) { }"}""");
        await process.StandardInput.FlushAsync();
        Assert.Contains("\"output\"", await process.StandardOutput.ReadLineAsync(), StringComparison.Ordinal);
    }
}
