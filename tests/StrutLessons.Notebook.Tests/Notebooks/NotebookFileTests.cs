using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Notebook.Tests.Notebooks;

public sealed class NotebookFileTests
{
    private const string Old = """
        { "nbformat": 4, "nbformat_minor": 2, "metadata": { "authors": [] }, "cells": [
          { "cell_type": "markdown", "metadata": {}, "source": "# A title\nwith text" },
          { "cell_type": "code", "id": "kept-id", "metadata": { "tags": ["raises-exception", "other"] }, "execution_count": 3,
            "outputs": [ { "output_type": "stream", "name": "stdout", "text": ["x"] } ], "source": ["var a = 1;\n", "\n", "a < 2 && true // ü"] },
          { "cell_type": "raw", "id": "r", "metadata": {}, "source": [] } ] }
        """;

    [Fact]
    public void Cells_are_read_with_ids_tags_and_text()
    {
        var notebook = Read(Old);

        Assert.Equal([CellKind.Text, CellKind.Code, CellKind.Raw], notebook.Cells.Select(cell => cell.Kind));
        Assert.Equal("# A title\nwith text", notebook.Cells[0].Source);
        Assert.Equal("kept-id", notebook.Cells[1].Id);
        Assert.Equal(["var a = 1;", "", "a < 2 && true // ü"], notebook.Cells[1].Lines);
        Assert.True(notebook.Cells[1].MustFail);
        Assert.Equal("A title", notebook.Title);
    }

    [Fact]
    public void A_notebook_that_was_run_elsewhere_is_known_by_its_outputs()
    {
        Assert.True(Read(Old).HasOutputs);
    }

    [Fact]
    public void Writing_keeps_cells_and_drops_outputs()
    {
        var before = Read(Old);
        var path = Temporary();
        before.Write(path);
        var after = NotebookFile.Read(path);

        Assert.False(after.HasOutputs);
        Assert.Equal(before.Cells.Select(cell => (cell.Id, cell.Kind, cell.Source)), after.Cells.Select(cell => (cell.Id, cell.Kind, cell.Source)));
        Assert.Equal(before.Cells[1].Tags, after.Cells[1].Tags);
        Assert.DoesNotContain("stdout", File.ReadAllText(path), StringComparison.Ordinal);
    }

    [Fact]
    public void Writing_a_lesson_that_was_only_read_changes_no_byte()
    {
        Assert.All(NotebookFile.Find(Repository.SampleCourse), file =>
        {
            var path = Temporary();
            NotebookFile.Read(file).Write(path);
            Assert.Equal(File.ReadAllText(file), File.ReadAllText(path));
        });
    }

    [Theory]
    [InlineData("not json at all")]
    [InlineData("{}")]
    [InlineData("""{ "nbformat": 3, "cells": [] }""")]
    [InlineData("""{ "nbformat": 4, "cells": [ { "cell_type": "poem", "source": "" } ] }""")]
    public void A_file_that_is_no_notebook_is_named(string content)
    {
        var path = Temporary();
        File.WriteAllText(path, content);

        Assert.Contains(path, Assert.Throws<NotebookException>(() => NotebookFile.Read(path)).Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Notebooks_are_found_in_the_order_of_the_course_and_saved_copies_are_left_out()
    {
        var folder = Directory.CreateTempSubdirectory().FullName;
        Directory.CreateDirectory(Path.Combine(folder, "instructors"));
        Directory.CreateDirectory(Path.Combine(folder, ".ipynb_checkpoints"));
        foreach (var file in new[] { "02-b.ipynb", "instructors/01-c.ipynb", "01-a.ipynb", ".ipynb_checkpoints/01-a.ipynb", "notes.txt" })
        {
            File.WriteAllText(Path.Combine(folder, file), "");
        }

        Assert.Equal(
            ["01-a.ipynb", "02-b.ipynb", "instructors/01-c.ipynb"],
            NotebookFile.Find(folder).Select(file => Path.GetRelativePath(folder, file).Replace('\\', '/')));
        Assert.Throws<NotebookException>(() => NotebookFile.Find(Path.Combine(folder, "nowhere")));
    }

    private static NotebookFile Read(string json)
    {
        var path = Temporary();
        File.WriteAllText(path, json);
        return NotebookFile.Read(path);
    }

    private static string Temporary() => Path.Combine(Directory.CreateTempSubdirectory().FullName, "trial.ipynb");
}
