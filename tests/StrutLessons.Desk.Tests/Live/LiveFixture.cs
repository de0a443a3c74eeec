using System.Net;
using Microsoft.Playwright;
using StrutLessons.Desk.Live;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>One program that serves lessons, and one browser, for all tests of the live page.</summary>
public sealed class LiveFixture : IAsyncLifetime
{
    private readonly string _home = Directory.CreateTempSubdirectory("live").FullName;
    private IPlaywright _driver = null!;

    public IBrowser Browser { get; private set; } = null!;

    public LiveServer Server { get; private set; } = null!;

    /// <summary>The user's folder.</summary>
    public string Folder => Path.Combine(_home, "user");

    /// <summary>The folder that holds the lessons served: a copy, so that a test may look for traces.</summary>
    public string Lessons => Path.Combine(_home, "lessons");

    /// <summary>A notebook of its own for each test, so that none meets another's changes.</summary>
    internal const int Copies = 20;

    public async Task InitializeAsync()
    {
        Directory.CreateDirectory(Lessons);
        File.Copy(Path.Combine(Repository.Notebooks, "01-the-angle-and-its-axes.ipynb"), Path.Combine(Lessons, "01-the-angle-and-its-axes.ipynb"));
        var sample = Path.Combine(Repository.Top, "tests", "Samples", "live", "a-lesson-to-change.ipynb");
        for (var i = 2; i < Copies; i++)
        {
            File.Copy(sample, Path.Combine(Lessons, $"{i:00}-a-lesson-to-change.ipynb"));
        }
        Server = await LiveServer.StartAsync(Settings());
        // Kernels start slowly on a busy machine; what is there already costs no time.
        Assertions.SetDefaultExpectTimeout(LivePage.Patience);
        (_driver, Browser) = await Tests.Browser.StartAsync();
    }

    /// <summary>Settings for another program on the same lessons and the same user's folder.</summary>
    internal LiveSettings Settings() =>
        new() { Lessons = NotebookFile.Find(Lessons), UserFolder = Folder, MemoryLimitMiB = 512, IdleLimit = TimeSpan.FromSeconds(6) };

    public async Task DisposeAsync()
    {
        await Browser.CloseAsync();
        _driver.Dispose();
        await Server.DisposeAsync();
        Directory.Delete(_home, recursive: true);
    }

    /// <summary>Opens a lesson in a browser of its own that was let in with a key.</summary>
    internal Task<LivePage> OpenAsync(string lesson, LiveServer? server = null, int width = 1280, bool dark = false) =>
        LivePage.OpenAsync(this, server ?? Server, lesson, width, dark);

    /// <summary>Waits until some words are kept on disk.</summary>
    internal async Task KeptAsync(string words)
    {
        for (var i = 0; i < 100; i++)
        {
            if (Kept().Any(text => text.Contains(words, StringComparison.Ordinal)))
            {
                return;
            }
            await Task.Delay(100);
        }
        Assert.Fail($"'{words}' was not kept.");
    }

    private IEnumerable<string> Kept()
    {
        var edits = Path.Combine(Folder, "edits");
        foreach (var file in Directory.Exists(edits) ? Directory.GetFiles(edits, "*.json") : [])
        {
            string text;
            try
            {
                text = File.ReadAllText(file);
            }
            catch (IOException)
            {
                // Just being replaced.
                continue;
            }
            yield return text;
        }
    }

    /// <summary>A plain client without cookies that follows no redirection.</summary>
    internal HttpClient Client(LiveServer? server = null) =>
        new(new HttpClientHandler { AllowAutoRedirect = false, UseCookies = false }) { BaseAddress = (server ?? Server).Address };

    /// <summary>A session's cookie, got with a fresh key.</summary>
    internal async Task<string> CookieAsync()
    {
        using var client = Client();
        using var answer = await client.GetAsync(Server.NewVisit());
        Assert.Equal(HttpStatusCode.SeeOther, answer.StatusCode);
        return answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
    }
}

[CollectionDefinition("live")]
public sealed class LiveTests : ICollectionFixture<LiveFixture>;
