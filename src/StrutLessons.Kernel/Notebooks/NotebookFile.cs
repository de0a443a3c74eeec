namespace StrutLessons.Kernel.Notebooks;

/// <summary>A notebook: the cells of a lesson in order, without outputs.</summary>
/// <param name="Path">The file it was read from.</param>
/// <param name="Cells">The cells in order.</param>
/// <param name="HasOutputs">True if the file holds outputs or execution counts; shipped lessons do not.</param>
public sealed record NotebookFile(string Path, IReadOnlyList<NotebookCell> Cells, bool HasOutputs)
{
    /// <summary>The file's name without folder and ending: the lesson's address within the course.</summary>
    public string Name => System.IO.Path.GetFileNameWithoutExtension(Path);

    /// <summary>The first first-level heading; the file's name if there is none.</summary>
    public string Title =>
        Cells.Where(cell => cell.Kind == CellKind.Text)
            .SelectMany(cell => cell.Lines)
            .FirstOrDefault(line => line.StartsWith("# ", StringComparison.Ordinal))?[2..].Trim() ?? Name;

    /// <summary>Reads a notebook file.</summary>
    /// <exception cref="NotebookException">The file is missing or is not a notebook of nbformat 4.</exception>
    public static NotebookFile Read(string path) => NotebookJson.Read(path);

    /// <summary>Writes the notebook, without outputs, to a file.</summary>
    public void Write(string path) => File.WriteAllText(path, ToJson());

    /// <summary>The notebook, without outputs, as the text of a file.</summary>
    public string ToJson() => NotebookJson.Write(this);

    /// <summary>Notebook files under a folder, or the one file given, in the order of the course.</summary>
    /// <exception cref="NotebookException">Nothing is there.</exception>
    public static IReadOnlyList<string> Find(string path)
    {
        if (File.Exists(path))
        {
            return [path];
        }
        if (!Directory.Exists(path))
        {
            throw new NotebookException($"There is no notebook or folder {path}.");
        }
        var separator = System.IO.Path.DirectorySeparatorChar;
        return
        [
            .. Directory.EnumerateFiles(path, "*.ipynb", SearchOption.AllDirectories)
                .Where(file => !file.Contains(separator + ".ipynb_checkpoints" + separator, StringComparison.Ordinal))
                // Lessons of a folder come before those of its subfolders.
                .OrderBy(file => file.Count(c => c == separator))
                .ThenBy(file => file, StringComparer.Ordinal),
        ];
    }
}
