using System.Diagnostics;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Commands;

/// <summary>The program as it is called from a shell.</summary>
public sealed class CommandLineTests
{
    [Theory]
    [InlineData("--help")]
    [InlineData("run --help")]
    [InlineData("site --help")]
    [InlineData("open --help")]
    [InlineData("measure --help")]
    [InlineData("jupyter --help")]
    [InlineData("ready --help")]
    public async Task Every_verb_answers_help_with_an_example(string arguments)
    {
        var (code, output, _) = await CallAsync(arguments.Split(' '));

        Assert.Equal(0, code);
        Assert.Contains("Example", output, StringComparison.Ordinal);
        Assert.Contains("dotnet run --project src/StrutLessons.Desk", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rnu", "run")]
    [InlineData("sites", "site")]
    [InlineData("opne", "open")]
    [InlineData("jupiter", "jupyter")]
    [InlineData("redy", "ready")]
    public async Task An_unknown_word_gets_the_nearest_verb(string word, string verb)
    {
        var (code, output, error) = await CallAsync(word);

        Assert.Equal(1, code);
        Assert.Contains($"'{word}'", error, StringComparison.Ordinal);
        Assert.Matches($"Did you mean[^\n]*\n{verb}\n", output.ReplaceLineEndings("\n"));
    }

    [Fact]
    public async Task Running_lessons_in_a_pipe_says_one_line_each_and_draws_no_bar()
    {
        var (code, output, error) = await CallAsync("run", Repository.SampleCourse);

        Assert.Equal(0, code);
        Assert.Equal("", error);
        Assert.Equal(4, output.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.DoesNotContain('\r', output.ReplaceLineEndings("\n"));
        Assert.Contains("3 of 3 notebooks ran to the end.", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Times_are_told_per_cell()
    {
        var (_, output, _) = await CallAsync("run", Path.Combine(Repository.SampleCourse, "01-a-bar-that-leans.ipynb"), "--times");

        Assert.Equal(5, output.Split('\n').Count(line => line.Contains(" ms  cell", StringComparison.Ordinal)));
        Assert.Contains("(fails on purpose)", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_failing_lesson_is_reported_and_gives_exit_code_1()
    {
        var path = Path.Combine(Directory.CreateTempSubdirectory().FullName, "trial.ipynb");
        await File.WriteAllTextAsync(path, """
            { "nbformat": 4, "nbformat_minor": 5, "metadata": {}, "cells": [
              { "cell_type": "code", "id": "a", "metadata": {}, "execution_count": null, "outputs": [], "source": ["var a = 1;\n", "var b = c;"] } ] }
            """);
        var (code, output, error) = await CallAsync("run", path);

        Assert.Equal(1, code);
        Assert.Contains("FAILED", output, StringComparison.Ordinal);
        Assert.Contains(" > 2 | var b = c;", error, StringComparison.Ordinal);
        Assert.Contains("CS0103", error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("nowhere.ipynb")]
    [InlineData("nowhere")]
    public async Task A_path_that_leads_nowhere_is_named(string path)
    {
        var (code, _, error) = await CallAsync("run", path);

        Assert.Equal(1, code);
        Assert.Contains(path, error, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_time_limit_that_is_none_is_refused()
    {
        var (code, _, error) = await CallAsync("run", Repository.SampleCourse, "--limit", "0");

        Assert.Equal(1, code);
        Assert.Contains("greater than 0", error, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_site_is_written_where_asked_and_the_index_page_is_named()
    {
        var folder = Path.Combine(Directory.CreateTempSubdirectory().FullName, "pages");
        var (code, output, _) = await CallAsync("site", Path.Combine(Repository.SampleCourse, "03-a-picture-without-words.ipynb"), "--out", folder);

        Assert.Equal(0, code);
        Assert.Contains(Path.Combine(folder, "index.html"), output, StringComparison.Ordinal);
        Assert.True(File.Exists(Path.Combine(folder, "03-a-picture-without-words.html")));
        Assert.False(Directory.Exists(Path.Combine(folder, "assets", "third-party", "plotly")));
    }

    [Fact]
    public async Task A_run_that_is_ended_from_outside_says_by_what()
    {
        if (OperatingSystem.IsWindows())
        {
            // Programs send no such signal to each other there.
            return;
        }

        using var process = Process.Start(Call("run", Repository.SampleCourse))!;
        // One lesson is done, the next plays.
        Assert.NotNull(await process.StandardOutput.ReadLineAsync());
        using (var end = Process.Start("kill", $"-TERM {process.Id}"))
        {
            await end.WaitForExitAsync();
        }

        var error = await process.StandardError.ReadToEndAsync();
        await process.WaitForExitAsync();
        Assert.Equal(1, process.ExitCode);
        Assert.Equal("Stopped by another program or a time limit outside (signal TERM).", error.TrimEnd());
    }

    /// <summary>Calls the program from a folder outside the repository.</summary>
    private static async Task<(int Code, string Output, string Error)> CallAsync(params string[] arguments)
    {
        using var process = Process.Start(Call(arguments))!;
        var error = process.StandardError.ReadToEndAsync();
        var output = await process.StandardOutput.ReadToEndAsync();
        await process.WaitForExitAsync();
        return (process.ExitCode, output, await error);
    }

    private static ProcessStartInfo Call(params string[] arguments)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            WorkingDirectory = Path.GetTempPath(),
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        foreach (var argument in arguments.Prepend(Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll")).Prepend("exec"))
        {
            start.ArgumentList.Add(argument);
        }
        return start;
    }
}
