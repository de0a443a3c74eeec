namespace StrutLessons.Capacity;

/// <summary>Why the load could not grow further.</summary>
public enum CapacityReason
{
    /// <summary>A corner yields in compression.</summary>
    Compression,

    /// <summary>A corner yields in tension.</summary>
    Tension,

    /// <summary>No corner yields before the critical load: the strut leaves its path sideways.</summary>
    Bifurcation,

    /// <summary>A constant moment on a joint makes a corner yield before any load acts.</summary>
    YieldsWithoutLoad,
}
