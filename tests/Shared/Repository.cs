namespace StrutLessons.Tests.Shared;

/// <summary>Where the files of the repository lie, seen from a running test.</summary>
internal static class Repository
{
    /// <summary>The folder that holds the solution.</summary>
    internal static string Top { get; } = Find();

    /// <summary>The lessons that are shipped.</summary>
    internal static string Notebooks => Path.Combine(Top, "notebooks");

    /// <summary>A small course for tests: three lessons of the shipped form.</summary>
    internal static string SampleCourse => Path.Combine(Top, "tests", "Samples", "course");

    private static string Find()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "StrutLessons.sln")))
            {
                return folder.FullName;
            }
        }
        throw new DirectoryNotFoundException("The tests do not run inside the repository.");
    }
}
