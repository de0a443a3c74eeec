namespace StrutLessons.Plates;

/// <summary>Where a stretch has its smallest parts.</summary>
internal enum Finer
{
    /// <summary>Parts grow from the start.</summary>
    AtStart,

    /// <summary>Parts shrink towards the end.</summary>
    AtEnd,

    /// <summary>Parts grow from both ends to the middle.</summary>
    Both,
}
