using StrutLessons.Sections;

namespace StrutLessons.Tests;

/// <summary>The corners' names in the reference cases.</summary>
internal static class CornerNames
{
    internal static string Of(Corner corner) => corner switch
    {
        Corner.Heel => "heel",
        Corner.ConnectedToeOuter => "c_toe_outer",
        Corner.ConnectedToeInner => "c_toe_inner",
        Corner.OutstandingToeInner => "o_toe_inner",
        _ => "o_toe_outer",
    };
}
