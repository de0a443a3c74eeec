namespace StrutLessons.Standards;

/// <summary>
/// Single angles loaded through one leg, IS 800:2007, 7.5.1.2 with Table 12 and buckling class c. E = 200 000 MPa.
/// The formula and its constants were seen in a digest; the limits of slenderness and of the legs are from memory.
/// </summary>
public static class Is800
{
    private const double E = 200_000, Alpha = 0.49;
    private const string Source = "IS 800:2007, 7.5.1.2 and Table 12";

    /// <summary>The resistance; one bolt has constants of its own.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="fixity">1 for a gusset that is fixed, 0 for a hinged one; between them λ_e is interpolated (partial restraint).</param>
    /// <exception cref="InputException">The fixity is not between 0 and 1.</exception>
    public static StandardResult SingleAngle(StandardStrut strut, double fixity)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Guard.Within(fixity, 0, 1, "fixity", "", "Give 1 for a fixed gusset, 0 for a hinged one, or a number between.");
        string name = fixity switch { 1 => "fixed", 0 => "hinged", _ => $"fixity {Guard.Text(fixity)}" };
        var rule = new StandardRule($"IS 800, {name}", "IS 800", "2007", "7.5.1.2 and Table 12", E, "P");
        StandardSection s = strut.Section;
        double fy = strut.YieldStrength, epsilon = Math.Sqrt(250 / fy), reference = epsilon * Math.Sqrt(Math.PI * Math.PI * E / 250);

        double aboutV = strut.Length / s.RadiusV / reference;
        double legs = (s.LongLeg + s.ShortLeg) / (2 * s.Thickness) / reference;
        Constants fixedEnd = strut.OneBolt ? new(0.75, 0.35, 20) : new(0.20, 0.35, 20);
        Constants hinged = strut.OneBolt ? new(1.25, 0.50, 60) : new(0.70, 0.60, 5);
        double fixedSlenderness = fixedEnd.Equivalent(aboutV, legs), hingedSlenderness = hinged.Equivalent(aboutV, legs);
        double equivalent = hingedSlenderness + fixity * (fixedSlenderness - hingedSlenderness);

        double phi = 0.5 * (1 + Alpha * (equivalent - 0.2) + equivalent * equivalent);
        double chi = Math.Min(1, 1 / (phi + Math.Sqrt(phi * phi - equivalent * equivalent)));
        double nominal = chi * fy * s.Area;

        const string slender = "The section is slender: the effective section is not worked out here.";
        return new(rule, strut,
            [
                ScopeCondition.AtMost("slenderness l/r_vv", strut.Length / s.RadiusV, "", 250, "Shorten the strut or choose a larger angle.", "IS 800:2007, Table 3, bracing under wind or earthquake (from memory)"),
                ScopeCondition.AtMost("width of a leg over its thickness b/t", s.LongLeg / s.Thickness, "", 15.7 * epsilon, slender, "IS 800:2007, Table 2 (from memory)"),
                ScopeCondition.AtMost("both legs over the thickness (b + d)/t", (s.LongLeg + s.ShortLeg) / s.Thickness, "", 25 * epsilon, slender, "IS 800:2007, Table 2 (from memory)"),
                ScopeCondition.Assumed($"the gusset restrains the strut as said: {name}", Source),
            ],
            [
                new("about v–v, non-dimensional", @"\lambda_{vv}", aboutV), new("of the legs in torsion", @"\lambda_\varphi", legs),
                new("equivalent", @"\lambda_e", equivalent),
            ],
            nominal,
            [new("partial factor against yielding and buckling", @"\gamma_{m0}", 1.10, true, "P_d", "IS 800:2007, Table 5")],
            SlendernessSteps, StrengthSteps);

        IReadOnlyList<WorkedStep> SlendernessSteps()
        {
            string unit = $@"{Tex.Number(epsilon)} \cdot \sqrt{{\pi^2 \cdot {Tex.Number(E)}/250}}";
            var steps = new List<WorkedStep>
            {
                new("Yield strength against 250 MPa", @"\varepsilon", @"\sqrt{250/f_y}", $@"\sqrt{{250/{Tex.Number(fy)}}}", epsilon, "", Source),
                new("Slenderness about v–v", @"\lambda_{vv}", @"\frac{l/r_{vv}}{\varepsilon \sqrt{\pi^2 E/250}}",
                    $@"\frac{{{Tex.Number(strut.Length)}/{Tex.Number(s.RadiusV)}}}{{{unit}}}", aboutV, "", Source),
                new("Slenderness of the legs in torsion", @"\lambda_\varphi", @"\frac{(b_1 + b_2)/(2t)}{\varepsilon \sqrt{\pi^2 E/250}}",
                    $@"\frac{{({Tex.Number(s.LongLeg)} + {Tex.Number(s.ShortLeg)})/(2 \cdot {Tex.Number(s.Thickness)})}}{{{unit}}}", legs, "", Source),
            };
            if (fixity > 0)
            {
                steps.Add(fixedEnd.Step("fixed", fixity == 1 ? @"\lambda_e" : @"\lambda_{e,fixed}", aboutV, legs, fixedSlenderness));
            }

            if (fixity < 1)
            {
                steps.Add(hinged.Step("hinged", fixity == 0 ? @"\lambda_e" : @"\lambda_{e,hinged}", aboutV, legs, hingedSlenderness));
            }

            if (fixity is > 0 and < 1)
            {
                steps.Add(new("Equivalent slenderness, interpolated", @"\lambda_e", @"\lambda_{e,hinged} + f (\lambda_{e,fixed} - \lambda_{e,hinged})",
                    $@"{Tex.Number(hingedSlenderness)} + {Tex.Number(fixity)} \cdot ({Tex.Number(fixedSlenderness)} - {Tex.Number(hingedSlenderness)})", equivalent, "", Source));
            }

            return steps;
        }

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            string e = Tex.Number(equivalent), p = Tex.Number(phi);
            return
            [
                new("Buckling class c", @"\phi", @"0.5 [1 + \alpha (\lambda_e - 0.2) + \lambda_e^2]", $@"0.5 \cdot (1 + {Tex.Number(Alpha)} \cdot ({e} - 0.2) + {e}^2)", phi, "", "IS 800:2007, 7.1.2.1"),
                chi < 1
                    ? new("Reduction factor", @"\chi", @"\frac{1}{\phi + \sqrt{\phi^2 - \lambda_e^2}}", $@"\frac{{1}}{{{p} + \sqrt{{{p}^2 - {e}^2}}}}", chi, "", "IS 800:2007, 7.1.2.1")
                    : new("Reduction factor of a stocky strut", @"\chi", "1", "1", chi, "", "IS 800:2007, 7.1.2.1"),
                new("Nominal resistance", rule.NominalSymbol, @"\chi A f_y", $@"{Tex.Number(chi)} \cdot {Tex.Number(s.Area)} \cdot {Tex.Number(fy)} / 1000", nominal / 1e3, "kN", "IS 800:2007, 7.1.2"),
            ];
        }
    }

    /// <summary>A row of Table 12.</summary>
    private readonly record struct Constants(double K1, double K2, double K3)
    {
        internal double Equivalent(double aboutV, double legs) => Math.Sqrt(K1 + K2 * aboutV * aboutV + K3 * legs * legs);

        internal WorkedStep Step(string end, string symbol, double aboutV, double legs, double value) => new(
            $"Equivalent slenderness, {end} gusset", symbol, @"\sqrt{k_1 + k_2 \lambda_{vv}^2 + k_3 \lambda_\varphi^2}",
            $@"\sqrt{{{Tex.Number(K1)} + {Tex.Number(K2)} \cdot {Tex.Number(aboutV)}^2 + {Tex.Number(K3)} \cdot {Tex.Number(legs)}^2}}", value, "", Source);
    }
}
