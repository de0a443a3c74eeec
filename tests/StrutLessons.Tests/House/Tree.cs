namespace StrutLessons.Tests.House;

/// <summary>The source tree that these tests were built from.</summary>
internal static class Tree
{
    internal static string Root { get; } = FindRoot();

    internal static string Source => Path.Combine(Root, "src");

    internal static IEnumerable<string> Files(string folder, string pattern) =>
        Directory.EnumerateFiles(folder, pattern, SearchOption.AllDirectories)
            .Where(f => !f.Split(Path.DirectorySeparatorChar).Any(part => part is "bin" or "obj"));

    private static string FindRoot()
    {
        for (DirectoryInfo? folder = new(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
        {
            if (File.Exists(Path.Combine(folder.FullName, "StrutLessons.sln")))
            {
                return folder.FullName;
            }
        }

        throw new DirectoryNotFoundException("StrutLessons.sln was not found above the test assembly.");
    }
}
