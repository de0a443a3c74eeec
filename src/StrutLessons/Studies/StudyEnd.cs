namespace StrutLessons.Studies;

/// <summary>How both ends of a study's strut are held.</summary>
public enum StudyEnd
{
    /// <summary>Hinges at the first bolts: the lower limit.</summary>
    Hinged,

    /// <summary>A gusset on a support that does not give.</summary>
    RigidSupport,

    /// <summary>A gusset on the flange of a girder.</summary>
    GirderFlange,

    /// <summary>A gusset across the web of a girder.</summary>
    GirderWeb,

    /// <summary>No rotation at the first bolts: the upper limit.</summary>
    Rigid,
}

/// <summary>How the stiffness of a study's joint is found.</summary>
public enum JointMethod
{
    /// <summary>The hand formulas: fast.</summary>
    HandFormula,

    /// <summary>Plate analyses of the same geometry: some ten milliseconds for each new joint.</summary>
    Plates,
}
