using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Sections;
using StrutLessons.Torsion;

namespace StrutLessons.Tests.House;

internal static partial class BadInputTable
{
    private static readonly Girder Ipe360 = GirderCatalogue.Find("IPE 360");
    private static readonly GirderSupport OnIpe360 = new(Ipe360, 5600, 2800);

    private static GussetFormula PlateFormula => GussetOnRigidSupport.HandFormula(Plate, L80, TwoM20);

    private static IEnumerable<BadInput> Torsion =>
    [
        new("torsional stiffness zero", () => _ = new TorsionBar(0, 1e16, 5000), "G I_t", "greater than 0", "10 000 mm⁴"),
        new("warping stiffness NaN", () => _ = new TorsionBar(1e10, double.NaN, 5000), "E I_w", "NaN", "1 000 000 mm⁶"),
        new("girder length negative", () => GirderTorsion.Bar(Ipe360, -5600), "girder length L", "-5600 mm"),
        new("shear modulus in GPa", () => GirderTorsion.Bar(Ipe360, 5600, shearModulus: 81), "shear modulus G", "81 MPa", "about 81 000"),
        new("girder modulus in GPa", () => GirderTorsion.Bar(Ipe360, 5600, elasticModulus: 210), "elastic modulus E", "210 MPa"),
        new("girder end without a name", () => GirderTorsion.Bar(Ipe360, 5600, (WarpingEnd)5), "girder end 1", "Fork, WarpingFixed"),
        new("torque beyond the girder", () => OnIpe360.Bar.Under(1e6, 6000), "torque position a", "6000 mm", "less than L = 5600 mm"),
        new("torque at the support", () => OnIpe360.Bar.Under(1e6, 0), "torque position a", "0 mm"),
        new("torque infinite", () => OnIpe360.Bar.Under(double.PositiveInfinity, 2800), "torque T"),
        new("twist read beyond the girder", () => OnIpe360.UnitTorque().Twist(5601), "position x", "between 0 and 5600 mm"),
        new("one element only", () => TorsionElements.Solve(OnIpe360.Bar, 1e6, 2800, 1), "number of elements", "between 2 and 400"),
    ];

    private static IEnumerable<BadInput> GirderJoints =>
    [
        new("joint beyond the girder", () => _ = new GirderSupport(Ipe360, 5600, 5700), "joint position a", "5700 mm", "5600 mm", "heldAgainstTwist"),
        new("joint position NaN", () => _ = new GirderSupport(Ipe360, 5600, double.NaN), "joint position a", "NaN"),
        new("flange foot without a name", () => GussetOnGirderFlange.HandFormula(PlateFormula, OnIpe360, (FootModel)4), "flange foot", "UniformMoment"),
        new("gusset above the girder", () => GussetOnGirderWeb.HandFormula(PlateFormula, OnIpe360, new WebSeat(360)),
            "height y0 on the web", "360 mm", "less than h_s = 347.3 mm"),
        new("gusset below the girder", () => _ = new WebSeat(-20), "height y0 on the web", "-20 mm"),
        new("direction of z without a name", () => _ = new WebSeat(100, (ZTowards)4), "direction of z", "MidDepth, Flange"),
        new("footprint negative", () => _ = new WebSeat(100, ZTowards.MidDepth, -5), "footprint e", "0 or more"),
        new("footprint as wide as the web is high", () => GussetOnGirderWeb.HandFormula(PlateFormula, OnIpe360, new WebSeat(170, ZTowards.MidDepth, 100)),
            "footprint e", "at most h_s/4"),
        new("tie force NaN", () => AdjacentTie.Constant(double.NaN, 25, TieSide.SameAsStrut), "tie force T", "tension positive"),
        new("tie eccentricity negative", () => AdjacentTie.Constant(1e4, -25, TieSide.SameAsStrut), "tie eccentricity", "-25 mm", "side"),
        new("tie side without a name", () => AdjacentTie.Constant(1e4, 25, (TieSide)7), "tie side", "SameAsStrut, OppositeToStrut"),
        new("tie ratio given as a force", () => AdjacentTie.Proportional(50_000, 25, TieSide.SameAsStrut), "tie force ratio T/N", "between -10 and 10"),
        new("tie moment share infinite", () => AdjacentTie.Constant(1e4, 25, TieSide.SameAsStrut, double.PositiveInfinity), "moment share", "sin β/sin α"),
        new("tie beside a strut without eccentricity",
            () => AdjacentTie.Constant(1e4, 25, TieSide.SameAsStrut).On(LoadPoint.Of(L80, TwoM20, 2 * (L80.CentroidZ - 8), GussetFace.Inner)),
            "eccentricity across the gusset", "different from 0"),
    ];
}
