using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Studies;

/// <summary>Section and end of a case, worked out once and used for every case that shares them.</summary>
/// <param name="Section">The angle with its connected leg.</param>
/// <param name="End">The end, the same on both sides.</param>
internal sealed record StudyEndParts(AngleSection Section, StrutEnd End)
{
    internal static StudyEndParts Of(in StudyStrut s, AngleSection section)
    {
        double d = s.BoltDiameter, leg = section.ConnectedLength;
        var bolts = new BoltLine(s.Gauge ?? s.GaugeShare * leg, s.BoltCount, d, s.Pitch ?? 3 * d, s.EndDistance ?? 2 * d);
        LoadPoint load = LoadPoint.Of(section, bolts, s.GussetThickness);
        TieMoment? tie = Tie(s)?.On(load);
        StrutEnd end = Guard.Named(s.End, "end") switch
        {
            StudyEnd.Hinged => new StrutEnd(load.Offset, EndSpring.Hinged),
            StudyEnd.Rigid => new StrutEnd(load.Offset, EndSpring.Rigid),
            _ => StrutEnd.Of(load, Hinge(s, section, bolts)),
        };
        return new(section, tie is null ? end : end.With(tie));
    }

    private static JointHinge Hinge(in StudyStrut s, AngleSection section, BoltLine bolts)
    {
        double width = s.GussetWidth ?? 2 * section.ConnectedLength;
        Gusset gusset = Gusset.Symmetric(s.GussetThickness, width, s.FreeLength, s.GussetEndDistance ?? 2 * s.BoltDiameter, s.Taper, s.InclinationDegrees);
        GussetFormula formula = GussetOnRigidSupport.HandFormula(gusset, section, bolts, s.InPlane);
        bool plates = Guard.Named(s.Method, "joint method") == JointMethod.Plates;
        if (s.End == StudyEnd.RigidSupport)
        {
            return plates ? formula.PlateAnalysis().Hinge : formula.Hinge;
        }

        var support = new GirderSupport(s.Girder, s.GirderSpan, s.PositionShare * s.GirderSpan, stiffened: s.Stiffened, heldAgainstTwist: s.HeldAgainstTwist);
        if (s.End == StudyEnd.GirderFlange)
        {
            FlangeJoint flange = GussetOnGirderFlange.HandFormula(formula, support);
            return plates ? flange.PlateAnalysis().Hinge : flange.Hinge;
        }

        WebJoint web = GussetOnGirderWeb.HandFormula(formula, support, new WebSeat(s.HeightShare * s.Girder.FlangeSpacing));
        return plates ? web.PlateAnalysis().Hinge : web.Hinge;
    }

    private static AdjacentTie? Tie(in StudyStrut s) => (s.TieRatio, s.TieForce) switch
    {
        (0, 0) => null,
        (_, 0) => AdjacentTie.Proportional(s.TieRatio, s.TieEccentricity, s.TieSide),
        (0, _) => AdjacentTie.Constant(s.TieForce, s.TieEccentricity, s.TieSide),
        _ => throw Guard.Fail(s.TieForce, "tie force", "N", "0 where a tie ratio is given", "A tie's force is constant or grows with the strut's, not both."),
    };
}
