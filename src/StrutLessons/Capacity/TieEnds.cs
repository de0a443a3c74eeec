namespace StrutLessons.Capacity;

/// <summary>Which joints of a strut carry an adjacent tie.</summary>
public enum TieEnds
{
    /// <summary>The joint at x = 0.</summary>
    End1,

    /// <summary>The joint at x = L.</summary>
    End2,

    /// <summary>A tie on each joint.</summary>
    Both,
}
