namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>The verb <c>ready</c>.</summary>
[Collection("jupyter")]
public sealed class ReadyTests(JupyterFixture jupyter)
{
    [Fact]
    public async Task On_a_machine_with_everything_the_lessons_can_run()
    {
        var ready = await jupyter.DeskAsync("ready");

        Assert.Equal((0, ""), (ready.Code, ready.Error));
        Assert.Matches(@"ok +\.NET SDK: version \d+\.", ready.Output);
        Assert.Matches(@"ok +A port for the live pages: free", ready.Output);
        Assert.Matches(@"ok +The kernel: starts; its first result came after \d+\.\d s", ready.Output);
        Assert.Matches(@"ok +Jupyter: is here, and the lessons' kernel is registered", ready.Output);
        Assert.Contains("Ready.", ready.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task What_is_missing_is_named_with_what_to_do_and_only_what_the_lessons_need_counts()
    {
        // A search path without any program: no SDK, no browser, no Jupyter.
        var dotnet = (await jupyter.RunAsync("sh", "-c", "command -v dotnet")).Output.Trim();
        var ready = await jupyter.RunAsync("env", "PATH=/nowhere", dotnet, "exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll"), "ready");

        Assert.Equal(1, ready.Code);
        Assert.Matches(@"MISSING +\.NET SDK", ready.Output);
        Assert.Contains("Install the .NET SDK 10", ready.Output, StringComparison.Ordinal);
        Assert.Matches(@"note +A browser: none is found", ready.Output);
        Assert.Matches(@"note +Jupyter: is not found", ready.Output);
        Assert.Matches(@"ok +The kernel: starts", ready.Output);
        Assert.Contains("Not ready yet", ready.Output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_kernel_that_is_not_registered_is_a_note_with_the_verb_that_registers_it()
    {
        var ready = await jupyter.RunAsync("env", "JUPYTER_DATA_DIR=/nowhere", "dotnet", "exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll"), "ready");

        Assert.Equal(0, ready.Code);
        Assert.Matches(@"note +Jupyter: is here, but the lessons' kernel is not registered", ready.Output);
        Assert.Contains("-- jupyter", ready.Output, StringComparison.Ordinal);
    }
}
