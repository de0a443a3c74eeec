namespace StrutLessons.Standards;

/// <summary>What an angle strut belongs to in ANSI/AISC 360-22, E5.</summary>
public enum Aisc360Truss
{
    /// <summary>E5(a): an individual member, or a web member of a planar truss with its neighbours on the same side of the chord.</summary>
    Planar,

    /// <summary>E5(b): a web member of a box or space truss with its neighbours on the same side of the chord.</summary>
    Space,
}

/// <summary>
/// Single-angle compression members of ANSI/AISC 360-22, Sections E3, E5 and E7: the eccentricity is hidden in a slenderness that
/// starts from the leg axis. E = 200 000 MPa.
/// </summary>
public static class Aisc360
{
    private const double E = 200_000;

    /// <summary>The resistance, or a refusal outside the five conditions of E5.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="truss">Case (a) or (b).</param>
    /// <exception cref="InputException">Not a named case.</exception>
    public static StandardResult SingleAngle(StandardStrut strut, Aisc360Truss truss = Aisc360Truss.Planar)
    {
        ArgumentNullException.ThrowIfNull(strut);
        bool planar = Guard.Named(truss, "truss") == Aisc360Truss.Planar;
        string clause = planar ? "E5(a)" : "E5(b)", source = $"ANSI/AISC 360-22, {clause}";
        var rule = new StandardRule($"AISC 360-22, {clause}", "ANSI/AISC 360", "2022", $"{clause} with E3 and E7", E, "P_n");
        StandardSection s = strut.Section;
        double fy = strut.YieldStrength, length = strut.Length, root = Math.Sqrt(E / fy);

        double legAxis = length / s.RadiusParallel;
        AngleSlenderness choice = Slenderness(planar, legAxis);
        double addition = s.ByShortLeg ? (planar ? 4 : 6) * (s.LegRatio * s.LegRatio - 1) : 0;
        double modified = choice.Constant + choice.Factor * legAxis + addition;
        double leastShare = planar ? 0.95 : 0.82, least = s.ByShortLeg ? leastShare * length / s.RadiusV : 0;
        double ratio = Math.Max(modified, least);

        double fe = Math.PI * Math.PI * E / (ratio * ratio);
        bool inelastic = fy / fe <= 2.25;
        double fn = inelastic ? Math.Pow(0.658, fy / fe) * fy : 0.877 * fe;
        double longLeg = AiscSlenderLeg.EffectiveWidth(s.LongLeg, s.Thickness, fy, fn, E);
        double shortLeg = AiscSlenderLeg.EffectiveWidth(s.ShortLeg, s.Thickness, fy, fn, E);
        double area = s.Area - s.Thickness * (s.LongLeg - longLeg + s.ShortLeg - shortLeg), nominal = fn * area;

        const string chapterH = "Use Chapter H with the eccentric moments instead.";
        return new(rule, strut,
            [
                ScopeCondition.TwoBolts(strut, chapterH, "ANSI/AISC 360-22, E5(2)"),
                ScopeCondition.AtMost("slenderness L_c/r", ratio, "", 200, $"Shorten the strut or choose a larger angle. {chapterH}", "ANSI/AISC 360-22, E5(4)"),
                ScopeCondition.Below("ratio of the legs b_l/b_s", s.LegRatio, "", 1.7, chapterH, "ANSI/AISC 360-22, E5(5)"),
                ScopeCondition.AtMost("width of a leg over its thickness b/t", s.LongLeg / s.Thickness, "", 0.71 * root,
                    "Flexural-torsional buckling by E4 can govern such thin legs; it is not worked out here.", "ANSI/AISC 360-22, E4"),
                ScopeCondition.Assumed("the load acts at both ends through the same leg, with no transverse load between", "ANSI/AISC 360-22, E5(1) and (3)"),
                ScopeCondition.Assumed(planar
                    ? "individual member or planar truss; adjacent web members lie on the same side of the chord"
                    : "box or space truss; adjacent web members lie on the same side of the chord", source),
            ],
            [
                new("about the axis parallel to the connected leg", "L/r_a", legAxis),
                new("modified", "L_c/r", ratio),
            ],
            nominal,
            [
                new("resistance factor (LRFD)", @"\phi_c", 0.90, false, @"\phi_c P_n", "ANSI/AISC 360-22, E1"),
                new("safety factor (ASD)", @"\Omega_c", 1.67, true, @"P_n/\Omega_c", "ANSI/AISC 360-22, E1"),
            ],
            SlendernessSteps, StrengthSteps);

        IReadOnlyList<WorkedStep> SlendernessSteps()
        {
            string l = Tex.Number(length), add = $@" + {(planar ? 4 : 6)} \left[\left(\frac{{b_l}}{{b_s}}\right)^2 - 1\right]";
            string addNumbers = $@" + {(planar ? 4 : 6)} \cdot ((\frac{{{Tex.Number(s.LongLeg)}}}{{{Tex.Number(s.ShortLeg)}}})^2 - 1)";
            var steps = new List<WorkedStep>
            {
                new("Slenderness about the axis parallel to the connected leg", @"\frac{L}{r_a}", @"\frac{L}{r_a}", $@"\frac{{{l}}}{{{Tex.Number(s.RadiusParallel)}}}", legAxis, "", source),
            };
            steps.Add(least > modified
                ? new("Modified slenderness: the lower limit for a connected short leg governs", @"\frac{L_c}{r}", $@"{Tex.Number(leastShare)} \frac{{L}}{{r_z}}",
                    $@"{Tex.Number(leastShare)} \cdot \frac{{{l}}}{{{Tex.Number(s.RadiusV)}}}", ratio, "", source)
                : new("Modified slenderness", @"\frac{L_c}{r}", $@"{Tex.Number(choice.Constant)} + {Tex.Number(choice.Factor)} \frac{{L}}{{r_a}}" + (s.ByShortLeg ? add : ""),
                    $@"{Tex.Number(choice.Constant)} + {Tex.Number(choice.Factor)} \cdot {Tex.Number(legAxis)}" + (s.ByShortLeg ? addNumbers : ""), ratio, "", source));
            return steps;
        }

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            string fyText = Tex.Number(fy), feText = Tex.Number(fe);
            var steps = new List<WorkedStep>
            {
                new("Elastic buckling stress", "F_e", @"\frac{\pi^2 E}{(L_c/r)^2}", $@"\frac{{\pi^2 \cdot {Tex.Number(E)}}}{{{Tex.Number(ratio)}^2}}", fe, "MPa", "ANSI/AISC 360-22, (E3-4)"),
                inelastic
                    ? new("Nominal stress, inelastic buckling", "F_n", @"0.658^{F_y/F_e} F_y", $@"0.658^{{{fyText}/{feText}}} \cdot {fyText}", fn, "MPa", "ANSI/AISC 360-22, (E3-2)")
                    : new("Nominal stress, elastic buckling", "F_n", "0.877 F_e", $@"0.877 \cdot {feText}", fn, "MPa", "ANSI/AISC 360-22, (E3-3)"),
            };
            bool slender = area < s.Area;
            if (slender)
            {
                steps.Add(new("Effective area of slender legs", "A_e", @"A_g - t \sum (b - b_e)",
                    $@"{Tex.Number(s.Area)} - {Tex.Number(s.Thickness)} \cdot ({Tex.Number(s.LongLeg)} - {Tex.Number(longLeg)} + {Tex.Number(s.ShortLeg)} - {Tex.Number(shortLeg)})",
                    area, "mm²", "ANSI/AISC 360-22, E7"));
            }

            steps.Add(new("Nominal resistance", "P_n", slender ? "F_n A_e" : "F_n A_g", $@"{Tex.Number(fn)} \cdot {Tex.Number(area)} / 1000", nominal / 1e3, "kN", "ANSI/AISC 360-22, (E3-1)"));
            return steps;
        }
    }

    // Both pairs meet: (a) at L/r_a = 80, (b) at 75.
    private static AngleSlenderness Slenderness(bool planar, double legAxis) => planar
        ? legAxis <= 80 ? new(72, 0.75) : new(32, 1.25)
        : legAxis <= 75 ? new(60, 0.8) : new(45, 1.0);

    private readonly record struct AngleSlenderness(double Constant, double Factor);
}
