using StrutLessons.Eccentricity;
using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>A gusset on the flange of a girder, in the plane of its web.</summary>
public static class GussetOnGirderFlange
{
    /// <summary>The hand formula for a strut's end.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="support">The girder and where the joint sits on it.</param>
    /// <param name="foot">How the gusset passes its moment to the flange.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="elasticModulus">E of the gusset, MPa.</param>
    /// <exception cref="InputException">Something does not fit or is out of range.</exception>
    public static FlangeJoint HandFormula(
        Gusset gusset,
        AngleSection section,
        BoltLine bolts,
        GirderSupport support,
        FlangeFoot foot = FlangeFoot.UniformMoment,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus) =>
        HandFormula(GussetOnRigidSupport.HandFormula(gusset, section, bolts, inPlane, elasticModulus), support, foot);

    /// <summary>Adds the girder to a gusset already worked out on a rigid support.</summary>
    /// <param name="gusset">The gusset on a rigid support.</param>
    /// <param name="support">The girder and where the joint sits on it.</param>
    /// <param name="foot">How the gusset passes its moment to the flange.</param>
    /// <exception cref="InputException">Not a named foot.</exception>
    public static FlangeJoint HandFormula(GussetFormula gusset, GirderSupport support, FlangeFoot foot = FlangeFoot.UniformMoment)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        ArgumentNullException.ThrowIfNull(support);
        return new(gusset, support, foot);
    }
}
