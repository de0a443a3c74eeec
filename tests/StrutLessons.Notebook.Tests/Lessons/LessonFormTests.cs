using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;
using StrutLessons.Kernel.Wire;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Notebook.Tests.Lessons;

/// <summary>The form check itself: it accepts a good lesson and finds each fault that is put into one.</summary>
public sealed class LessonFormTests
{
    private static readonly NotebookFile Good = NotebookFile.Read(NotebookFile.Find(Repository.SampleCourse)[0]);

    [Fact]
    public void A_good_lesson_has_no_fault()
    {
        Assert.Empty(LessonForm.Faults(Good));
    }

    [Theory]
    [InlineData("**Predict.**", "**Guess.**", "'Guess' is not one of the words")]
    [InlineData("**Predict.**", "Predict.", "The box 'Predict' is missing")]
    [InlineData("**Change it.**", "**Why.**", "The box 'Change it' is missing")]
    [InlineData("**Limit case.**", "**Check yourself.**", "first appear in the order")]
    [InlineData("**Time:** 10 minutes", "soon done", "how long")]
    [InlineData("# A bar that leans", "A bar that leans", "does not begin with the title")]
    [InlineData("## Summary", "# Summary", "second first-level heading")]
    [InlineData("## Summary", "## The end", "no '## Summary'")]
    [InlineData("After this lesson you can", "Contents", "0 points")]
    [InlineData("- read the output of a cell.", "- read,\n- write,\n- count.", "4 points")]
    [InlineData("local codes and licensed practice decide", "take care", "does not mention 'local codes'")]
    [InlineData("var length = bar.Length;", "\n\n\n\nvar length = bar.Length;", "9 lines")]
    [InlineData("var length = bar.Length;", "var length = bar.Length; // the length of a vector is the root of the sum of the squares of its components", "more than 90 characters")]
    public void A_fault_in_the_text_is_found(string good, string bad, string complaint)
    {
        Assert.Contains(Good.Cells, cell => cell.Source.Contains(good, StringComparison.Ordinal));
        var lesson = Good with { Cells = [.. Good.Cells.Select(cell => cell with { Source = cell.Source.Replace(good, bad, StringComparison.Ordinal) })] };

        Assert.Contains(LessonForm.Faults(lesson), fault => fault.Contains(complaint, StringComparison.Ordinal));
    }

    [Fact]
    public void Outputs_repeated_ids_and_odd_file_names_are_found()
    {
        var lesson = Good with
        {
            Path = "notebooks/First Lesson.ipynb",
            HasOutputs = true,
            Cells = [.. Good.Cells.Select((cell, i) => cell with { Id = i == 1 ? "" : "same" })],
        };

        var faults = LessonForm.Faults(lesson);
        Assert.Contains(faults, fault => fault.Contains("First Lesson", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("saved with outputs", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("id ''", StringComparison.Ordinal));
        Assert.Contains(faults, fault => fault.Contains("'same' is used", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("length (mm)", "N (kN)", null)]
    [InlineData("length, mm", "slenderness, -", null)]
    [InlineData("slenderness λ̄ (-)", "c, kNm/rad", null)]
    [InlineData("area (mm²)", "I_v (mm<sup>4</sup>)", null)]
    [InlineData("length", "N (kN)", "no unit in the title 'length' of xaxis")]
    [InlineData("length (mm)", "", "no title on yaxis")]
    public void A_chart_needs_a_title_and_a_unit_on_each_axis(string x, string y, string? complaint)
    {
        var faults = LessonFigures.Faults(Played(
            new("application/vnd.plotly.v1+json", $$"""{"data":[{"x":[1],"y":[2]}],"layout":{"xaxis":{"title":{"text":"{{x}}"} },"yaxis":{"title":{"text":"{{y}}"} } } }"""),
            new("image/svg+xml", "<svg aria-label='curve'/>")));

        Assert.Equal(complaint is null, faults.Count == 0);
        Assert.Contains(complaint ?? "", string.Join("\n", faults), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("<svg aria-label='a bar'><text>length 300 mm</text></svg>", null)]
    [InlineData("<svg><text>length 300 mm</text></svg>", "cannot see it")]
    [InlineData("<svg aria-label='a bar'><text>long</text></svg>", "no figure with axis titles and units")]
    public void A_drawing_needs_words_and_a_unit(string svg, string? complaint)
    {
        var faults = LessonFigures.Faults(Played(new ShownPart("image/svg+xml", svg)));

        Assert.Equal(complaint is null, faults.Count == 0);
        Assert.Contains(complaint ?? "", string.Join("\n", faults), StringComparison.Ordinal);
    }

    private static PlayedLesson Played(params ShownPart[] parts) => new(
        Good,
        [new PlayedCell(1, Good.Cells[0], new CellRun(CellEnding.Succeeded, [new ShownOutput(parts, IsResult: true)], TimeSpan.Zero))],
        TimeSpan.Zero);
}
