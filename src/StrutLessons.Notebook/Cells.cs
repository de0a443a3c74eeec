namespace StrutLessons.Notebook;

/// <summary>
/// What a cell may call to show something before its end: <c>Show(section);</c>. The value of a cell's last expression is
/// shown without asking.
/// </summary>
public static class Cells
{
    private static long _last;

    /// <summary>
    /// Where shown values go: the value, its name, and whether it takes the place of the one with that name. Whoever runs
    /// cells puts itself here; without one, in an ordinary program, values are written to the console as text.
    /// </summary>
    public static Action<object?, string, bool> Screen { get; set; } = WriteText;

    /// <summary>Shows a value now.</summary>
    /// <returns>The place where it stands, to put something else there later.</returns>
    public static ShownValue Show(object? value)
    {
        var shown = new ShownValue(NewName("shown"));
        Screen(value, shown.Id, false);
        return shown;
    }

    /// <summary>A name that is given once in one run of the lesson.</summary>
    internal static string NewName(string stem) => $"{stem}-{Interlocked.Increment(ref _last)}";

    private static void WriteText(object? value, string id, bool replaces)
    {
        var parts = value is null ? null : Showing.Show(value);
        Console.WriteLine(parts?.FirstOrDefault(part => part.MimeType == "text/plain")?.Content ?? value?.ToString() ?? "null");
    }
}

/// <summary>The place of a value that a cell has shown.</summary>
/// <param name="Id">Its name, unique in one run of the lesson.</param>
public sealed record ShownValue(string Id)
{
    /// <summary>Shows another value in the same place.</summary>
    public void Replace(object? value) => Cells.Screen(value, Id, true);
}
