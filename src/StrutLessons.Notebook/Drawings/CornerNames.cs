using StrutLessons.Sections;

namespace StrutLessons.Notebook.Drawings;

/// <summary>Names of the five corners in words, and the side on which a label stands best.</summary>
internal static class CornerNames
{
    internal static string Words(Corner corner) => corner switch
    {
        Corner.Heel => "heel",
        Corner.ConnectedToeOuter => "connected toe, outer",
        Corner.ConnectedToeInner => "connected toe, inner",
        Corner.OutstandingToeInner => "outstanding toe, inner",
        _ => "outstanding toe, outer",
    };

    internal static Paper Outwards(Corner corner) => corner switch
    {
        Corner.Heel => new(-1, -1),
        Corner.ConnectedToeOuter => new(1, -1),
        Corner.ConnectedToeInner => new(1, 1),
        Corner.OutstandingToeInner => new(1, 0.4),
        _ => new(-1, 0.4),
    };
}
