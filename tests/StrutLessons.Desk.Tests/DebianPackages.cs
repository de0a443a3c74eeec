using System.Diagnostics;

namespace StrutLessons.Desk.Tests;

/// <summary>Programs of the operating system that tests need: on Debian, as root, they are installed if they are missing.</summary>
internal static class DebianPackages
{
    private static readonly SemaphoreSlim One = new(1, 1);

    /// <summary>Installs packages unless a check finds them there.</summary>
    /// <param name="areThere">The check.</param>
    /// <param name="names">The packages.</param>
    /// <exception cref="InvalidOperationException">They are missing and cannot be installed; the message says what to install.</exception>
    internal static async Task EnsureAsync(Func<bool> areThere, params string[] names)
    {
        await One.WaitAsync();
        try
        {
            if (!areThere() && File.Exists("/etc/debian_version") && Environment.UserName == "root")
            {
                await RunAsync("apt-get", "update -qq");
                await RunAsync("apt-get", $"install -y -qq --no-install-recommends -o DPkg::Lock::Timeout=600 {string.Join(' ', names)}");
            }
        }
        finally
        {
            One.Release();
        }
        if (!areThere())
        {
            throw new InvalidOperationException(
                $"These tests need programs that are not installed. Install them (on Debian and Ubuntu: sudo apt-get install {string.Join(' ', names)}) and run the tests again.");
        }
    }

    private static async Task RunAsync(string program, string arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, Environment = { ["DEBIAN_FRONTEND"] = "noninteractive" } })!;
        await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
    }
}
