using System.Diagnostics;
using System.Runtime.InteropServices;
using System.Text;

namespace StrutLessons.Kernel.Client;

/// <summary>The command line and environment of a kernel process.</summary>
internal static class KernelCommandLine
{
    internal static ProcessStartInfo Build(KernelSettings settings)
    {
        var start = new ProcessStartInfo(DotnetHost())
        {
            ArgumentList = { "exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Kernel.dll") },
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
        start.Environment["DOTNET_INTERACTIVE_CLI_TELEMETRY_OPTOUT"] = "1";
        start.Environment["DOTNET_CLI_TELEMETRY_OPTOUT"] = "1";
        // The runtime's diagnostic port is a file that a killed process leaves behind.
        start.Environment["DOTNET_EnableDiagnostics"] = "0";
        start.Environment["DOTNET_GCHeapHardLimit"] = ((long)settings.MemoryLimitMiB << 20).ToString("X");
        return start;
    }

    /// <summary>The dotnet program whose runtime this process uses: the kernel runs on the same one.</summary>
    private static string DotnetHost()
    {
        var name = OperatingSystem.IsWindows() ? "dotnet.exe" : "dotnet";
        // The runtime lies in <host>/shared/Microsoft.NETCore.App/<version>.
        var host = Path.GetFullPath(Path.Combine(RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", name));
        return File.Exists(host) ? host : name;
    }
}
