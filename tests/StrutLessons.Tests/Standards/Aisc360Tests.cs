using StrutLessons.Materials;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Tests.Standards;

public class Aisc360Tests
{
    private const double Inch = 25.4, Ksi = 6.894757, Kip = 4448.222;

    /// <summary>L5×3×½ of the AISC Design Examples, E.14, with the printed properties in inches.</summary>
    private static StandardStrut Example(double lengthInches, ConnectedLeg leg)
    {
        AngleSection geometry = new Angle("L5x3x1/2", 5 * Inch, 3 * Inch, 0.5 * Inch, 0, 0).Connected(leg);
        StandardSection section = StandardSection.Of(geometry).WithPrinted(
            area: 3.75 * Inch * Inch, radiusV: 0.642 * Inch, radiusParallel: (leg == ConnectedLeg.Long ? 0.824 : 1.58) * Inch);
        return new StandardStrut(section, Steel.Custom("50 ksi", 50 * Ksi), lengthInches * Inch);
    }

    /// <summary>AISC Design Examples, E.14A, loaded through the long leg. The example multiplies the rounded 58.7 kip by φ.</summary>
    [Fact]
    public void The_published_example_through_the_long_leg_comes_out()
    {
        StandardResult result = Aisc360.SingleAngle(Example(60, ConnectedLeg.Long)).OrThrow();
        double nominal = result.NominalResistance!.Value / Kip;
        Printed.Agrees("127", result.Value("L_c/r"), "L_c/r");
        Printed.Agrees("17.9", result.Step("F_e") / Ksi, "F_e");
        Printed.Agrees("15.7", result.Step("F_n") / Ksi, "F_n");
        Printed.Agrees("58.7", nominal, "P_n");
        Printed.Agrees("52.8", 0.90 * Math.Round(nominal, 1), "φP_n");
        Closeness.Relative(0.90 * nominal, result.DesignResistance!.Value / Kip, 1e-12, "φP_n unrounded");
        Printed.Agrees("35.2", result.DesignValues[1].Resistance / Kip, "P_n/Ω");
    }

    /// <summary>The same angle through its short leg, case (a); a third party's value, not an AISC publication.</summary>
    [Fact]
    public void The_example_through_the_short_leg_comes_out() =>
        Printed.Agrees("72.4", Aisc360.SingleAngle(Example(60, ConnectedLeg.Short)).OrThrow().DesignResistance / Kip, "φP_n");

    /// <summary>A list in circulation gives 18.5 kip for 10 ft; L_c/r is 214 there, which E5(4) excludes.</summary>
    [Fact]
    public void Ten_feet_are_refused()
    {
        StandardResult result = Aisc360.SingleAngle(Example(120, ConnectedLeg.Long));
        Printed.Agrees("214", result.Value("L_c/r"), "L_c/r");
        Assert.Null(result.NominalResistance);
        Assert.Empty(result.DesignValues);
        Assert.Contains("at most 200", result.Refusal, StringComparison.Ordinal);
        Assert.DoesNotContain(result.WorkedSteps(), s => s.Unit == "kN");
        Assert.Throws<InputException>(() => result.OrThrow());
    }

    /// <summary>Recomputed from the clauses on integrated section values, E = 200 000 MPa.</summary>
    [Theory]
    [InlineData("L 80x80x8", ConnectedLeg.Long, 2000, 275, "82.41", "135.02", "104.85", "127.41", "117.73")]
    [InlineData("L 100x100x10", ConnectedLeg.Long, 2000, 235, "65.85", "121.39", "194.40", "112.68", "215.18")]
    [InlineData("L 100x100x10", ConnectedLeg.Long, 3000, 355, "98.78", "155.47", "123.46", "143.78", "144.36")]
    [InlineData("L 100x75x10", ConnectedLeg.Long, 2000, 250, "92.52", "147.65", "118.68", "137.52", "136.81")]
    [InlineData("L 100x75x10", ConnectedLeg.Short, 2000, 250, "64.07", "123.17", "167.20", "115.92", "183.27")]
    public void The_recomputed_table_comes_out(
        string angle, ConnectedLeg leg, double length, double yield, string legAxis, string planar, string planarDesign, string space, string spaceDesign)
    {
        StandardStrut strut = StandardStruts.Of(angle, length, yield, leg: leg);
        StandardResult a = Aisc360.SingleAngle(strut), b = Aisc360.SingleAngle(strut, Aisc360Truss.Space);
        Printed.Agrees(legAxis, a.Value("L/r_a"), "L/r_a");
        Printed.Agrees(planar, a.Value("L_c/r"), "(a)");
        Printed.Agrees(planarDesign, a.DesignResistance / 1e3, "(a) φP_n");
        Printed.Agrees(space, b.Value("L_c/r"), "(b)");
        Printed.Agrees(spaceDesign, b.DesignResistance / 1e3, "(b) φP_n");
    }

    /// <summary>E7 worked a second time in another program on an outline of 60 000 straight pieces.</summary>
    [Theory]
    [InlineData(Aisc360Truss.Planar, 800, "1097.92", "186.65")]
    [InlineData(Aisc360Truss.Space, 600, "1030.36", "214.00")]
    public void Slender_legs_lose_area(Aisc360Truss truss, double length, string area, string design)
    {
        StandardResult result = Aisc360.SingleAngle(StandardStruts.Of(new Angle("thin", 100, 100, 6, 12, 6), length, 355), truss);
        Printed.Agrees(area, result.Step("A_e"), "A_e");
        Printed.Agrees(design, result.DesignResistance / 1e3, "φP_n");
    }

    [Theory]
    [InlineData(Aisc360Truss.Planar, 80, 132)]
    [InlineData(Aisc360Truss.Space, 75, 120)]
    public void The_two_branches_meet(Aisc360Truss truss, double legAxis, double modified)
    {
        StandardStrut strut = StandardStruts.Of("L 100x100x10", 2000, 235);
        foreach (double at in new[] { legAxis - 1e-9, legAxis + 1e-9 })
        {
            Closeness.Relative(modified, Aisc360.SingleAngle(strut.WithLength(at * strut.Section.RadiusParallel), truss).Value("L_c/r"), 1e-9, $"at {at}");
        }
    }

    /// <summary>L_c/r ≥ 0.95 L/r_z for a connected short leg, E5(a).</summary>
    [Fact]
    public void A_connected_short_leg_has_a_lower_limit_by_the_weak_axis()
    {
        StandardStrut strut = StandardStruts.Of("L 100x65x8", 2600, 235, leg: ConnectedLeg.Short);
        Closeness.Relative(0.95 * 2600 / strut.Section.RadiusV, Aisc360.SingleAngle(strut).Value("L_c/r"), 1e-12, "L_c/r");
    }

    [Fact]
    public void The_limit_of_the_leg_ratio_is_between_five_to_three_and_two_to_one()
    {
        Assert.True(Aisc360.SingleAngle(Example(60, ConnectedLeg.Long)).InScope);
        Assert.False(Aisc360.SingleAngle(StandardStruts.Of(new Angle("17 to 10", 170, 100, 12, 12, 6), 2000, 235)).InScope);
        Assert.Contains("less than 1.7", Aisc360.SingleAngle(StandardStruts.Of("L 150x75x10", 2000, 250)).Refusal, StringComparison.Ordinal);
    }
}
