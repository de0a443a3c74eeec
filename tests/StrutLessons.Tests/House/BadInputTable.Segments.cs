using StrutLessons.Capacity;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly GussetSegment Strip = new(65, 1e9);
    private static readonly ThreeSegmentStrut Column = ThreeSegmentStrut.InOnePlane(2e10, 2000, Strip, Strip);

    private static IEnumerable<BadInput> JointsByPlates =>
    [
        new("leg wider than the plate in a plate analysis", () => GussetOnRigidSupport.HandFormula(new Gusset(10, 80, 30, 65, 40), 80, 60).PlateAnalysis(),
            "right plate width", "30 mm", "narrow the patch"),
        new("mesh of the joint too coarse", () => GussetOnRigidSupport.PlateAnalysis(Plate, L80, TwoM20, fineness: 1), "fineness", "between 2 and 16"),
        new("bolts that do not fit, by plates", () => GussetOnRigidSupport.PlateAnalysis(Gusset.Symmetric(10, 50, 65, 40), L80, TwoM20), "gusset width left"),
        new("girder of another modulus than the gusset", () => GussetOnGirderFlange.HandFormula(PlateFormula,
            new GirderSupport(Ipe360, 5600, 2800, elasticModulus: 200_000)).PlateAnalysis(), "elastic modulus E of the girder", "200000 MPa", "210000 MPa"),
        new("foot beyond the fork", () => GussetOnGirderFlange.PlateAnalysis(Plate, L80, TwoM20, new GirderSupport(Ipe360, 5600, 50)),
            "load position", "50 mm", "whole foot"),
        new("gusset too near to the flange for the plate model", () => GussetOnGirderWeb.PlateAnalysis(Plate, L80, TwoM20, OnIpe360, new WebSeat(10)),
            "height on the web", "10 mm", "belongs to the flange"),
    ];

    private static IEnumerable<BadInput> Segments =>
    [
        new("segment without length", () => _ = new GussetSegment(0, 1e9), "free length g", "greater than 0"),
        new("segment of no stiffness", () => _ = new GussetSegment(65, double.NaN), "bending stiffness of the gusset", "NaN"),
        new("segment beyond its own buckling", () => Strip.StiffnessUnder(1.01 * Strip.FreeBucklingLoad), "compression N", "between 0 and"),
        new("softening under tension", () => GussetSoftening.Of(Strip, -1), "compression N", "-1 N"),
        new("bar of no length", () => ThreeSegmentStrut.InOnePlane(2e10, 0, Strip, Strip), "bar length", "greater than 0"),
        new("bar of infinite stiffness", () => ThreeSegmentStrut.InOnePlane(double.PositiveInfinity, 2000, Strip, Strip), "bending stiffness of the bar"),
        new("segment eccentricity NaN", () => ThreeSegmentStrut.InOnePlane(2e10, 2000, Strip, Strip, double.NaN), "eccentricity z_e at end 1", "NaN"),
        new("segment bow infinite", () => ThreeSegmentStrut.InOnePlane(2e10, 2000, Strip, Strip, 0, 0, double.NegativeInfinity), "bow amplitude e0"),
        new("strut of one bolt as three segments", () => ThreeSegmentStrut.Of(Pinned, Strip, Strip), "in-plane spring stiffness", "0 N mm/rad", "two or more bolts"),
        new("three segments beyond their critical load", () => Column.Under(1.01 * Column.CriticalLoad), "load N", "less than the critical load"),
        new("three segments without load", () => Column.Under(0), "load N", "more than 0"),
        new("place beyond the weld", () => Column.Under(0.5 * Column.CriticalLoad).Deflection(2131), "place x", "between", "from the weld"),
        new("place of the spring without a name", () => SpringPlaceComparison.Of(Column).RatioAt((SpringPlace)9), "spring place", "ElasticCentre"),
        new("ends of the tie without a name", () => TieComparison.Of(Pinned, LoadPoint.Of(L80, TwoM20, 10), AdjacentTie.Constant(1e4, 25, TieSide.SameAsStrut), (TieEnds)5),
            "ends with a tie", "Both"),
    ];

    private static Strut Pinned =>
        new(L80, SteelGrade.S355.ForThickness(8), 2150, new StrutEnd(Planar.Zero, EndSpring.Hinged), new StrutEnd(Planar.Zero, EndSpring.Hinged));
}
