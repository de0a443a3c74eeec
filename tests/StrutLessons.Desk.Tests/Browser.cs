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
        // Other browsers of the family do as well; the message about a missing one names the free one.
        await DebianPackages.EnsureAsync(() => Find() is not null, "chromium", "fonts-dejavu-core");
        var program = Find()!;
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
}
