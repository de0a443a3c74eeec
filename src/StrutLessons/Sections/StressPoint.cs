namespace StrutLessons.Sections;

/// <summary>The five corners of an angle at which stresses are checked.</summary>
public enum Corner
{
    /// <summary>The sharp outer corner where the legs meet.</summary>
    Heel,

    /// <summary>Toe of the connected leg, on the outer face.</summary>
    ConnectedToeOuter,

    /// <summary>Toe of the connected leg, on the inner face (the toe radius ignored, slightly conservative).</summary>
    ConnectedToeInner,

    /// <summary>Toe of the outstanding leg, on the inner face (the toe radius ignored, slightly conservative).</summary>
    OutstandingToeInner,

    /// <summary>Toe of the outstanding leg, on the outer face.</summary>
    OutstandingToeOuter,
}

/// <summary>A corner of the section and where it lies from the centroid.</summary>
/// <param name="Corner">Which corner.</param>
/// <param name="Position">y, z from the centroid, mm; z towards the gusset.</param>
public readonly record struct StressPoint(Corner Corner, Planar Position);
