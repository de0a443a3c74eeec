using StrutLessons.Eccentricity;
using StrutLessons.Materials;
using StrutLessons.Plates;
using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>A gusset welded to a support that does not give: square, inclined or tapered.</summary>
public static class GussetOnRigidSupport
{
    /// <summary>The hand formula for a strut's end: the patch is as wide as the connected leg and as long as the bolt group.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="elasticModulus">E of the plate, MPa.</param>
    /// <exception cref="InputException">The bolts do not fit on leg or plate, or the leg runs into the support.</exception>
    public static GussetFormula HandFormula(
        Gusset gusset,
        AngleSection section,
        BoltLine bolts,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(bolts);
        GussetFit.Check(gusset, section, bolts);
        return new(gusset, section.ConnectedLength, bolts.BoltGroupLength, bolts.Count, inPlane, elasticModulus);
    }

    /// <summary>The plate analysis of a strut's end, from the same inputs as the hand formula.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="elasticModulus">E of the plate, MPa.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the leg, 2 to 16.</param>
    /// <exception cref="InputException">As for the hand formula, or a shape that the plate model cannot have.</exception>
    public static JointByPlates PlateAnalysis(
        Gusset gusset,
        AngleSection section,
        BoltLine bolts,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus,
        int fineness = PlateOnRigidSupport.DefaultFineness) =>
        HandFormula(gusset, section, bolts, inPlane, elasticModulus).PlateAnalysis(fineness);

    /// <summary>The plate analysis for a rigid patch of given size, without an angle: for the plate itself.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="patchWidth">Width w of the rigid patch, centred on the bolt line, mm.</param>
    /// <param name="patchLength">Length L_b of the rigid patch from the first bolt, mm.</param>
    /// <param name="elasticModulus">E of the plate, MPa.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">As for the hand formula, or a shape that the plate model cannot have.</exception>
    public static JointByPlates PlateAnalysis(
        Gusset gusset,
        double patchWidth,
        double patchLength,
        double elasticModulus = Steel.StandardElasticModulus,
        int fineness = PlateOnRigidSupport.DefaultFineness) =>
        HandFormula(gusset, patchWidth, patchLength, elasticModulus).PlateAnalysis(fineness);

    /// <summary>The hand formula for a rigid patch of given size, without an angle: for the plate itself.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="patchWidth">Width w of the rigid patch, centred on the bolt line, mm.</param>
    /// <param name="patchLength">Length L_b of the rigid patch from the first bolt, mm.</param>
    /// <param name="elasticModulus">E of the plate, MPa.</param>
    /// <exception cref="InputException">A number that is not positive, or a patch that crosses the support.</exception>
    public static GussetFormula HandFormula(
        Gusset gusset, double patchWidth, double patchLength, double elasticModulus = Steel.StandardElasticModulus)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        return new(gusset, patchWidth, patchLength, 2, InPlaneEnd.Rigid, elasticModulus);
    }
}
