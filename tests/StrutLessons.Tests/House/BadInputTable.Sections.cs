using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static IEnumerable<BadInput> Materials =>
    [
        new("steel without a name", () => Steel.Custom(" ", 355), "name", "designation"),
        new("yield strength zero", () => Steel.Custom("x", 0), "yield strength f_y", "0 MPa", "between 60 and 2000 MPa"),
        new("yield strength negative", () => Steel.Custom("x", -355), "yield strength f_y", "-355 MPa"),
        new("yield strength NaN", () => Steel.Custom("x", double.NaN), "yield strength f_y", "NaN"),
        new("yield strength infinite", () => Steel.Custom("x", double.PositiveInfinity), "yield strength f_y"),
        new("yield strength in N/m²", () => Steel.Custom("x", 355e6), "yield strength f_y", "N/m²", "divide by 1 000 000"),
        new("yield strength in kN/m²", () => Steel.Custom("x", 355e3), "yield strength f_y", "kN/m²", "divide by 1000"),
        new("yield strength in kN/cm²", () => Steel.Custom("x", 35.5), "yield strength f_y", "kN/cm²"),
        new("yield strength in GPa", () => Steel.Custom("x", 0.355), "yield strength f_y", "GPa"),
        new("modulus in GPa", () => Steel.Custom("x", 355, 210), "elastic modulus E", "210 MPa", "MPa", "GPa", "multiply by 1000"),
        new("modulus in kN/cm²", () => Steel.Custom("x", 355, 21_000), "elastic modulus E", "kN/cm²"),
        new("modulus in ksi", () => Steel.Custom("x", 355, 29_000), "elastic modulus E", "ksi"),
        new("modulus in N/m²", () => Steel.Custom("x", 355, 2.1e11), "elastic modulus E", "N/m²"),
        new("modulus NaN", () => Steel.Custom("x", 355, double.NaN), "elastic modulus E", "NaN"),
        new("plate beyond the table", () => SteelGrade.S355.ForThickness(300), "thickness t", "300 mm", "at most 250 mm", "Steel.Custom"),
        new("plate beyond the design table", () => SteelGrade.S235.ForThickness(100, YieldRule.En1993Table3Point1), "thickness t", "at most 80 mm"),
        new("thickness zero for a grade", () => SteelGrade.S235.ForThickness(0), "thickness t", "0 mm"),
        new("yield rule without a name", () => SteelGrade.S235.ForThickness(8, (YieldRule)7), "yield rule", "En10025Part2"),
    ];

    private static IEnumerable<BadInput> Sections =>
    [
        new("angle without a name", () => _ = new Angle("", 80, 80, 8, 10, 5), "name", "L 80x80x8"),
        new("leg negative", () => _ = new Angle("x", -80, 80, 8, 10, 5), "long leg a", "-80 mm", "greater than 0"),
        new("leg NaN", () => _ = new Angle("x", 80, double.NaN, 8, 10, 5), "short leg b", "NaN"),
        new("legs swapped", () => _ = new Angle("x", 65, 100, 8, 10, 5), "short leg b", "Swap the legs"),
        new("leg thicker than long", () => _ = new Angle("x", 80, 80, 80, 10, 5), "thickness t", "less than"),
        new("leg thickness zero", () => _ = new Angle("x", 80, 80, 0, 10, 5), "thickness t", "greater than 0"),
        new("root radius too large", () => _ = new Angle("x", 80, 80, 8, 70, 5), "root radius r1", "70 mm", "67"),
        new("toe radius larger than the leg is thick", () => _ = new Angle("x", 80, 80, 8, 10, 9), "toe radius r2", "8 mm"),
        new("root radius negative", () => _ = new Angle("x", 80, 80, 8, -1, 5), "root radius r1", "0 or more"),
        new("unknown angle", () => AngleCatalogue.Find("L 85x85x8"), "angle", "'L 85x85x8'", "Nearest", "L 80x80x8", "L 90x90x8"),
        new("angle without thickness", () => AngleCatalogue.Find("L80"), "angle", "Nearest"),
        new("printed values of a custom angle", () => AngleCatalogue.Printed(new Angle("mine", 80, 80, 8, 10, 5)), "angle", "'mine'"),
        new("unknown girder", () => GirderCatalogue.Find("IPE 350"), "girder", "'IPE 350'", "IPE 360"),
        new("printed values of a custom girder", () => GirderCatalogue.Printed(new Girder("mine", 300, 150, 7, 11, 15)), "girder", "'mine'"),
        new("girder in cm", () => _ = new Girder("x", 30, 15, 0.71, 1.07, 15), "root radius r", "at most"),
        new("girder height negative", () => _ = new Girder("x", -300, 150, 7, 11, 15), "girder height h", "-300 mm"),
        new("girder width zero", () => _ = new Girder("x", 300, 0, 7, 11, 15), "flange width b", "greater than 0"),
        new("flange thicker than half the girder", () => _ = new Girder("x", 300, 150, 7, 150, 15), "flange thickness t_f", "h/2 = 150 mm"),
        new("web wider than the flange", () => _ = new Girder("x", 300, 150, 150, 11, 15), "web thickness t_w", "150 mm"),
        new("torsion rule without a name", () => GirderCatalogue.Find("IPE 300").TorsionConstant((TorsionConstantRule)9), "torsion constant rule", "Catalogue2014"),
        new("connected leg without a name", () => AngleCatalogue.Find("L 80x80x8").Connected((ConnectedLeg)5), "connected leg", "Long, Short"),
        new("corner without a name", () => AngleCatalogue.Find("L 80x80x8").Connected().PositionOf((Corner)9), "corner", "Heel"),
    ];
}
