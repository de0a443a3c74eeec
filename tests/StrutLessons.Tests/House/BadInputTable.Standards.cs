using StrutLessons.Eccentricity;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly Steel S355 = SteelGrade.S355.ForThickness(8);
    private static readonly StandardStrut Fine = new(L80, S355, 2150);

    private static IEnumerable<BadInput> Standards =>
    [
        new("standard strut in metres", () => _ = new StandardStrut(L80, S355, 2.15), "system length", "2.15 mm", "between 80 and 100000 mm"),
        new("standard strut of length NaN", () => _ = new StandardStrut(L80, S355, double.NaN), "system length", "NaN"),
        new("standard strut of infinite length", () => Fine.WithLength(double.PositiveInfinity), "system length"),
        new("bolts negative", () => _ = new StandardStrut(L80, S355, 2150, -1), "bolts per end", "-1", "0 for a weld"),
        new("printed area in cm²", () => StandardSection.Of(L80).WithPrinted(area: 12.3), "printed area A", "12.3 mm²", "unit"),
        new("printed radius of the wrong axis", () => StandardSection.Of(L80).WithPrinted(radiusV: 24.3), "printed radius i_v", "24.3 mm", "axis"),
        new("printed radius NaN", () => StandardSection.Of(L80).WithPrinted(radiusParallel: double.NaN), "printed radius parallel to the connected leg", "NaN"),
        new("printed radius infinite", () => StandardSection.Of(L80).WithPrinted(radiusNormal: double.PositiveInfinity), "printed radius perpendicular to the connected leg"),
        new("buckling curve at L/i", () => EnBucklingCurve.ReductionFactor(138), "relative slenderness", "138", "not the ratio L/i"),
        new("buckling curve at NaN", () => EnBucklingCurve.ReductionFactor(double.NaN), "relative slenderness", "NaN"),
        new("imperfection factor too large", () => EnBucklingCurve.ReductionFactor(1, 34), "imperfection factor α", "34", "0.34"),
        new("effective area without strength", () => EnEffectiveArea.Of(Fine.Section, 0), "yield strength f_y", "0 MPa"),
        new("AISC truss without a name", () => Aisc360.SingleAngle(Fine, (Aisc360Truss)5), "truss", "Planar, Space"),
        new("ASCE restraint without a name", () => Asce10.Bracing(Fine, (Asce10Restraint)5), "restraint", "BothEnds"),
        new("ASCE eccentricity without a name", () => Asce10.Bracing(Fine, eccentricity: (Asce10Eccentricity)5), "eccentricity", "OneEnd"),
        new("fixity in per cent", () => Is800.SingleAngle(Fine, 50), "fixity", "50", "between 0 and 1"),
        new("fixity NaN", () => Is800.SingleAngle(Fine, double.NaN), "fixity", "NaN"),
        new("AS slenderness zero", () => As4100Column.ReductionFactor(0, 0.5), "modified slenderness λ_n", "greater than 0"),
        new("AS section constant too large", () => As4100Column.ReductionFactor(100, 5), "section constant α_b", "0.5"),
        new("unknown rule", () => RuleChoice.Pick("EN BB.1.2", "AISC c"), "rule", "'AISC c'", "AISC a, AISC b"),
        new("curves from slenderness 0.1", () => StandardCurves.Of(Diagonal, fromSlenderness: 0.1), "smallest slenderness", "0.1", "0.2"),
        new("comparison of a strut shorter than its leg", () => StandardComparison.Of(Diagonal.WithLength(60)), "system length", "60 mm"),

        new("AISC beyond L_c/r = 200", () => Aisc360.SingleAngle(Fine.WithLength(3500)).OrThrow(), "slenderness L_c/r", "at most 200", "E5(4)", "Chapter H"),
        new("AISC with legs of 2 to 1", () => Aisc360.SingleAngle(Unequal("L 150x75x10")).OrThrow(), "ratio of the legs b_l/b_s", "= 2 is", "less than 1.7", "Chapter H"),
        new("AISC with one bolt", () => Aisc360.SingleAngle(OneBolt).OrThrow(), "fasteners at each end", "one bolt", "two bolts or more", "E5(2)"),
        new("AISC with very thin legs", () => Aisc360.SingleAngle(Thin).OrThrow(), "width of a leg over its thickness b/t", "E4"),
        new("EN web member with one bolt", () => En1993.WebMemberStrut(OneBolt).OrThrow(), "fasteners at each end", "one bolt", "6.2.9"),
        new("EN curve b beyond S460", () => En1993.ConcentricStrut(Strong).OrThrow(), "yield strength", "690 MPa", "at most 460 MPa", "Table 6.2"),
        new("ASCE beyond KL/r = 200", () => Asce10.Bracing(Fine.WithLength(3200), Asce10Restraint.None).OrThrow(), "slenderness KL/r", "at most 200"),
        new("ASCE beyond w/t = 25", () => Asce10.Bracing(new StandardStrut(Plate20030, S355, 2000)).OrThrow(), "flat width of a leg over its thickness w/t", "at most 25"),
        new("ASCE restraint by one bolt", () => Asce10.Bracing(OneBolt).OrThrow(), "fasteners at each end", "one bolt", "no restraint"),
        new("IS beyond l/r = 250", () => Is800.SingleAngle(Fine.WithLength(4000), 1).OrThrow(), "slenderness l/r_vv", "at most 250"),
        new("IS with slender legs", () => Is800.SingleAngle(Thin, 1).OrThrow(), "width of a leg over its thickness b/t", "slender"),
        new("BS with slender legs", () => Bs5950.SingleAngle(Thin).OrThrow(), "width of a leg over its thickness b/t", "slender"),
        new("AS with one bolt", () => As4100.WebMember(OneBolt).OrThrow(), "fasteners at each end", "one bolt", "8.4.5"),
        new("AS with unequal legs", () => As4100.WebMember(Unequal("L 100x65x8")).OrThrow(), "ratio of the legs", "1.53846", "at most 1"),
        new("AS with slender legs", () => As4100.WebMember(Thin).OrThrow(), "slenderness of a leg (b − t)/t √(f_y/250)", "at most 16", "form factor"),
    ];

    private static StandardStrut OneBolt => new(L80, S355, 2150, 1);

    private static StandardStrut Strong => new(L80, Steel.Custom("S690", 690), 2150);

    private static StandardStrut Thin => new(new Angle("thin", 150, 150, 6, 12, 6).Connected(), S355, 2000);

    private static AngleSection Plate20030 => new Angle("very thin", 200, 200, 6, 12, 6).Connected();

    private static Strut Diagonal
    {
        get
        {
            var end = new StrutEnd(LoadPoint.Of(L80, TwoM20, 10).Offset, EndSpring.FromKiloNewtonMetre(1000, 40));
            return new Strut(L80, S355, 2150, end, end);
        }
    }

    private static StandardStrut Unequal(string name) => new(AngleCatalogue.Find(name).Connected(), SteelGrade.S235.ForThickness(8), 2000);
}
