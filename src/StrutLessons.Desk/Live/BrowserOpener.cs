using System.ComponentModel;
using System.Diagnostics;

namespace StrutLessons.Desk.Live;

/// <summary>Opens an address in the user's browser.</summary>
internal static class BrowserOpener
{
    private static readonly string[] Screens = ["DISPLAY", "WAYLAND_DISPLAY"];

    /// <summary>True if a browser was asked to open the address; false if there is none to ask.</summary>
    internal static bool TryOpen(Uri address)
    {
        try
        {
            var start = OperatingSystem.IsWindows() ? new ProcessStartInfo(address.AbsoluteUri) { UseShellExecute = true }
                : OperatingSystem.IsMacOS() ? Quiet("open", address)
                : HasScreen() ? Quiet("xdg-open", address)
                : null;
            using var process = start is null ? null : Process.Start(start);
            // A program that fails says so at once.
            return start is not null && (process is null || !process.WaitForExit(1500) || process.ExitCode == 0);
        }
        catch (Exception missing) when (missing is Win32Exception or InvalidOperationException or PlatformNotSupportedException)
        {
            return false;
        }
    }

    private static bool HasScreen() => Screens.Any(name => Environment.GetEnvironmentVariable(name) is { Length: > 0 });

    private static ProcessStartInfo Quiet(string program, Uri address) => new(program, address.AbsoluteUri)
    {
        RedirectStandardOutput = true,
        RedirectStandardError = true,
        UseShellExecute = false,
    };
}
