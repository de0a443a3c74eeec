using System.Diagnostics;
using System.Globalization;
using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// Tells when the front end that started the kernel has gone, however it went. Front ends name themselves in the variable
/// <c>JPY_PARENT_PID</c>; a kernel that is meant to outlive its starter is started without it.
/// </summary>
internal static class ParentWatch
{
    private const string Variable = "JPY_PARENT_PID";
    private static readonly TimeSpan Interval = TimeSpan.FromSeconds(1);

    /// <summary>Completes when the front end has gone; never if none has named itself.</summary>
    internal static Task GoneAsync() =>
        long.TryParse(Environment.GetEnvironmentVariable(Variable), NumberStyles.None, CultureInfo.InvariantCulture, out var parent) && parent > 1
            ? OperatingSystem.IsWindows() ? HandleClosedAsync((nint)parent) : ProcessGoneAsync((int)parent)
            : Task.Delay(Timeout.Infinite);

    private static async Task ProcessGoneAsync(int parent)
    {
        var first = ParentProcess();
        // A child whose parent dies gets another parent at once, even while the dead one still has a number.
        while (ParentProcess() == first && Exists(parent))
        {
            await Task.Delay(Interval).ConfigureAwait(false);
        }
    }

    private static bool Exists(int id)
    {
        try
        {
            using var process = Process.GetProcessById(id);
            return true;
        }
        catch (ArgumentException)
        {
            return false;
        }
    }

    /// <summary>On Windows the variable holds a handle of the front end's process, inherited by the kernel.</summary>
    private static Task HandleClosedAsync(nint parent) => Task.Factory.StartNew(() =>
    {
        using var gone = new ManualResetEvent(false) { SafeWaitHandle = new SafeWaitHandle(parent, ownsHandle: false) };
        gone.WaitOne();
    }, CancellationToken.None, TaskCreationOptions.LongRunning, TaskScheduler.Default);

    [DllImport("libc", EntryPoint = "getppid")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int ParentProcess();
}
