using StrutLessons.Capacity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly AngleSection MemberSection = new Angle("L 80x80x8", 80, 80, 8, 10, 5).Connected();
    private static readonly Steel MemberSteel = Steel.Custom("S355", 355);

    private static IEnumerable<BadInput> Member
    {
        get
        {
            var hinge = new StrutEnd(new Planar(20, 27), EndSpring.Hinged);
            var onArm = new StrutEnd(new Planar(20, 27), EndSpring.Hinged, 60);
            Strut Sound() => new(MemberSection, MemberSteel, 2150, hinge, hinge);
            return
            [
                new("spring negative", () => _ = new EndSpring(-1, 0), "in-plane spring stiffness", "-1 N mm/rad", "0 or more"),
                new("spring NaN", () => _ = new EndSpring(0, double.NaN), "out-of-plane spring stiffness", "NaN"),
                new("spring minus infinity", () => _ = new EndSpring(0, double.NegativeInfinity), "out-of-plane spring stiffness", "infinity"),
                new("eccentricity NaN", () => _ = new StrutEnd(new Planar(double.NaN, 0), EndSpring.Hinged), "eccentricity y_e", "NaN", "centroid"),
                new("eccentricity infinite", () => _ = new StrutEnd(new Planar(0, double.PositiveInfinity), EndSpring.Hinged), "eccentricity z_e", "finite"),
                new("arm negative", () => _ = new StrutEnd(Planar.Zero, EndSpring.Hinged, -5), "arm length", "-5 mm", "0 or more"),
                new("length zero", () => _ = new Strut(MemberSection, MemberSteel, 0, hinge, hinge), "system length", "0 mm", "greater than 0"),
                new("length negative", () => _ = new Strut(MemberSection, MemberSteel, -2150, hinge, hinge), "system length", "-2150 mm"),
                new("length NaN", () => _ = new Strut(MemberSection, MemberSteel, double.NaN, hinge, hinge), "system length", "NaN mm"),
                new("length infinite", () => _ = new Strut(MemberSection, MemberSteel, double.PositiveInfinity, hinge, hinge), "system length", "mm"),
                new("length in metres, shorter than the arms", () => _ = new Strut(MemberSection, MemberSteel, 2.15, onArm, onArm), "system length",
                    "2.15 mm", "more than the two rigid arms together, 120 mm", "in mm"),
                new("length equal to the arms", () => _ = new Strut(MemberSection, MemberSteel, 120, onArm, onArm), "system length", "120 mm"),
                new("no bow", () => _ = new Strut(MemberSection, MemberSteel, 2150, hinge, hinge, new List<Bow>()), "bows", "none", "Bow.None"),
                new("bow too large", () => _ = new Strut(MemberSection, MemberSteel, 2150, hinge, hinge, Bow.AlongU(MemberSection, 300)),
                    "bow amplitude e0", "300 mm", "between 0 and 215 mm"),
                new("bow NaN", () => _ = Bow.AlongU(MemberSection, double.NaN), "bow amplitude e0", "NaN mm"),
                new("bow direction infinite", () => _ = Bow.AtAngle(double.PositiveInfinity, 5), "bow direction", "degrees"),
                new("bow search without a name", () => _ = new Strut(MemberSection, MemberSteel, 2150, hinge, hinge, (BowSearch)7), "bow search", "7", "BothSigns"),
                new("load zero", () => SecondOrderSolution.Of(Sound(), 0), "load N", "0 N", "less than the critical load"),
                new("load negative", () => SecondOrderSolution.Of(Sound(), -1000), "load N", "-1000 N", "more than 0"),
                new("load NaN", () => SecondOrderSolution.Of(Sound(), double.NaN), "load N", "NaN N"),
                new("load beyond the critical one", () => SecondOrderSolution.Of(Sound(), 1e7), "load N", "1E+07 N", "mean nothing"),
                new("place outside the bar", () => SecondOrderSolution.Of(Sound(), 1e4).Deflection(3000), "place x", "3000 mm", "between"),
                new("place NaN", () => SecondOrderSolution.Of(Sound(), 1e4).Moment(double.NaN), "place x", "NaN mm"),
                new("stress at a corner without a name", () => SecondOrderSolution.Of(Sound(), 1e4).StressAt((Corner)9, 100), "corner", "9", "Heel"),
                new("count outside its range", () => CriticalLoad.CountBelow(Sound(), 1e9), "load N", "1E+09 N", "clamped ends"),
                new("curve backwards", () => CapacityCurve.Of(Sound(), 2, 1), "largest slenderness", "1", "more than the smallest"),
                new("curve slenderness zero", () => CapacityCurve.Of(Sound(), 0, 1), "smallest slenderness", "between"),
                new("curve slenderness NaN", () => CapacityCurve.Of(Sound(), 0.3, double.NaN), "largest slenderness", "NaN"),
                new("curve of one point", () => CapacityCurve.Of(Sound(), 0.3, 2, 1), "number of points", "between 2 and 2000"),
                new("curve length shorter than the arms", () => CapacityCurve.PointAt(new Strut(MemberSection, MemberSteel, 2150, onArm, onArm), 100),
                    "system length", "100 mm", "rigid arms"),
                new("tie moment that makes the unloaded strut yield",
                    () => StrutCapacity.Of(new Strut(MemberSection, MemberSteel, 2150, hinge with { ConstantMoment = new Planar(0, 2e7) }, hinge)),
                    "constant joint moment", "reduce the tie force"),
                new("tie moment, capacity as a plain number",
                    () => StrutCapacity.LoadOf(new Strut(MemberSection, MemberSteel, 2150, hinge with { ConstantMoment = new Planar(0, 2e7) }, hinge)),
                    "constant joint moment", "stays elastic"),
            ];
        }
    }
}
