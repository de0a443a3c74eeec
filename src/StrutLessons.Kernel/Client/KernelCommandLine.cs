using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace StrutLessons.Kernel.Client;

/// <summary>The command line and environment of a kernel process.</summary>
internal static class KernelCommandLine
{
    /// <summary>The kernel program beside the running one.</summary>
    internal static string Program => Path.Combine(AppContext.BaseDirectory, "StrutLessons.Kernel.dll");

    internal static ProcessStartInfo Build(KernelSettings settings)
    {
        var start = new ProcessStartInfo(DotnetHost())
        {
            ArgumentList = { "exec", Program },
            WorkingDirectory = settings.WorkingFolder ?? "",
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            StandardInputEncoding = new UTF8Encoding(false),
            StandardOutputEncoding = Encoding.UTF8,
            StandardErrorEncoding = Encoding.UTF8,
            UseShellExecute = false,
            CreateNoWindow = true,
        };
        if (settings.LiveControls)
        {
            start.ArgumentList.Add("--live");
        }
        foreach (var (name, value) in Environment(settings))
        {
            start.Environment[name] = value;
        }
        return start;
    }

    /// <summary>What a kernel process finds in its environment, whoever starts it.</summary>
    internal static IEnumerable<(string Name, string Value)> Environment(KernelSettings settings) =>
    [
        ("DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT", "1"),
        ("DOTNET_CLI_TELEMETRY_OPTOUT", "1"),
        // The runtime's diagnostic port is a file that a killed process leaves behind.
        ("DOTNET_EnableDiagnostics", "0"),
        ("DOTNET_GCHeapHardLimit", ((long)settings.MemoryLimitMiB << 20).ToString("X")),
    ];

    /// <summary>The dotnet program whose runtime this process uses: the kernel runs on the same one.</summary>
    internal static string DotnetHost()
    {
        var name = OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet";
        // The runtime lies in <host>/shared/Microsoft.NETCore.App/<version>.
        var host = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", name));
        return File.Exists(host) ? host : name;
    }
}
