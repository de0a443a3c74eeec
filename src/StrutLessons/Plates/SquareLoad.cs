namespace StrutLessons.Plates;

/// <summary>The load on a square plate.</summary>
public enum SquareLoad
{
    /// <summary>Even pressure q.</summary>
    Uniform,

    /// <summary>Force P at the centre.</summary>
    CentrePoint,
}
