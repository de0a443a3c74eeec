using System.Diagnostics;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Kernel.Player;

/// <summary>Plays a lesson without a screen: every code cell in order, in a kernel process of its own.</summary>
public static class LessonPlayer
{
    /// <summary>The time a cell may take unless another limit is given.</summary>
    public static TimeSpan UsualTimeLimit { get; } = TimeSpan.FromMinutes(2);

    /// <summary>Plays a lesson to its end or to the first cell that does not do what it should.</summary>
    /// <param name="notebook">The lesson.</param>
    /// <param name="cellTimeLimit">Time one cell may take; <see cref="UsualTimeLimit"/> if null.</param>
    /// <param name="onCell">Called after each code cell.</param>
    /// <param name="cancel">Ends the kernel process and gives up.</param>
    public static async Task<PlayedLesson> PlayAsync(
        NotebookFile notebook, TimeSpan? cellTimeLimit = null, Action<PlayedCell>? onCell = null, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        var clock = Stopwatch.StartNew();
        var settings = new KernelSettings { WorkingFolder = Path.GetDirectoryName(Path.GetFullPath(notebook.Path)) };
        var kernel = await KernelProcess.StartAsync(settings, cancel).ConfigureAwait(false);
        await using var _ = kernel.ConfigureAwait(false);

        var played = new List<PlayedCell>();
        var goesOn = true;
        foreach (var cell in notebook.Cells)
        {
            var run = goesOn && cell.Kind == CellKind.Code && !string.IsNullOrWhiteSpace(cell.Source)
                ? await kernel.RunAsync(cell.Source, timeLimit: cellTimeLimit ?? UsualTimeLimit, cancel: cancel).ConfigureAwait(false)
                : null;
            var result = new PlayedCell(played.Count + 1, cell, run);
            played.Add(result);
            goesOn &= result.IsAsIntended;
            if (run is not null)
            {
                onCell?.Invoke(result);
            }
        }
        return new PlayedLesson(notebook, played, clock.Elapsed);
    }
}
