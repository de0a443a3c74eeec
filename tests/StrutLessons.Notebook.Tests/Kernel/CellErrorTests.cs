using StrutLessons.Kernel.Client;

namespace StrutLessons.Notebook.Tests.Kernel;

public sealed class CellErrorTests(KernelFixture kernel) : IClassFixture<KernelFixture>
{
    [Fact]
    public async Task Code_that_is_not_understood_is_located_by_line_and_column()
    {
        var run = await kernel.Process.RunAsync("var a = 1;\nvar b = unknown;\nb");

        Assert.Equal(CellEnding.Failed, run.Ending);
        Assert.Equal(("CS0103", 2, 9, false), (run.Error!.Name, run.Error.Line, run.Error.Column, run.Error.Compiled));
        Assert.Contains("'unknown' does not exist", run.Error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Nothing_of_a_cell_that_is_not_understood_runs()
    {
        var run = await kernel.Process.RunAsync("Console.Write(\"ran\");\nint n = \"word\";");

        Assert.Equal("", run.Text("stdout"));
    }

    [Fact]
    public async Task An_exception_is_located_by_its_line_in_the_cell()
    {
        var run = await kernel.Process.RunAsync("var zero = 0;\n\nvar a = 1;\nvar b = a / zero;\nb");

        Assert.Equal(CellEnding.Failed, run.Ending);
        Assert.Equal(("DivideByZeroException", 4, true), (run.Error!.Name, run.Error.Line, run.Error.Compiled));
    }

    [Fact]
    public async Task An_exception_after_an_await_is_located_as_well()
    {
        var run = await kernel.Process.RunAsync("await Task.Delay(1);\nvar text = (string)null;\ntext.Trim()");

        Assert.Equal(("NullReferenceException", 3), (run.Error!.Name, run.Error.Line));
    }

    [Fact]
    public async Task A_failure_inside_a_method_of_an_earlier_cell_points_at_the_call()
    {
        await kernel.Process.RunAsync("\n\n\n\n\nint Share(int a, int b)\n{\n    return a / b;\n}");
        var run = await kernel.Process.RunAsync("var whole = 1;\nShare(whole, 0)");

        Assert.Equal(2, run.Error!.Line);
    }

    [Fact]
    public async Task A_refused_input_is_told_in_the_librarys_words()
    {
        var run = await kernel.Process.RunAsync("throw new InputException(\"gauge\", \"3 mm\", \"between 24 and 56 mm\", \"Move the bolts.\");");

        Assert.Equal("InputException", run.Error!.Name);
        Assert.Equal("gauge = 3 mm is not allowed: it must be between 24 and 56 mm. Move the bolts.", run.Error.Message);
    }

    [Fact]
    public async Task An_error_carries_no_frames_of_the_program_around_the_cell()
    {
        var run = await kernel.Process.RunAsync("throw new InvalidOperationException(\"mine\");");

        Assert.Equal("mine", run.Error!.Message);
        Assert.Single(run.Outputs);
    }

    [Fact]
    public async Task A_failed_cell_leaves_what_earlier_cells_defined()
    {
        await kernel.Process.RunAsync("var kept = 11;");
        await kernel.Process.RunAsync("throw new Exception(\"x\");");
        var run = await kernel.Process.RunAsync("kept");

        Assert.Equal("11", run.Result?.Content("text/plain"));
    }

    [Fact]
    public async Task A_cell_that_asks_for_the_keyboard_is_refused()
    {
        var run = await kernel.Process.RunAsync("Console.ReadLine()");

        Assert.Equal(CellEnding.Failed, run.Ending);
        Assert.Contains("keyboard", run.Error!.Message, StringComparison.Ordinal);
    }
}
