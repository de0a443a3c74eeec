using StrutLessons.Materials;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Tests.Standards;

public class En1993Tests
{
    /// <summary>
    /// A published hand calculation after BB.1.2: L 100x100x10, S235, L = 5315 mm, with printed A = 1920 mm², i_v = 19.50 mm, i_y = 30.36 mm.
    /// It rounds λ₁ to 93.9 and carries its rounded slenderness on.
    /// </summary>
    [Fact]
    public void The_published_diagonal_of_five_metres_comes_out()
    {
        StandardSection section = StandardSection.Of(AngleCatalogue.Find("L 100x100x10").Connected())
            .WithPrinted(area: 1920, radiusV: 19.50, radiusParallel: 30.36, radiusNormal: 30.36);
        StandardResult result = En1993.WebMemberStrut(new StandardStrut(section, Steel.Custom("S235", 235), 5315)).OrThrow();
        double roundedLambda1 = result.Step(@"\lambda_1") / 93.9;
        Printed.Agrees("93.9", result.Step(@"\lambda_1"), "λ1");
        Printed.Agrees("2.903", result.Value(@"\bar\lambda_v") * roundedLambda1, "λ̄_v");
        Printed.Agrees("2.382", result.Value(@"\bar\lambda_{eff,v}"), "λ̄_eff,v");
        Printed.Agrees("1.805", result.Value(@"\bar\lambda_{eff,y}"), "λ̄_eff,y");
        // dΦ/dλ̄ = α/2 + λ̄ on the rounding of λ̄_eff,v.
        Closeness.Relative(3.708, result.Step(@"\Phi"), 0.0005 + (0.17 + 2.382) * 0.0005, "Φ", scale: 1);
        Printed.Agrees("0.1527", result.Step(@"\chi"), "χ");
        Printed.Agrees("68.9", result.DesignResistance / 1e3, "N_b,Rd");
    }

    /// <summary>Recomputed from the clauses on integrated section values: BB.1.2 and, last column, 6.3.1 alone.</summary>
    [Theory]
    [InlineData("L 80x80x8", 2000, 275, "1.476", "1.383", "0.949", "1.165", "131.2", "118.5")]
    [InlineData("L 100x100x10", 2000, 235, "1.091", "1.114", "0.701", "0.991", "237.3", "243.4")]
    [InlineData("L 100x100x10", 3000, 355, "2.011", "1.758", "1.293", "1.405", "178.6", "141.0")]
    [InlineData("L 120x120x12", 3500, 355, "1.952", "1.717", "1.254", "1.378", "267.4", "213.8")]
    public void The_recomputed_table_comes_out(
        string angle, double length, double yield, string v, string effectiveV, string y, string effectiveY, string resistance, string concentric)
    {
        StandardStrut strut = StandardStruts.Of(angle, length, yield);
        StandardResult result = En1993.WebMemberStrut(strut);
        Printed.Agrees(v, result.Value(@"\bar\lambda_v"), "λ̄_v");
        Printed.Agrees(effectiveV, result.Value(@"\bar\lambda_{eff,v}"), "λ̄_eff,v");
        Printed.Agrees(y, result.Value(@"\bar\lambda_y"), "λ̄_y");
        Printed.Agrees(effectiveY, result.Value(@"\bar\lambda_{eff,y}"), "λ̄_eff,y");
        Printed.Agrees(resistance, result.DesignResistance / 1e3, "BB.1.2");
        Printed.Agrees(concentric, En1993.ConcentricStrut(strut).DesignResistance / 1e3, "6.3.1");
    }

    /// <summary>EN 1993-1-5:2006, 4.4 worked a second time in another program on an outline of 60 000 straight pieces.</summary>
    [Theory]
    [InlineData(100, 100, 6, 355, 2500, "0.75374", "0.75374", "883.94", "126.38", "115.74")]
    [InlineData(150, 100, 8, 355, 3000, "0.68534", "0.93593", "1522.60", "193.29", "169.07")]
    public void Class_4_legs_lose_area(
        double a, double b, double t, double yield, double length, string longLeg, string shortLeg, string area, string webMember, string concentric)
    {
        StandardStrut strut = StandardStruts.Of(new Angle("class 4", a, b, t, 12, 6), length, yield);
        EnEffectiveArea effective = EnEffectiveArea.Of(strut.Section, yield);
        Assert.True(effective.IsClass4);
        Printed.Agrees(longLeg, effective.LongLeg, "ρ of the long leg");
        Printed.Agrees(shortLeg, effective.ShortLeg, "ρ of the short leg");
        Printed.Agrees(area, effective.Area, "A_eff");
        Printed.Agrees(webMember, En1993.WebMemberStrut(strut).NominalResistance / 1e3, "BB.1.2");
        Printed.Agrees(concentric, En1993.ConcentricStrut(strut).NominalResistance / 1e3, "6.3.1");
    }

    [Fact]
    public void A_leg_beyond_class_3_by_the_mean_limit_may_still_keep_its_whole_area()
    {
        EnEffectiveArea effective = EnEffectiveArea.Of(StandardStruts.Of("L 80x80x8", 2150, 355).Section, 355);
        Assert.True(effective.IsClass4);
        Assert.Equal(effective.Gross, effective.Area);
    }

    /// <summary>λ̄ = 0.35 + 0.7 λ̄ at λ̄ = 0.35/0.3.</summary>
    [Theory]
    [InlineData(1.10, false)]
    [InlineData(1.24, true)]
    public void The_effective_slenderness_helps_slender_struts_and_burdens_stocky_ones(double slenderness, bool helps)
    {
        StandardStrut strut = StandardStruts.Of("L 100x100x10", 2000, 235);
        double unit = En1993.ConcentricStrut(strut).Value(@"\bar\lambda_v") / 2000;
        StandardStrut at = strut.WithLength(slenderness / unit);
        Assert.Equal(helps, En1993.WebMemberStrut(at).NominalResistance > En1993.ConcentricStrut(at).NominalResistance);
    }

    [Fact]
    public void Annex_G_is_marked_as_remembered_and_repeats_BB12_where_the_weak_axis_governs()
    {
        StandardStrut strut = StandardStruts.Of("L 80x80x8", 3000, 235);
        StandardResult remembered = En1993AnnexG.Bracing(strut);
        Assert.True(remembered.Rule.FromMemory);
        Assert.Contains("from memory", remembered.Rule.Name, StringComparison.Ordinal);
        Closeness.Relative(En1993.WebMemberStrut(strut).NominalResistance!.Value, remembered.NominalResistance!.Value, 1e-12, "k λ̄_v = 0.35 + 0.7 λ̄_v");
        Assert.False(En1993.WebMemberStrut(strut).Rule.FromMemory);
    }
}
