using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Notebook.Tests.Lessons;

/// <summary>Every notebook under notebooks/ and the sample course: plays to its end from a cold start, and has the form of a lesson.</summary>
public sealed class EveryLesson
{
    /// <summary>The notebooks, as paths from the top of the repository.</summary>
    public static TheoryData<string> Notebooks { get; } =
    [
        .. new[] { Repository.Notebooks, Repository.SampleCourse }.SelectMany(NotebookFile.Find)
            .Select(file => Path.GetRelativePath(Repository.Top, file).Replace('\\', '/')),
    ];

    [Theory]
    [MemberData(nameof(Notebooks))]
    public async Task Plays_from_a_cold_start_to_its_end_and_shows_a_figure(string file)
    {
        var lesson = await LessonPlayer.PlayAsync(NotebookFile.Read(Path.Combine(Repository.Top, file)));

        Assert.True(lesson.Succeeded, FailureReport.Text(lesson));
        AssertNone(LessonFigures.Faults(lesson));
    }

    [Theory]
    [MemberData(nameof(Notebooks))]
    public void Has_the_form_of_a_lesson(string file) =>
        AssertNone(LessonForm.Faults(NotebookFile.Read(Path.Combine(Repository.Top, file))));

    private static void AssertNone(IReadOnlyList<string> faults) => Assert.True(faults.Count == 0, string.Join("\n", faults));
}
