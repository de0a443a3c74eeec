namespace StrutLessons.Notebook;

/// <summary>The one place that says how a value looks in a cell. Whoever runs cells asks here and needs to know nothing else.</summary>
public static class Showing
{
    /// <summary>The forms of a value, best first; null if the value is none of ours and the caller shows it in its own way.</summary>
    public static IReadOnlyList<ShownPart>? Show(object value) => value switch
    {
        IShown shown => shown.Shown(),
        _ => null,
    };
}
