using System.ComponentModel;
using System.Diagnostics;

namespace StrutLessons.Desk.Readiness;

/// <summary>Programs of this machine.</summary>
internal static class Programs
{
    /// <summary>The first of these programs that the search path leads to; null if there is none.</summary>
    internal static string? Find(params IEnumerable<string> names)
    {
        string[] endings = OperatingSystem.IsWindows() ? [".exe", ".cmd"] : [""];
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries);
        return names.SelectMany(name => folders.SelectMany(folder => endings.Select(ending => Path.Combine(folder, name + ending)))).FirstOrDefault(File.Exists);
    }

    /// <summary>What a program prints, or null if it cannot be run to a good end.</summary>
    internal static async Task<string?> OutputAsync(string program, string[] arguments, CancellationToken cancel)
    {
        try
        {
            using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
            var error = process.StandardError.ReadToEndAsync(cancel);
            var output = await process.StandardOutput.ReadToEndAsync(cancel).ConfigureAwait(false);
            await error.ConfigureAwait(false);
            await process.WaitForExitAsync(cancel).ConfigureAwait(false);
            return process.ExitCode == 0 ? output : null;
        }
        catch (Win32Exception)
        {
            return null;
        }
    }
}
