using System.Text.Json;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>Every lesson, run by programs that know nothing of this one but the registered kernel.</summary>
[Collection("jupyter")]
public sealed class LessonTests(JupyterFixture jupyter)
{
    [Fact]
    public async Task Nbclient_executes_every_lesson_from_top_to_bottom()
    {
        var run = await jupyter.ExecutedAsync();
        var lessons = run.Output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Select(line => JsonElement.Parse(line)).ToArray();

        Assert.True(run.Code == 0, run.Error);
        Assert.Equal(JupyterFixture.Lessons, lessons.Select(lesson => lesson.GetProperty("file").GetString()!));
        Assert.All(lessons, lesson =>
        {
            Assert.Null(lesson.GetProperty("error").GetString());
            Assert.Equal("strut-lessons", lesson.GetProperty("kernel").GetString());
            Assert.Contains("image/svg+xml", lesson.GetProperty("kinds").EnumerateArray().Select(kind => kind.GetString()));
            var counts = lesson.GetProperty("counts").EnumerateArray().Select(count => count.GetInt32()).ToArray();
            Assert.Equal(Enumerable.Range(1, counts.Length), counts);
        });
    }

    [Fact]
    public async Task Nbconvert_executes_every_lesson_into_a_page_with_pictures()
    {
        var run = await jupyter.ConvertedAsync();

        Assert.True(run.Code == 0, run.Error);
        Assert.All(JupyterFixture.Lessons, file =>
        {
            var page = File.ReadAllText(Path.Combine(jupyter.Pages, Path.GetFileNameWithoutExtension(file) + ".html"));
            Assert.Contains("<svg", page, StringComparison.Ordinal);
            Assert.DoesNotContain("127.0.0.1", page, StringComparison.Ordinal);
        });
    }
}
