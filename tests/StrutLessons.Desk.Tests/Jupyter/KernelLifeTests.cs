using System.Diagnostics;
using System.Globalization;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>How a kernel of a Jupyter front end begins and ends.</summary>
[Collection("jupyter")]
public sealed class KernelLifeTests(JupyterFixture jupyter)
{
    [Theory]
    [InlineData("\"ip\": \"0.0.0.0\"", "0.0.0.0")]
    [InlineData("\"ip\": \"192.168.1.2\"", "192.168.1.2")]
    [InlineData("\"transport\": \"ipc\"", "ipc")]
    [InlineData("\"signature_scheme\": \"hmac-md5\"", "hmac-md5")]
    [InlineData("\"key\": \"\"", "no key")]
    [InlineData("\"shell_port\": \"none\"", "cannot be read")]
    public async Task A_connection_that_is_not_signed_or_not_on_this_machine_alone_is_refused(string wish, string word)
    {
        var file = Path.Combine(jupyter.Home, Path.GetRandomFileName());
        await File.WriteAllTextAsync(file, $$"""
            { "transport": "tcp", "ip": "127.0.0.1", "signature_scheme": "hmac-sha256", "key": "k", "kernel_name": "",
              "shell_port": 1, "iopub_port": 1, "stdin_port": 1, "control_port": 1, "hb_port": 1, {{wish}} }
            """);

        var kernel = await jupyter.RunAsync("dotnet", "exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Kernel.dll"), "--connection", file);

        Assert.Equal(1, kernel.Code);
        Assert.Contains(word, kernel.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", kernel.Error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kernel_whose_front_end_dies_ends_by_itself_even_in_an_endless_loop()
    {
        var frontEnd = await jupyter.PythonAsync("dying_front_end.py");
        Assert.True(int.TryParse(frontEnd.Output.Trim(), CultureInfo.InvariantCulture, out var kernel), frontEnd.Error);

        Assert.True(await IsGoneAsync(kernel, TimeSpan.FromSeconds(10)));
    }

    [Fact]
    public async Task Kernels_leave_no_file_behind()
    {
        await jupyter.FactsAsync();

        Assert.Empty(Directory.EnumerateFileSystemEntries(jupyter.Temporary));
    }

    private static async Task<bool> IsGoneAsync(int process, TimeSpan patience)
    {
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < patience; await Task.Delay(100))
        {
            // A process that has ended and that nobody has asked about yet is a zombie: state Z.
            if (!File.Exists($"/proc/{process}/stat") || (await File.ReadAllTextAsync($"/proc/{process}/stat")).Contains(") Z ", StringComparison.Ordinal))
            {
                return true;
            }
        }
        return false;
    }
}
