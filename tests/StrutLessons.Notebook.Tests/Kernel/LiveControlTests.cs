using System.Text.Json;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Notebook.Tests.Kernel;

/// <summary>Controls that are moved while the kernel listens.</summary>
public sealed class LiveControlTests : IAsyncLifetime
{
    private const string Cell = """
        double factor = 2;
        Live.Of(Slider.Typed("Length", 1, 3, step: 0.5, start: 2, "m"), Choice.OfWords("Bow", "heel", "toes"),
            (length, bow) => length < 3 ? [$"{factor * length} {bow}", Chart.Of("A line", "x (m)", "y (m)").Line("y", [0, length], [0, 1])]
                : throw new InputException("length", "3 m", "below 3 m", "Take less."))
        """;

    private static readonly JsonSerializerOptions Json = new(JsonSerializerDefaults.Web);

    private KernelProcess _kernel = null!;

    public async Task InitializeAsync() => _kernel = await KernelProcess.StartAsync(new KernelSettings { LiveControls = true });

    public async Task DisposeAsync() => await _kernel.DisposeAsync();

    [Fact]
    public async Task A_live_view_tells_its_controls_and_what_it_shows_at_first()
    {
        var form = Form(await _kernel.RunAsync(Cell));

        Assert.Equal(["Number", "Choice"], form.Controls.Select(control => control.Kind));
        Assert.Equal(("Length", "m", 1.0, 3.0, 0.5, 2.0), (form.Controls[0].Label, form.Controls[0].Unit, form.Controls[0].From, form.Controls[0].To, form.Controls[0].Step, form.Controls[0].Start));
        Assert.Equal(["heel", "toes"], form.Controls[1].Options);
        Assert.Equal(2, form.Shown.Count);
        Assert.Equal("4 heel", form.Shown[0].Single(part => part.MimeType == "text/plain").Content);
    }

    [Fact]
    public async Task Moving_a_control_runs_the_calculation_with_what_cells_have_defined_since()
    {
        var form = Form(await _kernel.RunAsync(Cell));
        await _kernel.RunAsync("factor = 10;");

        var moved = await _kernel.MoveAsync(form.Live, [1.5, 1]);

        Assert.Equal(CellEnding.Succeeded, moved.Ending);
        var shown = moved.Outputs.Cast<ShownOutput>().ToArray();
        Assert.Equal("15 toes", shown[0].Content("text/plain"));
        Assert.Contains("application/vnd.plotly.v1+json", shown[1].Parts.Select(part => part.MimeType));
    }

    [Fact]
    public async Task A_refused_place_is_an_error_in_words_and_the_view_goes_on()
    {
        var form = Form(await _kernel.RunAsync(Cell));

        var refused = await _kernel.MoveAsync(form.Live, [3, 0]);
        var unknown = await _kernel.MoveAsync("live-99", [3, 0]);
        var again = await _kernel.MoveAsync(form.Live, [1, 0]);

        Assert.Equal(CellEnding.Failed, refused.Ending);
        Assert.Contains("must be below 3 m", refused.Error!.Message, StringComparison.Ordinal);
        Assert.Contains("Run its cell again", unknown.Error!.Message, StringComparison.Ordinal);
        Assert.Equal(CellEnding.Succeeded, again.Ending);
    }

    [Fact]
    public async Task A_calculation_without_end_is_interrupted_and_the_view_goes_on()
    {
        var form = Form(await _kernel.RunAsync("""
            Live.Of(Slider.Of("Length", 1, 3, step: 1, start: 1, "m"), length => { while (length > 2) { } return "done"; })
            """));

        var endless = _kernel.MoveAsync(form.Live, [3]);
        await Task.Delay(300);
        await _kernel.InterruptAsync();
        var stopped = await endless.WaitAsync(TimeSpan.FromSeconds(20));

        Assert.Equal("Interrupt", stopped.Error!.Name);
        Assert.Equal(CellEnding.Succeeded, (await _kernel.MoveAsync(form.Live, [2])).Ending);
    }

    private static LiveForm Form(CellRun run)
    {
        Assert.Equal(CellEnding.Succeeded, run.Ending);
        return JsonSerializer.Deserialize<LiveForm>(run.Result!.Content(LiveForm.MimeType)!, Json)!;
    }
}
