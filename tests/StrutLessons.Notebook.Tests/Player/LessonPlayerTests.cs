using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;

namespace StrutLessons.Notebook.Tests.Player;

public sealed class LessonPlayerTests
{
    [Fact]
    public async Task A_lesson_stops_at_its_first_failing_cell_and_reports_it_in_words()
    {
        var lesson = await PlayAsync(Text("# Trial"), Code("var a = 1;"), Code("var zero = 0;\nvar b = a / zero;\nb"), Code("Console.Write(\"never\");"));

        Assert.Equal(3, lesson.Failure?.Number);
        Assert.Null(lesson.Cells[3].Run);
        Assert.Equal("""
            Lesson "Trial" (trial.ipynb), cell 3: it stopped with an error.

               1 | var zero = 0;
             > 2 | var b = a / zero;
               3 | b

            Line 2: Attempted to divide by zero. (DivideByZeroException)

            """.ReplaceLineEndings("\n"), FailureReport.Text(lesson).Replace(Folder(lesson), "", StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_report_on_code_that_is_not_understood_marks_the_place_in_the_line()
    {
        var lesson = await PlayAsync(Code("var a = 1;\nvar b = a + c;"));

        Assert.Contains(" > 2 | var b = a + c;\n     |             ^\n", FailureReport.Text(lesson), StringComparison.Ordinal);
        Assert.Contains("nothing of the cell ran", FailureReport.Text(lesson), StringComparison.Ordinal);
        Assert.Contains("(CS0103)", FailureReport.Text(lesson), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cell_tagged_raises_exception_must_fail()
    {
        var good = await PlayAsync(Code("throw new Exception(\"shown on purpose\");", NotebookCell.RaisesException), Code("1 + 1"));
        var bad = await PlayAsync(Code("1 + 1", NotebookCell.RaisesException));

        Assert.True(good.Succeeded);
        Assert.Equal("2", good.Cells[1].Run?.Result?.Content("text/plain"));
        Assert.Contains("ended without an error", FailureReport.Text(bad), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_cell_that_takes_too_long_is_named_even_if_it_may_fail()
    {
        var lesson = await LessonPlayer.PlayAsync(
            Notebook(Code("var a = 1;"), Code("while (true) { }", NotebookCell.RaisesException)), TimeSpan.FromSeconds(20));

        Assert.Equal(2, lesson.Failure?.Number);
        Assert.Equal(CellEnding.TimedOut, lesson.Failure?.Run?.Ending);
        Assert.Contains("cell 2: it took too long.", FailureReport.Text(lesson), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_lesson_that_succeeds_has_no_report()
    {
        var lesson = await PlayAsync(Code("1"));

        Assert.Equal("", FailureReport.Text(lesson));
    }

    [Fact]
    public async Task Cells_run_in_the_folder_of_their_notebook()
    {
        var lesson = await PlayAsync(Code("System.IO.Directory.GetCurrentDirectory()"));

        Assert.Equal(Path.GetDirectoryName(lesson.Notebook.Path), lesson.Cells[0].Run?.Result?.Content("text/plain"));
    }

    private static string Folder(PlayedLesson lesson) => Path.GetDirectoryName(lesson.Notebook.Path) + Path.DirectorySeparatorChar;

    private static Task<PlayedLesson> PlayAsync(params NotebookCell[] cells) => LessonPlayer.PlayAsync(Notebook(cells));

    private static NotebookFile Notebook(params NotebookCell[] cells) =>
        new(Path.Combine(Directory.CreateTempSubdirectory().FullName, "trial.ipynb"), cells, HasOutputs: false);

    private static NotebookCell Text(string source) => new("t", CellKind.Text, source, []);

    private static NotebookCell Code(string source, params string[] tags) => new("c", CellKind.Code, source, tags);
}
