using System.Diagnostics;
using System.Text.Json;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>
/// The kernel, registered by the program's own verb for a user whose home is a temporary folder, and the Jupyter programs of the
/// operating system to call it. Made once for all tests.
/// </summary>
public sealed class JupyterFixture : IAsyncLifetime
{
    /// <summary>The Python of the operating system: the packages belong to it and to no other one on the path.</summary>
    internal const string Python = "/usr/bin/python3";

    private static readonly string[] Packages = ["python3-jupyter-client", "python3-nbclient", "python3-nbconvert", "jupyter-notebook"];

    private Lazy<Task<JsonElement>> _facts = null!;
    private Lazy<(Task<Finished> Client, Task<Finished> Converter)> _lessons = null!;

    /// <summary>The user's home.</summary>
    internal string Home { get; } = Directory.CreateTempSubdirectory("jupyter").FullName;

    /// <summary>Where this user's programs put temporary files.</summary>
    internal string Temporary => Path.Combine(Home, "tmp");

    /// <summary>Where Jupyter keeps this user's data.</summary>
    internal string Data => Path.Combine(Home, "data");

    /// <summary>What a front end saw that went through the protocol; it does so once.</summary>
    internal Task<JsonElement> FactsAsync() => _facts.Value;

    /// <summary>Every lesson.</summary>
    internal static string[] Lessons { get; } = [.. NotebookFile.Find(Repository.Notebooks)];

    /// <summary>Where the converter puts the lessons' pages.</summary>
    internal string Pages => Path.Combine(Home, "pages");

    /// <summary>Every lesson executed by nbclient.</summary>
    internal Task<Finished> ExecutedAsync() => _lessons.Value.Client;

    /// <summary>Every lesson executed and converted by nbconvert.</summary>
    internal Task<Finished> ConvertedAsync() => _lessons.Value.Converter;

    public async Task InitializeAsync()
    {
        await DebianPackages.EnsureAsync(AreInstalled, Packages);
        Directory.CreateDirectory(Temporary);
        var registered = await DeskAsync("jupyter");
        Assert.Equal((0, ""), (registered.Code, registered.Error));
        _facts = new(async () =>
        {
            var run = await PythonAsync("facts.py");
            Assert.True(run.Code == 0, run.Error);
            return JsonElement.Parse(run.Output);
        });
        // Each takes a minute and more, mostly on one core: both at once.
        _lessons = new(() => (
            PythonAsync("lessons.py", Lessons),
            RunAsync(Python, ["-m", "nbconvert", "--execute", "--to", "html", "--output-dir", Pages, .. Lessons])));
    }

    public Task DisposeAsync()
    {
        Directory.Delete(Home, recursive: true);
        return Task.CompletedTask;
    }

    /// <summary>Calls the program of the lessons as this user.</summary>
    internal Task<Finished> DeskAsync(params string[] arguments) =>
        RunAsync("dotnet", ["exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll"), .. arguments]);

    /// <summary>Runs one of the scripts beside these tests as this user.</summary>
    internal Task<Finished> PythonAsync(string script, params string[] arguments) => RunAsync(Python, [Script(script), .. arguments]);

    /// <summary>Runs a program as this user to its end.</summary>
    internal async Task<Finished> RunAsync(string program, params string[] arguments)
    {
        using var process = Start(program, arguments);
        var error = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return new(process.ExitCode, output, await error);
    }

    /// <summary>Starts a program as this user.</summary>
    internal Process Start(string program, params string[] arguments)
    {
        var start = new ProcessStartInfo(program)
        {
            WorkingDirectory = Home,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            Environment =
            {
                ["HOME"] = Home,
                ["TMPDIR"] = Temporary,
                ["JUPYTER_DATA_DIR"] = Data,
                ["JUPYTER_CONFIG_DIR"] = Path.Combine(Home, "config"),
                ["JUPYTER_RUNTIME_DIR"] = Path.Combine(Home, "runtime"),
                ["PYTHONDONTWRITEBYTECODE"] = "1",
                ["PYTHONUTF8"] = "1",
            },
        };
        foreach (var argument in arguments)
        {
            start.ArgumentList.Add(argument);
        }
        return Process.Start(start)!;
    }

    private static string Script(string name) => Path.Combine(AppContext.BaseDirectory, "Jupyter", name);

    private static bool AreInstalled()
    {
        if (!File.Exists(Python) || !File.Exists("/usr/bin/jupyter-notebook"))
        {
            return false;
        }
        using var check = Process.Start(new ProcessStartInfo(Python) { ArgumentList = { "-c", "import jupyter_client, nbclient, nbconvert" }, RedirectStandardError = true })!;
        check.StandardError.ReadToEnd();
        check.WaitForExit();
        return check.ExitCode == 0;
    }
}

/// <summary>How a program ended and what it wrote.</summary>
internal sealed record Finished(int Code, string Output, string Error);

[CollectionDefinition("jupyter")]
public sealed class JupyterTests : ICollectionFixture<JupyterFixture>;
