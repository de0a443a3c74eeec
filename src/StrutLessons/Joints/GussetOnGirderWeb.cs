using StrutLessons.Eccentricity;
using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>A gusset across the web of a girder, parallel to its flanges, at any height.</summary>
public static class GussetOnGirderWeb
{
    /// <summary>The hand formula for a strut's end.</summary>
    /// <param name="gusset">The plate.</param>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="bolts">The bolts of this end.</param>
    /// <param name="support">The girder and where the joint sits along it.</param>
    /// <param name="seat">Height on the web, side of the angle, footprint.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="elasticModulus">E of the gusset, MPa.</param>
    /// <exception cref="InputException">Something does not fit or is out of range.</exception>
    public static WebJoint HandFormula(
        Gusset gusset,
        AngleSection section,
        BoltLine bolts,
        GirderSupport support,
        WebSeat seat,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double elasticModulus = Steel.StandardElasticModulus) =>
        HandFormula(GussetOnRigidSupport.HandFormula(gusset, section, bolts, inPlane, elasticModulus), support, seat);

    /// <summary>Adds the girder to a gusset already worked out on a rigid support.</summary>
    /// <param name="gusset">The gusset on a rigid support.</param>
    /// <param name="support">The girder and where the joint sits along it.</param>
    /// <param name="seat">Height on the web, side of the angle, footprint.</param>
    /// <exception cref="InputException">The seat lies outside the web.</exception>
    public static WebJoint HandFormula(GussetFormula gusset, GirderSupport support, WebSeat seat)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        ArgumentNullException.ThrowIfNull(support);
        ArgumentNullException.ThrowIfNull(seat);
        return new(gusset, support, seat);
    }
}
