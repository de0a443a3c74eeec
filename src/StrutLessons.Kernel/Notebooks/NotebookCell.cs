namespace StrutLessons.Kernel.Notebooks;

/// <summary>What a cell holds.</summary>
public enum CellKind
{
    /// <summary>Markdown text.</summary>
    Text,

    /// <summary>C# source.</summary>
    Code,

    /// <summary>Text that is passed through untouched.</summary>
    Raw,
}

/// <summary>A cell of a notebook, without outputs.</summary>
/// <param name="Id">The cell's id: 1 to 64 letters, digits, hyphens and underscores (nbformat 4.5).</param>
/// <param name="Kind">What it holds.</param>
/// <param name="Source">Its text, lines separated by <c>\n</c>.</param>
/// <param name="Tags">The tags from its metadata.</param>
public sealed record NotebookCell(string Id, CellKind Kind, string Source, IReadOnlyList<string> Tags)
{
    /// <summary>The tag of a cell that shows a failure on purpose (nbformat practice): it must end with an error.</summary>
    public const string RaisesException = "raises-exception";

    /// <summary>True if the cell must end with an error.</summary>
    public bool MustFail => Tags.Contains(RaisesException);

    /// <summary>The source as lines.</summary>
    public IReadOnlyList<string> Lines => Source.Split('\n');
}
