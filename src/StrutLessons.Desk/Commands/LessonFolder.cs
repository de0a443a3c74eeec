using System.CommandLine;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Commands;

/// <summary>Finds the lessons of the repository, wherever the program is called from.</summary>
internal static class LessonFolder
{
    /// <summary>The argument of verbs that work on lessons.</summary>
    internal static Argument<string[]> PathArgument() => new("path")
    {
        Description = "Notebooks, or folders of notebooks; all lessons if none is named.",
        Arity = ArgumentArity.ZeroOrMore,
    };

    /// <summary>The notebooks named, or all lessons of the repository.</summary>
    /// <exception cref="NotebookException">A path leads nowhere, or none is given outside the repository.</exception>
    internal static IReadOnlyList<string> Files(string[]? paths) =>
        [.. (paths is { Length: > 0 } ? paths : [Find()]).SelectMany(NotebookFile.Find)];

    /// <summary>True if the notebook is one of the course, in whatever copy of the repository.</summary>
    internal static bool IsOfCourse(string notebook)
    {
        var path = Path.GetFullPath(notebook);
        return Upwards(Path.GetDirectoryName(path)!) is { } course && path.StartsWith(course + Path.DirectorySeparatorChar, StringComparison.Ordinal);
    }

    /// <summary>The folder <c>notebooks</c> of the repository around the current folder or around the program itself.</summary>
    private static string Find() =>
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
