using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Commands;

/// <summary>Finds the lessons of the repository, wherever the program is called from.</summary>
internal static class LessonFolder
{
    /// <summary>The folder <c>notebooks</c> of the repository around the current folder or around the program itself.</summary>
    /// <exception cref="NotebookException">Neither lies in the repository.</exception>
    internal static string Find() =>
        Upwards(Directory.GetCurrentDirectory()) ?? Upwards(AppContext.BaseDirectory)
        ?? throw new NotebookException(
            "The folder notebooks of the lessons is not found from here. Call the program inside the repository, or name a notebook or folder.");

    private static string? Upwards(string start)
    {
        for (var folder = new DirectoryInfo(start); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "StrutLessons.sln")))
            {
                return Path.Combine(folder.FullName, "notebooks");
            }
        }
        return null;
    }
}
