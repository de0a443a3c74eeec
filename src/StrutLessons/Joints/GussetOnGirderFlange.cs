using StrutLessons.Eccentricity;
using StrutLessons.Materials;
using StrutLessons.Plates;
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
        FootModel foot = FootModel.UniformMoment,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus) =>
        HandFormula(GussetOnRigidSupport.HandFormula(gusset, section, bolts, inPlane, elasticModulus), support, foot);

    /// <summary>
    /// The plate analysis of a strut's end, gusset and girder together, from the same inputs as the hand formula.
    /// </summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="support">The girder and where the joint sits on it; of the same elastic modulus as the gusset.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="elasticModulus">E of gusset and girder, MPa.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the leg, 2 to 16.</param>
    /// <exception cref="InputException">As for the hand formula, or a shape that the plate model cannot have.</exception>
    public static JointByPlates PlateAnalysis(
        Gusset gusset,
        AngleSection section,
        BoltLine bolts,
        GirderSupport support,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus,
        int fineness = PlateOnRigidSupport.DefaultFineness) =>
        HandFormula(gusset, section, bolts, support, FootModel.UniformMoment, inPlane, elasticModulus).PlateAnalysis(fineness);

    /// <summary>Adds the girder to a gusset already worked out on a rigid support.</summary>
    /// <param name="gusset">The gusset on a rigid support.</param>
    /// <param name="support">The girder and where the joint sits on it.</param>
    /// <param name="foot">How the gusset passes its moment to the flange.</param>
    /// <exception cref="InputException">Not a named foot.</exception>
    public static FlangeJoint HandFormula(GussetFormula gusset, GirderSupport support, FootModel foot = FootModel.UniformMoment)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        ArgumentNullException.ThrowIfNull(support);
        return new(gusset, support, foot);
    }
}
