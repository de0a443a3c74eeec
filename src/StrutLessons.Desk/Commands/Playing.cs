using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Kernel.Player;

namespace StrutLessons.Desk.Commands;

/// <summary>Plays lessons one after another and says how each went.</summary>
internal static class Playing
{
    /// <summary>Plays all; stops at none. The first failure is reported in full at the end.</summary>
    internal static async Task<IReadOnlyList<PlayedLesson>> PlayAsync(
        IReadOnlyList<string> files, bool showTimes, TimeSpan? cellLimit, CancellationToken cancel)
    {
        var notebooks = files.Select(NotebookFile.Read).ToArray();
        var played = new List<PlayedLesson>();
        using (var progress = new Progress(notebooks.Sum(notebook => notebook.Cells.Count(cell => cell.Kind == CellKind.Code))))
        {
            // While one lesson plays, the kernel process of the next comes up. Should this program end early, the process sees
            // its standard input close and ends as well.
            var next = StartKernel(0);
            for (var i = 0; i < notebooks.Length; i++)
            {
                var (notebook, fresh) = (notebooks[i], next);
                next = StartKernel(i + 1);
                progress.Draw(notebook.Title);
                var lesson = await LessonPlayer.PlayAsync(notebook, cellLimit, _ => progress.Step(notebook.Title), fresh, cancel).ConfigureAwait(false);
                played.Add(lesson);
                progress.Say($"{(lesson.Succeeded ? "ok    " : "FAILED")} {lesson.Elapsed.TotalSeconds,6:0.0} s  {notebook.Title}");
                if (showTimes)
                {
                    foreach (var cell in lesson.Cells.Where(cell => cell.Run is not null))
                    {
                        progress.Say($"       {cell.Run!.Elapsed.TotalMilliseconds,8:0} ms  cell {cell.Number,3}  {Ending(cell)}{FirstLine(cell.Cell)}");
                    }
                }
            }
        }
        if (played.FirstOrDefault(lesson => !lesson.Succeeded) is { } failed)
        {
            await Console.Error.WriteLineAsync("\n" + FailureReport.Text(failed)).ConfigureAwait(false);
        }
        return played;

        Task<KernelProcess>? StartKernel(int i) => i < notebooks.Length ? LessonPlayer.StartKernelAsync(notebooks[i], cancel) : null;
    }

    private static string Ending(PlayedCell cell) => cell switch
    {
        { IsAsIntended: false } => "FAILED  ",
        { Run.Ending: CellEnding.Failed } => "(fails on purpose)  ",
        _ => "",
    };

    private static string FirstLine(NotebookCell cell)
    {
        var line = cell.Lines.First(text => text.Trim().Length > 0).Trim();
        return line.Length <= 60 ? line : line[..59] + "…";
    }
}
