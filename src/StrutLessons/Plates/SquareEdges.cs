namespace StrutLessons.Plates;

/// <summary>How all four edges of a square plate are held.</summary>
public enum SquareEdges
{
    /// <summary>Deflection zero, free to turn.</summary>
    SimplySupported,

    /// <summary>Deflection and slope zero.</summary>
    Clamped,
}
