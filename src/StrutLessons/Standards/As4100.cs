namespace StrutLessons.Standards;

/// <summary>
/// Equal angles loaded through one leg as web members, AS 4100:2020, 8.4.6 with Amendment 1: the only rule here that takes the eccentricity as
/// a moment. E = 200 000 MPa (inside its constants). The clause was seen in a digest; 6.3.3, 5.6.1 and the limit of the legs are from memory.
/// </summary>
/// <remarks>
/// The section moduli are elastic (Z_e = Z); compact legs may take more. The bending is uniform along the strut (β_m = −1, α_m = 1).
/// The web members lie on the same side of the chord, so that e = c_h − t/2.
/// </remarks>
public static class As4100
{
    private const double E = 200_000, SectionConstant = 0.5, Uniform = -1;
    private const string Clause = "AS 4100:2020, 8.4.6";
    private const string Column = "AS 4100:2020, 6.3.3 (from memory)";

    private static readonly StandardRule Rule = new("AS 4100, 8.4.6", "AS 4100", "2020", "8.4.6, 8.3.4 and 6.3.3", E, "N");

    /// <summary>The force at which the member or the section interaction reaches 1, whichever comes first.</summary>
    /// <param name="strut">The strut.</param>
    public static StandardResult WebMember(StandardStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        StandardSection s = strut.Section;
        double fy = strut.YieldStrength, length = strut.Length, t = s.Thickness, root = Math.Sqrt(fy / 250);

        double modified = length / s.RadiusParallel * root;
        As4100Column.Factors column = As4100Column.Find(modified, SectionConstant);
        double section = s.Area * fy, member = column.AlphaC * section;

        double eccentricity = s.Section.CentroidZ - t / 2, cosine = Math.Abs(s.Section.AxisU.Y), sine = Math.Abs(s.Section.AxisU.Z);
        double yieldU = fy * s.ModulusU, yieldV = fy * s.ModulusV;
        bool full = length / t <= (210 + 175 * Uniform) * 250 / fy;
        double elastic = 525 * t / length * (250 / fy) * yieldU, ratio = yieldU / elastic;
        double alphaS = full ? 1 : Math.Min(1, 0.6 * (Math.Sqrt(ratio * ratio + 3) - ratio));
        double bending = alphaS * yieldU;

        double byMember = 1 / (1 / member + eccentricity / (bending * cosine));
        double bySection = 1 / (1 / section + eccentricity * cosine / yieldU + eccentricity * sine / yieldV);
        double nominal = Math.Min(byMember, bySection);

        return new(Rule, strut,
            [
                ScopeCondition.TwoBolts(strut, "Take the moments at the ends by 8.4.5.", Clause),
                ScopeCondition.AtMost("ratio of the legs", s.LegRatio, "", 1, "The moment capacity of unequal legs was not seen and is not worked out here.", Clause),
                ScopeCondition.AtMost("slenderness of a leg (b − t)/t √(f_y/250)", (s.LongLeg - t) / t * root, "", 16,
                    "The legs are slender: the form factor is not worked out here.", "AS 4100:2020, Table 6.2.4 (from memory)"),
                ScopeCondition.Assumed("web members lie on the same side of the chord", Clause),
            ],
            [new("modified, about the axis parallel to the loaded leg", @"\lambda_n", modified), new("with the section constant", @"\lambda", column.Slenderness)],
            nominal,
            [new("capacity factor", @"\phi", 0.9, false, @"\phi N", "AS 4100:2020, Table 3.4")],
            () =>
            [
                new("Modified slenderness about the axis h parallel to the loaded leg", @"\lambda_n", @"\frac{l_e}{r_h} \sqrt{\frac{f_y}{250}}",
                    $@"\frac{{{Tex.Number(length)}}}{{{Tex.Number(s.RadiusParallel)}}} \cdot \sqrt{{\frac{{{Tex.Number(fy)}}}{{250}}}}", modified, "", Column),
                new("Slenderness factor", @"\alpha_a", @"\frac{2100 (\lambda_n - 13.5)}{\lambda_n^2 - 15.3 \lambda_n + 2050}",
                    $@"\frac{{2100 \cdot ({Tex.Number(modified)} - 13.5)}}{{{Tex.Number(modified)}^2 - 15.3 \cdot {Tex.Number(modified)} + 2050}}", column.AlphaA, "", Column),
                new("Slenderness", @"\lambda", @"\lambda_n + \alpha_a \alpha_b", $@"{Tex.Number(modified)} + {Tex.Bracketed(column.AlphaA)} \cdot {Tex.Number(SectionConstant)}", column.Slenderness, "", Column),
            ],
            StrengthSteps);

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            string l = Tex.Number(column.Slenderness), xi = Tex.Number(column.Xi), e = Tex.Number(eccentricity);
            string ms = Tex.Number(yieldU / 1e6), mb = Tex.Number(bending / 1e6), ns = Tex.Number(section / 1e3), nc = Tex.Number(member / 1e3);
            var steps = new List<WorkedStep>
            {
                new("Imperfection", @"\eta", @"0.00326 (\lambda - 13.5) \ge 0", column.Eta > 0 ? $@"0.00326 \cdot ({l} - 13.5)" : "0", column.Eta, "", Column),
                new("Compression factor", @"\xi", @"\frac{(\lambda/90)^2 + 1 + \eta}{2 (\lambda/90)^2}",
                    $@"\frac{{({l}/90)^2 + 1 + {Tex.Number(column.Eta)}}}{{2 \cdot ({l}/90)^2}}", column.Xi, "", Column),
                column.AlphaC < 1
                    ? new("Reduction factor", @"\alpha_c", @"\xi \left[1 - \sqrt{1 - \left(\tfrac{90}{\xi \lambda}\right)^2}\right]",
                        $@"\frac{{{xi} \cdot (90/({xi} \cdot {l}))^2}}{{1 + \sqrt{{1 - (90/({xi} \cdot {l}))^2}}}}", column.AlphaC, "", Column)
                    : new("Reduction factor of a stocky strut", @"\alpha_c", "1", "1", column.AlphaC, "", Column),
                new("Section capacity", "N_s", "A f_y", $@"{Tex.Number(s.Area)} \cdot {Tex.Number(fy)} / 1000", section / 1e3, "kN", "AS 4100:2020, 6.2"),
                new("Member capacity about h", "N_{ch}", @"\alpha_c N_s", $@"{Tex.Number(column.AlphaC)} \cdot {ns}", member / 1e3, "kN", Column),
                new("Eccentricity", "e", @"c_h - \frac{t}{2}", $@"{Tex.Number(s.Section.CentroidZ)} - {Tex.Number(t)}/2", eccentricity, "mm", Clause),
                new("Section moment about the major axis", "M_{sx}", "f_y Z_x", $@"{Tex.Number(fy)} \cdot {Tex.Number(s.ModulusU / 1e3)} / 1000", yieldU / 1e6, "kNm", "AS 4100:2020, 5.2 with Z_e = Z"),
            };
            if (!full)
            {
                steps.Add(new("Elastic lateral buckling moment", "M_o", @"\frac{525 t}{l} \frac{250}{f_y} M_{sx}",
                    $@"\frac{{525 \cdot {Tex.Number(t)}}}{{{Tex.Number(length)}}} \cdot \frac{{250}}{{{Tex.Number(fy)}}} \cdot {ms}", elastic / 1e6, "kNm", Clause));
                steps.Add(new("Slenderness reduction in bending", @"\alpha_s", @"0.6 \left[\sqrt{\left(\tfrac{M_{sx}}{M_o}\right)^2 + 3} - \tfrac{M_{sx}}{M_o}\right] \le 1",
                    alphaS < 1 ? $@"0.6 \cdot (\sqrt{{{Tex.Number(ratio)}^2 + 3}} - {Tex.Number(ratio)})" : "1", alphaS, "", "AS 4100:2020, 5.6.1.1 (from memory)"));
            }

            steps.Add(new("Member moment about the major axis", "M_{bx}", full ? "M_{sx}" : @"\alpha_s M_{sx}", $@"{Tex.Number(alphaS)} \cdot {ms}", bending / 1e6, "kNm", Clause));
            steps.Add(new("Force by the member interaction", "N_1", @"\left(\frac{1}{N_{ch}} + \frac{e}{M_{bx} \cos\alpha}\right)^{-1}",
                $@"\frac{{1}}{{\frac{{1}}{{{nc}}} + \frac{{{e}}}{{{mb} \cdot {Tex.Number(cosine)} \cdot 1000}}}}", byMember / 1e3, "kN", Clause));
            steps.Add(new("Force by the section interaction", "N_2", @"\left(\frac{1}{N_s} + \frac{e \cos\alpha}{M_{sx}} + \frac{e \sin\alpha}{M_{sy}}\right)^{-1}",
                $@"\frac{{1}}{{\frac{{1}}{{{ns}}} + \frac{{{e} \cdot {Tex.Number(cosine)}}}{{{ms} \cdot 1000}} + \frac{{{e} \cdot {Tex.Number(sine)}}}{{{Tex.Number(yieldV / 1e6)} \cdot 1000}}}}",
                bySection / 1e3, "kN", "AS 4100:2020, 8.3.4 (from memory)"));
            steps.Add(new("Nominal resistance, the smaller", "N", @"\min(N_1, N_2)", Tex.Number(nominal / 1e3), nominal / 1e3, "kN", Clause));
            return steps;
        }
    }
}
