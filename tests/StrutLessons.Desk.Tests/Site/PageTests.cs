using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>Every page of the site, as a reader meets it.</summary>
[Collection("site")]
public sealed class PageTests(SiteFixture site)
{
    public static TheoryData<string, int, bool> Views { get; } = MakeViews();

    [Theory]
    [MemberData(nameof(Views))]
    public async Task A_page_opens_without_complaint_and_without_asking_another_host(string file, int width, bool dark)
    {
        var seen = await site.SeeAsync(file, width, dark);

        Assert.Empty(seen.Complaints);
        Assert.All(seen.Requests, request => Assert.Matches("^(file|data|blob):", request));
        Assert.Equal(0, seen.Count("badFormulas"));
        Assert.Equal(3 * seen.Count("charts"), seen.Count("chartLayers"));
    }

    [Theory]
    [MemberData(nameof(Views))]
    public async Task A_page_fits_its_window_and_has_its_landmarks(string file, int width, bool dark)
    {
        var seen = await site.SeeAsync(file, width, dark);

        Assert.True(seen.Count("overflow") <= 0, $"The page is {seen.Count("overflow")} px wider than its window of {width} px.");
        Assert.Equal((1, 1, 1), (seen.Count("titles"), seen.Count("mains"), seen.Count("headers")));
        Assert.Contains("not a design check", seen.Words("caution"), StringComparison.Ordinal);
        Assert.Equal("#main", seen.Words("skip"));
        Assert.Equal(0, seen.Facts["twice"].GetArrayLength());
        Assert.Equal(0, seen.Count("mute"));
        Assert.Equal(0, seen.Count("skipped"));
    }

    private static TheoryData<string, int, bool> MakeViews()
    {
        var views = new TheoryData<string, int, bool>();
        var files = NotebookFile.Find(Repository.Notebooks).Select(file => Path.GetFileNameWithoutExtension(file) + ".html").Prepend("index.html");
        foreach (var file in files)
        {
            views.Add(file, 1280, false);
            views.Add(file, 1280, true);
            views.Add(file, 820, false);
            views.Add(file, 820, true);
        }
        return views;
    }
}
