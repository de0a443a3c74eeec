using System.Diagnostics;
using System.Net;
using System.Text.RegularExpressions;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>The main command as it is called from a shell without a screen.</summary>
public sealed partial class ProgramTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("open").FullName;

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    [Fact]
    public async Task Without_a_screen_the_address_is_printed_and_the_program_ends_after_the_time_given()
    {
        using var program = Start("--for", "2");
        var output = await program.StandardOutput.ReadToEndAsync();
        await program.WaitForExitAsync();

        Assert.Equal(0, program.ExitCode);
        Assert.Matches(Address(), output);
        Assert.Contains(_folder, output, StringComparison.Ordinal);
        Assert.Contains("Ctrl+C", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_line_typed_into_the_terminal_shows_a_fresh_address_and_a_killed_program_leaves_no_kernel_behind()
    {
        using var program = Start("open", Path.Combine(Repository.Top, "tests", "Samples", "live"));
        var first = await AddressAsync(program);
        await program.StandardInput.WriteLineAsync();
        await program.StandardInput.FlushAsync();
        var second = await AddressAsync(program);
        Assert.NotEqual(first, second);

        using var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false });
        using var answer = await client.GetAsync(second);
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
        await using var tab = await RawTab.ConnectAsync(second, "a-lesson-to-change", cookie, $"http://{second.Authority}");
        await tab.AskAsync(new { ask = "edit", cell = "free", text = "Console.WriteLine(Environment.ProcessId); while (true) { }", @base = 0 });
        await tab.AskAsync(new { ask = "run", cells = new[] { "free" } });
        var number = Number().Match((string)(await tab.HearAsync(said => (string?)said["say"] == "piece" && Number().IsMatch((string)said["html"]!)))["html"]!).Value;
        using var kernel = Process.GetProcessById(int.Parse(number, System.Globalization.CultureInfo.InvariantCulture));
        program.Kill();

        Assert.True(kernel.WaitForExit(TimeSpan.FromSeconds(10)));
    }

    private Process Start(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Repository.Top,
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        };
        start.Environment["STRUTLESSONS_FOLDER"] = _folder;
        start.Environment.Remove("DISPLAY");
        start.Environment.Remove("WAYLAND_DISPLAY");
        foreach (var argument in arguments.Prepend(Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll")).Prepend("exec"))
        {
            start.ArgumentList.Add(argument);
        }
        return Process.Start(start)!;
    }

    private static async Task<Uri> AddressAsync(Process program)
    {
        while (await program.StandardOutput.ReadLineAsync().WaitAsync(TimeSpan.FromSeconds(60)) is { } line)
        {
            if (Address().Match(line) is { Success: true } address)
            {
                return new Uri(address.Value);
            }
        }
        throw new InvalidOperationException("The program has ended.");
    }

    [GeneratedRegex(@"http://127\.0\.0\.1:\d+/\?key=[\w-]{43}")]
    private static partial Regex Address();

    [GeneratedRegex(@"(?<=\n)\d+(?=\s|<)")]
    private static partial Regex Number();
}
