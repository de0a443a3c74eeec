using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Sections;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly AngleSection L80 = AngleCatalogue.Find("L 80x80x8").Connected();
    private static readonly BoltLine TwoM20 = new(45, 2, 20, 60, 40);
    private static readonly Gusset Plate = Gusset.Symmetric(10, 160, 65, 40);

    private static IEnumerable<BadInput> Eccentricity =>
    [
        new("gauge zero", () => _ = new BoltLine(0, 2, 20, 60, 40), "gauge", "greater than 0", "heel"),
        new("gauge NaN", () => _ = new BoltLine(double.NaN, 2, 20, 60, 40), "gauge", "NaN"),
        new("no bolts", () => _ = new BoltLine(45, 0, 20, 60, 40), "number of bolts", "between 1 and 12"),
        new("bolt in metres", () => _ = new BoltLine(45, 2, 0.02, 60, 40), "bolt diameter d", "0.02 mm", "20 for M20"),
        new("bolts too close", () => _ = new BoltLine(45, 2, 20, 40, 40), "pitch p1", "40 mm", "48.4 mm", "Move the bolts apart"),
        new("pitch infinite", () => _ = new BoltLine(45, 2, 20, double.PositiveInfinity, 40), "pitch p1", "48.4"),
        new("end distance too short", () => _ = new BoltLine(45, 2, 20, 60, 25), "end distance e1", "25 mm", "26.4 mm"),
        new("gauge outside the leg", () => LoadPoint.Of(L80, new BoltLine(85, 2, 20, 60, 40), 10), "gauge", "85 mm", "less than 80 mm", "from the heel"),
        new("hole in the root fillet", () => LoadPoint.Of(L80, new BoltLine(25, 2, 20, 60, 40), 10), "gauge", "between 29 and 53.6 mm", "root fillet"),
        new("hole too close to the toe", () => LoadPoint.Of(L80, new BoltLine(60, 2, 20, 60, 40), 10), "gauge", "e2 = 20 mm", "1.2 d0 = 26.4 mm"),
        new("bolt too large for the leg", () => LoadPoint.Of(AngleCatalogue.Find("L 50x50x5").Connected(), new BoltLine(28, 2, 24, 60, 40), 10),
            "bolt diameter d", "24 mm", "smaller bolts"),
        new("gusset thickness zero in the load point", () => LoadPoint.Of(L80, TwoM20, 0), "gusset thickness", "greater than 0"),
        new("gusset thickness NaN in the load point", () => LoadPoint.Of(L80, TwoM20, double.NaN), "gusset thickness", "NaN"),
        new("gusset face without a name", () => LoadPoint.Of(L80, TwoM20, 10, (GussetFace)4), "gusset face", "Outer, Inner"),
        new("load plane without a name", () => LoadPoint.Of(L80, TwoM20, 10, GussetFace.Outer, (LoadPlane)4), "load plane", "GussetMidPlane"),
        new("gusset sides without a name", () => LoadPoint.BothEnds(L80, TwoM20, 10, TwoM20, 10, (GussetSides)4), "gusset sides", "Same, Opposite"),
    ];

    private static IEnumerable<BadInput> Joints =>
    [
        new("gusset thickness negative", () => _ = new Gusset(-10, 80, 80, 65, 40), "gusset thickness", "-10 mm"),
        new("gusset width zero", () => _ = new Gusset(10, 0, 80, 65, 40), "gusset width left", "not the full width"),
        new("free length zero", () => _ = new Gusset(10, 80, 80, 0, 40), "free length g", "greater than 0"),
        new("free length NaN", () => _ = new Gusset(10, 80, 80, double.NaN, 40), "free length g", "NaN"),
        new("gusset end distance negative", () => _ = new Gusset(10, 80, 80, 65, -1), "gusset end distance", "0 or more"),
        new("taper negative", () => _ = new Gusset(10, 80, 80, 65, 40, -0.1), "taper", "between 0 and 2"),
        new("inclination in radians", () => _ = new Gusset(10, 80, 80, 65, 40, 0, 1.05), "inclination", "1.05 degrees", "radians"),
        new("inclination obtuse", () => _ = new Gusset(10, 80, 80, 65, 40, 0, 120), "inclination", "between 30 and 90 degrees"),
        new("gusset narrower than the bolts allow", () => GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 50, 65, 40), L80, TwoM20),
            "gusset width left", "25 mm", "26.4 mm"),
        new("gusset narrow on one side only", () => GussetOnRigidSupport.HandFormula(new Gusset(10, 80, 20, 65, 40), L80, TwoM20),
            "gusset width right", "20 mm"),
        new("bolt too close to the end of the gusset", () => GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 65, 20), L80, TwoM20),
            "gusset end distance", "20 mm", "26.4 mm"),
        new("angle runs into the support", () => GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 35, 40), L80, TwoM20),
            "free length g", "35 mm", "at least 40 mm"),
        new("near corner crosses the support", () => GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 60, 40, 0, 30), 80, 60),
            "free length g", "cot"),
        new("patch width negative", () => GussetOnRigidSupport.HandFormula(Plate, -80, 60), "patch width w", "-80 mm"),
        new("plate modulus in GPa", () => GussetOnRigidSupport.HandFormula(Plate, 80, 60, 210), "elastic modulus E", "210 MPa"),
        new("compression beyond the gusset's own buckling load",
            () => GussetOnRigidSupport.HandFormula(Plate, 80, 60).StiffnessUnder(1e9), "compression N", "between 0 and"),
        new("joint without parts", () => JointHinge.InSeries([], 2), "contributions", "at least one part"),
        new("joint without bolts", () => JointHinge.InSeries([new("gusset", 1e-8, 30, "x")], 0), "number of bolts", "between 1 and 100"),
        new("compliance negative", () => _ = new JointContribution("gusset", -1e-8, 30, "x"), "compliance f", "0 or more"),
        new("compliance infinite", () => _ = new JointContribution("gusset", double.PositiveInfinity, 30, "x"), "compliance f"),
        new("hinge distance negative", () => _ = new JointContribution("gusset", 1e-8, -30, "x"), "hinge distance d", "-30 mm"),
        new("in-plane end without a name", () => JointHinge.InSeries([new("gusset", 1e-8, 30, "x")], 2, (InPlaneEnd)3), "in-plane end", "Rigid, Released"),
        new("spring placed at a weld nowhere", () => JointHinge.InSeries([new("gusset", 1e-8, 30, "x")], 2).PlacedAt(SpringPlace.Weld, 0), "free length g"),
    ];
}
