namespace StrutLessons.Desk.Readiness;

/// <summary>What a look at this machine means for the lessons.</summary>
internal enum FindingKind
{
    /// <summary>All is well.</summary>
    Fine,

    /// <summary>Good to know; the lessons run all the same.</summary>
    Aside,

    /// <summary>The lessons cannot run like this.</summary>
    Missing,
}

/// <summary>One thing looked at.</summary>
/// <param name="Kind">What it means.</param>
/// <param name="Subject">What was looked at.</param>
/// <param name="Words">What was found.</param>
/// <param name="ToDo">What to do about it; null if nothing needs doing.</param>
internal sealed record Finding(FindingKind Kind, string Subject, string Words, string? ToDo = null);
