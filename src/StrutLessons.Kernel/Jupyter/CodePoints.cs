namespace StrutLessons.Kernel.Jupyter;

/// <summary>The protocol counts a cursor's place in Unicode code points, .NET in UTF-16 units; they differ behind a sign such as 𝜎.</summary>
internal static class CodePoints
{
    /// <summary>The .NET index of a place in code points, within the text.</summary>
    internal static int ToIndex(string text, int codePoints)
    {
        var index = 0;
        for (; codePoints > 0 && index < text.Length; codePoints--)
        {
            index += char.IsSurrogatePair(text, index) ? 2 : 1;
        }
        return index;
    }

    /// <summary>The place in code points of a .NET index.</summary>
    internal static int FromIndex(string text, int index) => index - Pairs(text, index);

    private static int Pairs(string text, int end)
    {
        var pairs = 0;
        for (var i = 0; i + 1 < end; i++)
        {
            pairs += char.IsSurrogatePair(text, i) ? 1 : 0;
        }
        return pairs;
    }
}
