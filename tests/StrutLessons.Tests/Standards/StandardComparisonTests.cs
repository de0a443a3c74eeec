using CsCheck;
using StrutLessons.Eccentricity;
using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Tests.Standards;

public class StandardComparisonTests
{
    private static readonly Strut Diagonal = Build();

    private static double LengthPerSlenderness => Diagonal.SystemLength / Diagonal.RelativeSlendernessV;

    /// <summary>ANSI/AISC 360-22, E5(4) with 32 + 1.25 L/r_a = 200 in (a) and 45 + L/r_a = 200 in (b); ASCE 10 with KL/r = 200.</summary>
    [Fact]
    public void A_curve_ends_where_its_standard_refuses()
    {
        StandardCurves curves = StandardCurves.Of(Diagonal, rules: RuleChoice.Pick("AISC a", "AISC b", "ASCE restrained", "ASCE unrestrained", "EN BB.1.2"), toSlenderness: 3.4);
        AngleSection s = Diagonal.Section;
        double[] ends = [168 / 1.25 * s.RadiusY, 155 * s.RadiusY, (200 - 46.2) / 0.615 * s.RadiusV, 200 * s.RadiusV];
        for (int i = 0; i < ends.Length; i++)
        {
            StandardCurve curve = curves.Curves[i];
            Closeness.Relative(ends[i] / LengthPerSlenderness, curve.EndSlenderness ?? 0, 1e-8, curve.Rule.Name);
            Assert.Contains("at most 200", curve.Refusal, StringComparison.Ordinal);
        }

        Assert.Null(curves.Curves[4].EndSlenderness);
        Assert.Null(curves.Curves[4].Refusal);
        Assert.Equal(curves.Model.Points.Count, curves.Curves[4].Points.Count);
    }

    [Fact]
    public void A_rule_that_refuses_every_length_has_an_empty_curve_with_its_reason()
    {
        StandardCurves curves = StandardCurves.Of(Diagonal, boltsPerEnd: 1, rules: RuleChoice.Pick("AISC a", "BS"));
        Assert.Empty(curves.Curves[0].Points);
        Assert.Contains("one bolt", curves.Curves[0].Refusal, StringComparison.Ordinal);
        Assert.NotEmpty(curves.Curves[1].Points);
    }

    [Fact]
    public void With_one_bolt_only_rules_that_know_it_answer()
    {
        StandardComparison one = StandardComparison.Of(Diagonal, boltsPerEnd: 1);
        string[] answering = [.. one.Results.Where(r => r.InScope).Select(r => r.Rule.Standard).Distinct()];
        // The concentric column of EN 1993-1-1 asks for no bolts, unrestrained ASCE struts neither.
        Assert.Equal(["EN 1993-1-1", "EN 1993-3-1", "ASCE/SEI 10", "IS 800", "BS 5950-1"], answering);
        StandardComparison two = StandardComparison.Of(Diagonal);
        Assert.All(two.Results, r => Assert.True(r.InScope, r.Refusal));
        foreach ((StandardResult few, StandardResult many) in one.Results.Zip(two.Results).Where(p => p.First.InScope))
        {
            Assert.True(few.NominalResistance <= many.NominalResistance, few.Rule.Name);
        }
    }

    [Fact]
    public void No_rule_knows_the_gusset()
    {
        StandardComparison soft = StandardComparison.Of(Diagonal.WithSprings(EndSpring.Hinged)), stiff = StandardComparison.Of(Diagonal.WithSprings(EndSpring.Rigid));
        Assert.Equal(soft.Results.Select(r => r.NominalResistance), stiff.Results.Select(r => r.NominalResistance));
        Assert.True(stiff.Real > 1.5 * soft.Real);
        Closeness.Relative(soft.Hinged, soft.Real, 1e-12, "hinged");
        Closeness.Relative(stiff.Rigid, stiff.Real, 1e-12, "rigid");
    }

    [Fact]
    public void Every_result_names_clause_edition_modulus_factor_and_scope()
    {
        foreach (StandardResult result in StandardComparison.Of(Diagonal).Results)
        {
            Assert.NotEmpty(result.Scope);
            Assert.All(result.Scope, c => Assert.False(string.IsNullOrWhiteSpace(c.Source)));
            Assert.All(new[] { result.Rule.Name, result.Rule.Standard, result.Rule.Edition, result.Rule.Clause }, t => Assert.False(string.IsNullOrWhiteSpace(t)));
            Assert.InRange(result.Rule.ElasticModulus, 200_000, 210_000);
            Assert.All(result.DesignValues, d => Assert.False(string.IsNullOrWhiteSpace(d.Factor.Name)));
            Assert.Equal(result.DesignResistance / 1e3, result.WorkedSteps()[^result.DesignValues.Count].Value);
        }
    }

    [Fact]
    public void A_longer_strut_is_never_stronger_and_none_beats_the_squash_load()
    {
        Gen<StandardStrut> struts =
            from angle in Gen.Int[0, AngleCatalogue.All.Count - 1]
            from shortLeg in Gen.Bool
            from yield in Gen.Double[200, 500]
            from bolts in Gen.Int[0, 3]
            from slenderness in Gen.Double[10, 320]
            let section = AngleCatalogue.All[angle].Connected(shortLeg ? ConnectedLeg.Short : ConnectedLeg.Long)
            select new StandardStrut(section, Steel.Custom("given", yield), Math.Max(slenderness * section.RadiusV, section.Angle.LongLeg), bolts);
        Gen.Select(struts, Gen.Double[1, 1.5]).Sample((strut, factor) =>
        {
            foreach (RuleChoice rule in RuleChoice.All)
            {
                StandardResult near = rule.Apply(strut), far = rule.Apply(strut.WithLength(factor * strut.Length));
                if (near.InScope)
                {
                    Assert.InRange(near.NominalResistance!.Value, 1, strut.SquashLoad * (1 + 1e-12));
                    Assert.InRange(near.DesignResistance!.Value, 1, near.NominalResistance.Value);
                }

                if (near.InScope && far.InScope)
                {
                    Assert.True(far.NominalResistance <= near.NominalResistance * (1 + 1e-12),
                        $"{near.Rule.Name}: {near.NominalResistance:G9} at {strut.Length:G9}, {far.NominalResistance:G9} at {far.Strut.Length:G9}");
                }
            }
        }, iter: 300);
    }

    private static Strut Build()
    {
        AngleSection section = AngleCatalogue.Find("L 80x80x8").Connected();
        var bolts = new BoltLine(45, 2, 20, 60, 40);
        JointHinge joint = GussetOnRigidSupport.HandFormula(Gusset.Symmetric(10, 160, 65, 40), section, bolts).Hinge;
        StrutEnd end = StrutEnd.Of(LoadPoint.Of(section, bolts, 10), joint);
        return new Strut(section, SteelGrade.S355.ForThickness(8), 2150, end, end);
    }
}
