using System.Collections.Concurrent;
using Microsoft.Playwright;
using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>The shipped lessons and the sample course as pages, and a browser to open them; made once for all tests.</summary>
public sealed class SiteFixture : IAsyncLifetime
{
    private readonly ConcurrentDictionary<(string, int, bool), Task<SeenPage>> _seen = new();
    private IPlaywright _driver = null!;

    public IBrowser Browser { get; private set; } = null!;

    /// <summary>The shipped lessons' pages.</summary>
    public string Course { get; } = Directory.CreateTempSubdirectory("course").FullName;

    /// <summary>The sample course's pages.</summary>
    public string Samples { get; } = Directory.CreateTempSubdirectory("samples").FullName;

    /// <summary>What a page of the shipped lessons shows in a window of this width; looked at once, however many tests ask.</summary>
    internal Task<SeenPage> SeeAsync(string file, int width, bool dark) =>
        _seen.GetOrAdd((file, width, dark), _ => SeenPage.OfAsync(Browser, Path.Combine(Course, file), width, dark));

    public async Task InitializeAsync()
    {
        var files = new[] { Repository.Notebooks, Repository.SampleCourse }.Select(NotebookFile.Find).ToArray();
        var played = new ConcurrentDictionary<string, PlayedLesson>();
        await Parallel.ForEachAsync(files.SelectMany(list => list), new ParallelOptions { MaxDegreeOfParallelism = Environment.ProcessorCount }, async (file, cancel) =>
            played[file] = await LessonPlayer.PlayAsync(NotebookFile.Read(file), cancel: cancel));
        SiteWriter.Write([.. files[0].Select(file => played[file])], Course);
        SiteWriter.Write([.. files[1].Select(file => played[file])], Samples);
        (_driver, Browser) = await Tests.Browser.StartAsync();
    }

    public async Task DisposeAsync()
    {
        await Browser.CloseAsync();
        _driver.Dispose();
        Directory.Delete(Course, recursive: true);
        Directory.Delete(Samples, recursive: true);
    }
}

[CollectionDefinition("site")]
public sealed class SiteTests : ICollectionFixture<SiteFixture>;
