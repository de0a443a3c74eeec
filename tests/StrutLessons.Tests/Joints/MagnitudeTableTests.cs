using System.Globalization;
using StrutLessons.Joints;
using StrutLessons.Sections;

namespace StrutLessons.Tests.Joints;

/// <summary>
/// A reference table of this project, made by an independent hand calculation: stiffness in kNm/rad of usual gussets and girders
/// (span 5 m, joint at midspan, forks) and their size against the strut, to the digits of the table.
/// </summary>
/// <remarks>The table takes the printed I_v of the angle (from memory) with the area of its geometry, and L = λ_v i_v.</remarks>
public class MagnitudeTableTests
{
    [Theory]
    [InlineData("L 50x50x5", 80, "0.78", 50, 90, 8, 50, 35, "IPE 200", "17.5", "23.9", "5.0", "3.3", "33.3", "3.5", "12.3", "1.43", "0.27", "0.28")]
    [InlineData("L 50x50x5", 150, "1.46", 50, 90, 8, 50, 35, "IPE 200", "17.5", "23.9", "5.0", "3.3", "33.3", "3.5", "6.5", "2.67", "0.51", "0.53")]
    [InlineData("L 80x80x8", 80, "1.25", 80, 150, 10, 80, 70, "IPE 300", "35.6", "49.0", "22.2", "10.7", "72.5", "11.5", "50.3", "0.71", "0.21", "0.23")]
    [InlineData("L 80x80x8", 150, "2.34", 80, 150, 10, 80, 70, "IPE 300", "35.6", "49.0", "22.2", "10.7", "72.5", "11.5", "26.8", "1.33", "0.40", "0.43")]
    [InlineData("L 80x80x8", 80, "1.25", 80, 150, 15, 60, 70, "HEA 200", "159", "56.0", "20.2", "13.6", "78.5", "14.6", "50.3", "3.16", "0.27", "0.29")]
    [InlineData("L 80x80x8", 150, "2.34", 80, 150, 15, 60, 70, "HEA 200", "159", "56.0", "20.2", "13.6", "78.5", "14.6", "26.8", "5.93", "0.51", "0.54")]
    [InlineData("L 120x120x12", 80, "1.88", 120, 220, 15, 110, 140, "HEB 300", "128", "304", "251", "66.4", "363", "68.8", "169.8", "0.76", "0.39", "0.41")]
    [InlineData("L 120x120x12", 150, "3.52", 120, 220, 15, 110, 140, "HEB 300", "128", "304", "251", "66.4", "363", "68.8", "90.6", "1.42", "0.73", "0.76")]
    [InlineData("L 150x150x15", 80, "2.35", 150, 300, 20, 150, 180, "HEA 500", "303", "354", "664", "131", "407", "138", "331.2", "0.91", "0.40", "0.42")]
    [InlineData("L 150x150x15", 150, "4.40", 150, 300, 20, 150, 180, "HEA 500", "303", "354", "664", "131", "407", "138", "176.6", "1.71", "0.74", "0.78")]
    [InlineData("L 150x150x15", 80, "2.35", 150, 300, 25, 120, 180, "HEB 500", "736", "626", "941", "249", "712", "261", "331.2", "2.22", "0.75", "0.79")]
    [InlineData("L 150x150x15", 150, "4.40", 150, 300, 25, 120, 180, "HEB 500", "736", "626", "941", "249", "712", "261", "176.6", "4.17", "1.41", "1.48")]
    public void Usual_joints_have_these_stiffnesses(
        string angle, double slenderness, string length, double leg, double width, double thickness, double free, double group, string girder,
        string gusset, string flangeLocal, string global, string flange, string webLocal, string web,
        string strut, string ratioGusset, string ratioFlange, string ratioWeb)
    {
        GussetFormula g = GussetOnRigidSupport.HandFormula(Gusset.Symmetric(thickness, width, free, 50), leg, group);
        var support = new GirderSupport(GirderCatalogue.Find(girder), 5000, 2500);
        FlangeJoint f = GussetOnGirderFlange.HandFormula(g, support);
        WebJoint w = GussetOnGirderWeb.HandFormula(g, support, WebSeat.AtMidDepth(support.Girder));
        Printed(gusset, g.Stiffness * 1e-6, "c_G");
        Printed(flangeLocal, 1e-6 / f.Local.UniformMomentCompliance, "c_F local");
        Printed(global, 1e-6 / f.Global.Compliance, "c global");
        Printed(flange, f.Hinge.OutOfPlaneStiffness * 1e-6, "c_F");
        Printed(webLocal, 1e-6 / w.Web.Rotation, "c_W local");
        Printed(web, w.Hinge.OutOfPlaneStiffness * 1e-6, "c_W");

        Angle shape = AngleCatalogue.Find(angle);
        double iv = AngleCatalogue.Printed(shape).SecondMomentV!.Value, radius = Math.Sqrt(iv / shape.Connected().Area);
        double system = slenderness * radius, bending = 210_000 * iv / system;
        Printed(length, system * 1e-3, "L");
        Printed(strut, bending * 1e-6, "E I_v/L");
        Printed(ratioGusset, g.Stiffness / bending, "c L/E I_v, rigid support");
        Printed(ratioFlange, f.Hinge.OutOfPlaneStiffness / bending, "c L/E I_v, flange");
        Printed(ratioWeb, w.Hinge.OutOfPlaneStiffness / bending, "c L/E I_v, web");
    }

    private static void Printed(string table, double value, string what)
    {
        int point = table.IndexOf('.', StringComparison.Ordinal), digits = point < 0 ? 0 : table.Length - point - 1;
        Assert.True(table == Math.Round(value, digits).ToString("F" + digits, CultureInfo.InvariantCulture),
            $"{what}: the table says {table}, the formula {value:G6}");
    }
}
