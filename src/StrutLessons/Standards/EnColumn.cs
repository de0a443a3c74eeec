namespace StrutLessons.Standards;

/// <summary>Constant and factor of an effective slenderness λ̄_eff = constant + factor · λ̄.</summary>
internal readonly record struct EffectiveSlenderness(double Constant, double Factor)
{
    internal static EffectiveSlenderness Unchanged => new(0, 1);
}

/// <summary>The calculation that the Eurocode rules share: relative slenderness, effective slenderness, curve b, resistance.</summary>
internal static class EnColumn
{
    private const string General = "EN 1993-1-1:2005, 6.3.1.2 and 6.3.1.3";

    internal static StandardResult Result(
        StandardRule rule, StandardStrut strut, IReadOnlyList<ScopeCondition> scope,
        EffectiveSlenderness v, EffectiveSlenderness y, EffectiveSlenderness z, double fastenerFactor = 1)
    {
        StandardSection s = strut.Section;
        double fy = strut.YieldStrength, length = strut.Length;
        EnEffectiveArea effective = EnEffectiveArea.Of(s, fy);
        double lambda1 = Math.PI * Math.Sqrt(rule.ElasticModulus / fy);
        double areaShare = Math.Sqrt(effective.Area / s.Area);
        bool reduced = effective.Area < effective.Gross;
        Axis[] axes = [Of("v", s.RadiusV, v), Of("y", s.RadiusParallel, y), Of("z", s.RadiusNormal, z)];
        Axis governing = axes.MaxBy(a => a.Effective);
        double chi = EnBucklingCurve.ReductionFactor(Math.Min(governing.Effective, 20));
        double phi = EnBucklingCurve.Phi(governing.Effective, EnBucklingCurve.AlphaForAngles);
        double nominal = fastenerFactor * chi * effective.Area * fy;
        bool changed = v != EffectiveSlenderness.Unchanged;
        return new(rule, strut, scope,
            [
                .. axes.Select(a => new SlendernessValue($"relative slenderness about {a.Name}–{a.Name}", $@"\bar\lambda_{a.Name}", a.Relative)),
                .. changed ? axes.Select(a => new SlendernessValue($"effective slenderness about {a.Name}–{a.Name}", a.EffectiveSymbol, a.Effective)) : [],
                new("the largest", @"\bar\lambda", governing.Effective),
            ],
            nominal,
            [new("partial factor for buckling (recommended value)", @"\gamma_{M1}", 1.0, true, "N_{b,Rd}", "EN 1993-1-1:2005, 6.1")],
            SlendernessSteps, StrengthSteps);

        Axis Of(string name, double radius, EffectiveSlenderness e)
        {
            double relative = length / (radius * lambda1) * areaShare;
            return new(name, radius, relative, e, e.Constant + e.Factor * relative);
        }

        IReadOnlyList<WorkedStep> SlendernessSteps()
        {
            var steps = new List<WorkedStep>
            {
                new("Slenderness at which Euler's stress equals the yield strength", @"\lambda_1", @"\pi \sqrt{\frac{E}{f_y}}",
                    $@"\pi \sqrt{{\frac{{{Tex.Number(rule.ElasticModulus)}}}{{{Tex.Number(fy)}}}}}", lambda1, "", General),
            };
            if (reduced)
            {
                steps.Add(new("Effective area: the legs are class 4", "A_{eff}", @"A - t \sum (1 - \rho_i) b_i",
                    $@"{Tex.Number(s.Area)} - {Tex.Number(s.Thickness)} \cdot ({Tex.Number(1 - effective.LongLeg)} \cdot {Tex.Number(s.LongLeg)} + {Tex.Number(1 - effective.ShortLeg)} \cdot {Tex.Number(s.ShortLeg)})",
                    effective.Area, "mm²", "EN 1993-1-5:2006, 4.4 (from memory)"));
            }

            string share = reduced ? $@" \sqrt{{\frac{{{Tex.Number(effective.Area)}}}{{{Tex.Number(s.Area)}}}}}" : "";
            foreach (Axis a in axes)
            {
                steps.Add(new($"Relative slenderness about {a.Name}–{a.Name}", $@"\bar\lambda_{a.Name}",
                    $@"\frac{{L}}{{i_{a.Name} \lambda_1}}" + (reduced ? @" \sqrt{\frac{A_{eff}}{A}}" : ""),
                    $@"\frac{{{Tex.Number(length)}}}{{{Tex.Number(a.Radius)} \cdot {Tex.Number(lambda1)}}}" + share, a.Relative, "", General));
                if (changed)
                {
                    steps.Add(new($"Effective slenderness about {a.Name}–{a.Name}", a.EffectiveSymbol,
                        $@"{Tex.Number(a.Rule.Constant)} + {Tex.Number(a.Rule.Factor)} \bar\lambda_{a.Name}",
                        $@"{Tex.Number(a.Rule.Constant)} + {Tex.Number(a.Rule.Factor)} \cdot {Tex.Number(a.Relative)}", a.Effective, "", rule.Citation));
                }
            }

            return steps;
        }

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            string slenderness = Tex.Number(governing.Effective), area = reduced ? "A_{eff}" : "A";
            var steps = new List<WorkedStep>();
            if (chi < 1)
            {
                steps.Add(new($"Buckling curve b for the largest slenderness, about {governing.Name}–{governing.Name}", @"\Phi", @"0.5 [1 + \alpha (\bar\lambda - 0.2) + \bar\lambda^2]",
                    $@"0.5 \cdot (1 + {Tex.Number(EnBucklingCurve.AlphaForAngles)} \cdot ({slenderness} - 0.2) + {slenderness}^2)", phi, "", "EN 1993-1-1:2005, (6.49)"));
                steps.Add(new("Reduction factor", @"\chi", @"\frac{1}{\Phi + \sqrt{\Phi^2 - \bar\lambda^2}}",
                    $@"\frac{{1}}{{{Tex.Number(phi)} + \sqrt{{{Tex.Number(phi)}^2 - {slenderness}^2}}}}", chi, "", "EN 1993-1-1:2005, (6.49)"));
            }
            else
            {
                steps.Add(new("Reduction factor of a stocky strut", @"\chi", "1", "1", chi, "", "EN 1993-1-1:2005, 6.3.1.2(4)"));
            }

            steps.Add(new("Nominal resistance", "N_{b,Rk}", (fastenerFactor < 1 ? "0.8 " : "") + $@"\chi {area} f_y",
                (fastenerFactor < 1 ? $@"{Tex.Number(fastenerFactor)} \cdot " : "") + $@"{Tex.Number(chi)} \cdot {Tex.Number(effective.Area)} \cdot {Tex.Number(fy)} / 1000",
                nominal / 1e3, "kN", rule.Citation));
            return steps;
        }
    }

    private readonly record struct Axis(string Name, double Radius, double Relative, EffectiveSlenderness Rule, double Effective)
    {
        internal string EffectiveSymbol => $@"\bar\lambda_{{eff,{Name}}}";
    }
}
