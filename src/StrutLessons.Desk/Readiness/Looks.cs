using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using StrutLessons.Desk.Commands;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Jupyter;

namespace StrutLessons.Desk.Readiness;

/// <summary>Looks at everything the lessons need, and at what they can use.</summary>
internal static class Looks
{
    private const int OldestSdk = 10;

    /// <summary>Every look, one after another.</summary>
    internal static IEnumerable<Func<CancellationToken, Task<Finding>>> All { get; } =
        [SdkAsync, _ => Task.FromResult(Port()), _ => Task.FromResult(Browser()), KernelAsync, JupyterAsync];

    private static async Task<Finding> SdkAsync(CancellationToken cancel)
    {
        const string subject = ".NET SDK";
        var list = Programs.Find("dotnet") is { } dotnet ? await Programs.OutputAsync(dotnet, ["--list-sdks"], cancel).ConfigureAwait(false) : null;
        // One line each: "10.0.100 [folder]".
        var newest = (list ?? "").Split('\n').Select(line => line.Split(' ')[0]).LastOrDefault(version => Major(version) >= OldestSdk);
        return newest is not null
            ? new(FindingKind.Fine, subject, $"version {newest}")
            : new(FindingKind.Missing, subject, $"version {OldestSdk} or later is not found on the search path.",
                $"Install the .NET SDK {OldestSdk} and open a new terminal.");
    }

    private static int Major(string version) => int.TryParse(version.Split('.')[0], out var major) ? major : 0;

    private static Finding Port()
    {
        const string subject = "A port for the live pages";
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, 0);
            probe.Start();
            return new(FindingKind.Fine, subject, "free, on this machine alone");
        }
        catch (SocketException refused)
        {
            return new(FindingKind.Missing, subject, $"cannot be opened: {refused.Message}",
                $"Allow programs to listen on this machine itself (127.0.0.1). Without a port, \"{CommandLine.Call} -- site\" still writes the pages.");
        }
    }

    private static Finding Browser()
    {
        const string subject = "A browser";
        if (OperatingSystem.IsWindows() || OperatingSystem.IsMacOS())
        {
            return new(FindingKind.Fine, subject, "the usual one of this system opens the pages");
        }
        return Programs.Find("xdg-open", "chromium", "chromium-browser", "firefox", "firefox-esr", "google-chrome", "epiphany") is { } found
            ? new(FindingKind.Fine, subject, found)
            : new(FindingKind.Aside, subject, "none is found.", "The lessons print their address: open it in any browser on this machine.");
    }

    private static async Task<Finding> KernelAsync(CancellationToken cancel)
    {
        const string subject = "The kernel";
        try
        {
            var clock = Stopwatch.StartNew();
            var kernel = await KernelProcess.StartAsync(cancel: cancel).ConfigureAwait(false);
            await using var _ = kernel.ConfigureAwait(false);
            var run = await kernel.RunAsync("AngleCatalogue.Find(\"L 80x80x8\").Connected()", timeLimit: TimeSpan.FromMinutes(1), cancel: cancel).ConfigureAwait(false);
            return run.Ending == CellEnding.Succeeded
                ? new(FindingKind.Fine, subject, $"starts; its first result came after {clock.Elapsed.TotalSeconds:0.0} s")
                : new(FindingKind.Missing, subject, $"starts, but its first cell failed: {run.Error?.Message}", "Build once more: dotnet build");
        }
        catch (KernelException failure)
        {
            return new(FindingKind.Missing, subject, failure.Message, "Build once more: dotnet build");
        }
    }

    private static async Task<Finding> JupyterAsync(CancellationToken cancel)
    {
        const string subject = "Jupyter";
        var register = $"To see the lessons there: {CommandLine.Call} -- jupyter";
        var isThere = Programs.Find("jupyter") is { } jupyter && await Programs.OutputAsync(jupyter, ["--version"], cancel).ConfigureAwait(false) is not null;
        return (isThere, KernelSpec.IsRegistered, Directory.Exists(KernelSpec.Folder)) switch
        {
            (true, true, _) => new(FindingKind.Fine, subject, "is here, and the lessons' kernel is registered"),
            (true, _, true) => new(FindingKind.Aside, subject, "is here, but the registered kernel is that of another copy of this program.", register),
            (true, _, _) => new(FindingKind.Aside, subject, "is here, but the lessons' kernel is not registered.", register),
            (_, true, _) => new(FindingKind.Aside, subject, "is not found; the lessons' kernel is registered for it. The lessons do not need it."),
            _ => new(FindingKind.Aside, subject, "is not found. The lessons do not need it."),
        };
    }
}
