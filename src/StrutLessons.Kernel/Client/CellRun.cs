using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Client;

/// <summary>How the run of a cell ended.</summary>
public enum CellEnding
{
    /// <summary>To its last line.</summary>
    Succeeded,

    /// <summary>With an error; the kernel process goes on and keeps what earlier cells defined.</summary>
    Failed,

    /// <summary>After its time limit; the kernel process was ended.</summary>
    TimedOut,

    /// <summary>With the kernel process: it ended while the cell was running.</summary>
    Crashed,
}

/// <summary>What came of running a cell.</summary>
/// <param name="Ending">How it ended.</param>
/// <param name="Outputs">Its outputs in order; texts written one after another to the same stream are joined.</param>
/// <param name="Elapsed">Time it took, compilation included.</param>
public sealed record CellRun(CellEnding Ending, IReadOnlyList<CellOutput> Outputs, TimeSpan Elapsed)
{
    /// <summary>The first error among the outputs; null if there is none.</summary>
    public ErrorOutput? Error => Outputs.OfType<ErrorOutput>().FirstOrDefault();

    /// <summary>The value of the last expression; null if the cell has none.</summary>
    public ShownOutput? Result => Outputs.OfType<ShownOutput>().LastOrDefault(shown => shown.IsResult);

    /// <summary>Everything the cell wrote to a stream.</summary>
    /// <param name="name"><c>stdout</c> or <c>stderr</c>.</param>
    public string Text(string name) =>
        string.Concat(Outputs.OfType<StreamOutput>().Where(stream => stream.Name == name).Select(stream => stream.Text));
}
