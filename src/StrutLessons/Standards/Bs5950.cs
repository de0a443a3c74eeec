namespace StrutLessons.Standards;

/// <summary>
/// Single-angle struts of BS 5950-1:2000, Table 25 with strut curve c of Annex C. E = 205 000 MPa. The rows for two bolts were seen
/// in a digest (the one about the axis b–b not: sources write 0.85 or 1.0); the rows for one bolt and the curve are from memory.
/// </summary>
public static class Bs5950
{
    private const double E = 205_000, Robertson = 5.5;
    private const string Table = "BS 5950-1:2000, Table 25";
    private const string Curve = "BS 5950-1:2000, Annex C (from memory)";

    /// <summary>The resistance. With one bolt at each end it is 0.8 times that of the strut curve, and the whole result is from memory.</summary>
    /// <param name="strut">The strut.</param>
    public static StandardResult SingleAngle(StandardStrut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        bool one = strut.OneBolt;
        var rule = new StandardRule(one ? "BS 5950-1, one bolt (from memory)" : "BS 5950-1", "BS 5950-1", "2000", "Table 25 and Annex C", E, "P_c", FromMemory: one);
        StandardSection s = strut.Section;
        double py = strut.YieldStrength, length = strut.Length, share = one ? 0.8 : 1;
        string table = one ? Table + " (from memory)" : Table;

        Row[] rows =
        [
            new("v", s.RadiusV, one ? 1.0 : 0.85, 0, table), new("v", s.RadiusV, 0.7, 15, table),
            new("a", s.RadiusParallel, 1.0, 0, table), new("a", s.RadiusParallel, 0.7, 30, table),
            new("b", s.RadiusNormal, one ? 1.0 : 0.85, 0, Table + " (from memory)"), new("b", s.RadiusNormal, 0.7, 30, Table + " (from memory)"),
        ];
        Row governing = rows.MaxBy(r => r.Slenderness(length));
        double slenderness = governing.Slenderness(length);

        double limit = 0.2 * Math.Sqrt(Math.PI * Math.PI * E / py);
        double perry = Math.Max(0, 0.001 * Robertson * (slenderness - limit));
        double euler = Math.PI * Math.PI * E / (slenderness * slenderness);
        double phi = 0.5 * (py + (perry + 1) * euler);
        double pc = euler * py / (phi + Math.Sqrt(phi * phi - euler * py));
        double nominal = share * pc * s.Area, epsilon = Math.Sqrt(275 / py);

        const string slender = "The section is slender: the reduced strength of 3.6 is not worked out here.";
        return new(rule, strut,
            [
                ScopeCondition.AtMost("width of a leg over its thickness b/t", s.LongLeg / s.Thickness, "", 15 * epsilon, slender, "BS 5950-1:2000, Table 11 (from memory)"),
                ScopeCondition.AtMost("both legs over the thickness (b + d)/t", (s.LongLeg + s.ShortLeg) / s.Thickness, "", 24 * epsilon, slender, "BS 5950-1:2000, Table 11 (from memory)"),
                ScopeCondition.Assumed("the gusset or the member connected holds the end in position", table),
            ],
            [.. rows.Select(r => new SlendernessValue($"row about {r.Axis}–{r.Axis}", r.Formula, r.Slenderness(length))), new("the largest", @"\lambda", slenderness)],
            nominal,
            [new("material factor inside the design strength; the loads carry the rest", @"\gamma_m", 1.0, true, "P_c", "BS 5950-1:2000, 2.1.3 (from memory)")],
            () => [.. rows.Select(r => new WorkedStep($"Row about {r.Axis}–{r.Axis}", $@"\lambda_{r.Axis}", r.Formula,
                $@"{Tex.Number(r.Factor)} \cdot \frac{{{Tex.Number(length)}}}{{{Tex.Number(r.Radius)}}} + {Tex.Number(r.Constant)}", r.Slenderness(length), "", r.Source))],
            StrengthSteps);

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            string l = Tex.Number(slenderness), p = Tex.Number(py), e = Tex.Number(euler), f = Tex.Number(phi);
            return
            [
                new("Largest slenderness", @"\lambda", governing.Formula, l, slenderness, "", governing.Source),
                new("Limiting slenderness", @"\lambda_0", @"0.2 \sqrt{\frac{\pi^2 E}{p_y}}", $@"0.2 \cdot \sqrt{{\frac{{\pi^2 \cdot {Tex.Number(E)}}}{{{p}}}}}", limit, "", Curve),
                new("Perry factor of curve c", @"\eta", @"\frac{a (\lambda - \lambda_0)}{1000} \ge 0",
                    perry > 0 ? $@"\frac{{{Tex.Number(Robertson)} \cdot ({l} - {Tex.Number(limit)})}}{{1000}}" : "0", perry, "", Curve),
                new("Euler stress", "p_E", @"\frac{\pi^2 E}{\lambda^2}", $@"\frac{{\pi^2 \cdot {Tex.Number(E)}}}{{{l}^2}}", euler, "MPa", Curve),
                new("Mean of the Perry formula", @"\phi", @"\frac{p_y + (\eta + 1) p_E}{2}", $@"\frac{{{p} + ({Tex.Number(perry)} + 1) \cdot {e}}}{{2}}", phi, "MPa", Curve),
                new("Compressive strength", "p_c", @"\frac{p_E p_y}{\phi + \sqrt{\phi^2 - p_E p_y}}", $@"\frac{{{e} \cdot {p}}}{{{f} + \sqrt{{{f}^2 - {e} \cdot {p}}}}}", pc, "MPa", Curve),
                new("Nominal resistance", "P_c", one ? "0.8 p_c A" : "p_c A", (one ? @"0.8 \cdot " : "") + $@"{Tex.Number(pc)} \cdot {Tex.Number(s.Area)} / 1000", nominal / 1e3, "kN", table),
            ];
        }
    }

    private readonly record struct Row(string Axis, double Radius, double Factor, double Constant, string Source)
    {
        internal double Slenderness(double length) => Factor * length / Radius + Constant;

        internal string Formula => $@"{Tex.Number(Factor)} \frac{{L}}{{r_{Axis}}}" + (Constant > 0 ? $" + {Tex.Number(Constant)}" : "");
    }
}
