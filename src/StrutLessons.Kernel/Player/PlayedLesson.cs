using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Kernel.Player;

/// <summary>A lesson after it was played from its first cell to its last, or to the first that failed.</summary>
/// <param name="Notebook">The lesson.</param>
/// <param name="Cells">All its cells in order.</param>
/// <param name="Elapsed">Time from starting the kernel process to the end.</param>
public sealed record PlayedLesson(NotebookFile Notebook, IReadOnlyList<PlayedCell> Cells, TimeSpan Elapsed)
{
    /// <summary>The first cell that did not do what it should; null if all did.</summary>
    public PlayedCell? Failure => Cells.FirstOrDefault(cell => !cell.IsAsIntended);

    /// <summary>True if every cell did what it should.</summary>
    public bool Succeeded => Failure is null;
}
