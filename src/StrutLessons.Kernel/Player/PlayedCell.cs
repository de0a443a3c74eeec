using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Kernel.Player;

/// <summary>A cell of a lesson and what came of it.</summary>
/// <param name="Number">Its place in the notebook, counted from 1 over all cells.</param>
/// <param name="Cell">The cell.</param>
/// <param name="Run">How it ran; null for text and for code that was not reached.</param>
public sealed record PlayedCell(int Number, NotebookCell Cell, CellRun? Run)
{
    /// <summary>True if the cell did what it should: ended well, or with an error where the lesson wants one.</summary>
    public bool IsAsIntended => Run is null || Run.Ending == (Cell.MustFail ? CellEnding.Failed : CellEnding.Succeeded);
}
