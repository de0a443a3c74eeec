namespace StrutLessons.Desk.Commands;

/// <summary>Small help with words in messages.</summary>
internal static class Words
{
    /// <summary>A number with its noun: "1 lesson", "3 lessons".</summary>
    internal static string Count(int number, string noun) => number == 1 ? $"1 {noun}" : $"{number} {noun}s";
}
