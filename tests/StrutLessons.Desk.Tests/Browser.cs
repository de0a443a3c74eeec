using System.Diagnostics;
using Microsoft.Playwright;

namespace StrutLessons.Desk.Tests;

/// <summary>
/// A real browser without a window: the Chromium of the operating system, never one that is downloaded. On Debian, as root, it is
/// installed if it is missing.
/// </summary>
internal static class Browser
{
    private static readonly string[] Names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome.exe", "msedge.exe"];

    internal static async Task<(IPlaywright Driver, IBrowser Browser)> StartAsync()
    {
        var program = Find() ?? await InstallAsync();
        var driver = await Playwright.CreateAsync();
        var browser = await driver.Chromium.LaunchAsync(new BrowserTypeLaunchOptions
        {
            ExecutablePath = program,
            Args = ["--no-sandbox", "--disable-gpu", "--disable-background-networking", "--disable-component-update", "--no-first-run"],
        });
        return (driver, browser);
    }

    private static string? Find()
    {
        var folders = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Concat(new[] { Environment.SpecialFolder.ProgramFiles, Environment.SpecialFolder.ProgramFilesX86 }
                .Select(Environment.GetFolderPath).Where(folder => folder.Length > 0)
                .SelectMany(folder => new[] { Path.Combine(folder, "Google", "Chrome", "Application"), Path.Combine(folder, "Microsoft", "Edge", "Application") }))
            .Append("/Applications/Chromium.app/Contents/MacOS").Append("/Applications/Google Chrome.app/Contents/MacOS");
        return folders.SelectMany(folder => Names.Append("Chromium").Append("Google Chrome").Select(name => Path.Combine(folder, name))).FirstOrDefault(File.Exists);
    }

    private static async Task<string> InstallAsync()
    {
        if (File.Exists("/etc/debian_version") && Environment.UserName == "root")
        {
            await RunAsync("apt-get", "update -qq");
            await RunAsync("apt-get", "install -y -qq --no-install-recommends chromium fonts-dejavu-core");
        }
        return Find() ?? throw new InvalidOperationException(
            "These tests need a browser. Install Chromium (on Debian and Ubuntu: sudo apt-get install chromium) or Chrome, so that it is found on the PATH, and run them again.");
    }

    private static async Task RunAsync(string program, string arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardOutput = true, Environment = { ["DEBIAN_FRONTEND"] = "noninteractive" } })!;
        await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
    }
}
