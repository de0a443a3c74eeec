using System.Diagnostics;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Kernel.Player;

/// <summary>Plays a lesson without a screen: every code cell in order, in a kernel process of its own.</summary>
public static class LessonPlayer
{
    /// <summary>The time a cell may take unless another limit is given.</summary>
    public static TimeSpan UsualTimeLimit { get; } = TimeSpan.FromMinutes(2);

    /// <summary>Starts the kernel process for a lesson, in the lesson's folder.</summary>
    /// <exception cref="KernelException">The process did not come up.</exception>
    public static Task<KernelProcess> StartKernelAsync(NotebookFile notebook, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        return KernelProcess.StartAsync(new KernelSettings { WorkingFolder = Path.GetDirectoryName(Path.GetFullPath(notebook.Path)) }, cancel);
    }

    /// <summary>Plays a lesson to its end or to the first cell that does not do what it should.</summary>
    /// <param name="notebook">The lesson.</param>
    /// <param name="cellTimeLimit">Time one cell may take; <see cref="UsualTimeLimit"/> if null.</param>
    /// <param name="onCell">Called after each code cell.</param>
    /// <param name="fresh">A kernel process that nothing has run in yet, started ahead; its end is part of playing. One is started if null.</param>
    /// <param name="cancel">Ends the kernel process and gives up.</param>
    public static async Task<PlayedLesson> PlayAsync(
        NotebookFile notebook, TimeSpan? cellTimeLimit = null, Action<PlayedCell>? onCell = null, Task<KernelProcess>? fresh = null,
        CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(notebook);
        var clock = Stopwatch.StartNew();
        var kernel = await (fresh ?? StartKernelAsync(notebook, cancel)).ConfigureAwait(false);
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
