namespace StrutLessons.Sections;

/// <summary>The corners in words, for reports and drawings.</summary>
public static class CornerWords
{
    /// <summary>For example "the toe of the connected leg, outer face".</summary>
    /// <exception cref="InputException">Not a named corner.</exception>
    public static string Of(Corner corner) => Guard.Named(corner, "corner") switch
    {
        Corner.Heel => "the heel",
        Corner.ConnectedToeOuter => "the toe of the connected leg, outer face",
        Corner.ConnectedToeInner => "the toe of the connected leg, inner face",
        Corner.OutstandingToeInner => "the toe of the outstanding leg, inner face",
        _ => "the toe of the outstanding leg, outer face",
    };
}
