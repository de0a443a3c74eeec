using System.Text;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Kernel.Player;

/// <summary>Says in words which cell of a lesson failed, where and why.</summary>
public static class FailureReport
{
    /// <summary>The report of the first cell that failed; an empty text if none did.</summary>
    public static string Text(PlayedLesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        if (lesson.Failure is not { Run: { } run } failure)
        {
            return "";
        }
        var text = new StringBuilder()
            .Append($"Lesson \"{lesson.Notebook.Title}\" ({lesson.Notebook.Path}), cell {failure.Number}: ")
            .Append(Headline(failure, run)).Append("\n\n");
        var error = run.Ending == CellEnding.Succeeded ? null : run.Error;
        text.Append(SourceExcerpt.Text(failure.Cell.Lines, error?.Line, error?.Column));
        text.Append('\n');
        foreach (var found in run.Outputs.OfType<Wire.ErrorOutput>())
        {
            text.Append(found.Line is { } line ? $"Line {line}: " : "").Append(found.Message).Append($" ({found.Name})\n");
        }
        return text.ToString();
    }

    private static string Headline(PlayedCell failure, CellRun run) => run.Ending switch
    {
        CellEnding.Succeeded => "it is marked raises-exception, but ended without an error.",
        CellEnding.TimedOut => "it took too long.",
        CellEnding.Crashed => "the kernel process ended.",
        _ when run.Error is { Compiled: false } => "the code was not understood, and nothing of the cell ran.",
        _ => failure.Cell.MustFail ? "it failed in another way than it should." : "it stopped with an error.",
    };
}
