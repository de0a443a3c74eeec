namespace StrutLessons.Standards;

/// <summary>Where the force of an angle acts, ASCE 10, 3.7: decides below L/r = 120.</summary>
public enum Asce10Eccentricity
{
    /// <summary>Concentric at both ends.</summary>
    None,

    /// <summary>Eccentric at one end.</summary>
    OneEnd,

    /// <summary>Eccentric at both ends, as a single angle bolted by one leg at each end.</summary>
    BothEnds,
}

/// <summary>How many ends are partially restrained against rotation, ASCE 10, 3.7: decides above L/r = 120.</summary>
public enum Asce10Restraint
{
    /// <summary>Both ends free to turn.</summary>
    None,

    /// <summary>One end partially restrained.</summary>
    OneEnd,

    /// <summary>Both ends partially restrained.</summary>
    BothEnds,
}

/// <summary>
/// Angles of lattice towers after ASCE/SEI 10-15 (ASCE 10-97 has the same numbers). E = 200 000 MPa. The slenderness rules were
/// seen in digests; the column formula and the reduction for thin legs are from memory.
/// </summary>
/// <remarks>
/// Sources differ on the flat width of a leg: b − t, or b − t − r₁. The second is used here, as in the standard's definition of w.
/// </remarks>
public static class Asce10
{
    private const double E = 200_000;
    private const string Source = "ASCE/SEI 10-15, 3.7";
    private const string Strength = "ASCE/SEI 10-15, 3.6 and 3.7 (from memory)";

    /// <summary>The nominal resistance of a bracing member, or a refusal beyond the limits of slenderness.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="restraint">Restraint of the ends, used above L/r = 120.</param>
    /// <param name="eccentricity">Eccentricity of the ends, used up to L/r = 120.</param>
    /// <exception cref="InputException">Not a named choice.</exception>
    public static StandardResult Bracing(
        StandardStrut strut, Asce10Restraint restraint = Asce10Restraint.BothEnds, Asce10Eccentricity eccentricity = Asce10Eccentricity.BothEnds)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Guard.Named(restraint, "restraint");
        Guard.Named(eccentricity, "eccentricity");
        bool restrained = restraint != Asce10Restraint.None;
        var rule = new StandardRule($"ASCE 10-15, {Words(restraint)}", "ASCE/SEI 10", "2015", "3.6 and 3.7", E, "P");
        StandardSection s = strut.Section;
        double fy = strut.YieldStrength, length = strut.Length;

        double ratio = length / s.RadiusV;
        bool stocky = ratio <= 120;
        (double constant, double factor) = stocky
            ? eccentricity switch { Asce10Eccentricity.None => (0.0, 1.0), Asce10Eccentricity.OneEnd => (30, 0.75), _ => (60, 0.5) }
            : restraint switch { Asce10Restraint.None => (0.0, 1.0), Asce10Restraint.OneEnd => (28.6, 0.762), _ => (46.2, 0.615) };
        double effective = constant + factor * ratio;

        double flat = (s.LongLeg - s.Thickness - s.Section.Angle.RootRadius) / s.Thickness;
        double limit = 80 * 2.62 / Math.Sqrt(fy);
        double local = flat <= limit ? fy
            : flat <= 1.8 * limit ? (1.677 - 0.677 * flat / limit) * fy
            : 0.0332 * Math.PI * Math.PI * E / (flat * flat);
        double critical = Math.PI * Math.Sqrt(2 * E / local);
        double stress = effective <= critical ? (1 - 0.5 * Math.Pow(effective / critical, 2)) * local : Math.PI * Math.PI * E / (effective * effective);
        double nominal = stress * s.Area;

        return new(rule, strut,
            [
                ScopeCondition.AtMost("slenderness KL/r", effective, "", 200, "A bracing member must be shorter or larger; redundant members have a limit of their own.", Source),
                ScopeCondition.AtMost("flat width of a leg over its thickness w/t", flat, "", 25, "Choose a thicker angle.", Source),
                stocky || !restrained
                    ? new("restraint of the ends", strut.Fasteners, "two bolts or more where restraint is counted on", ScopeState.Met, "Count on no restraint.", Source)
                    : ScopeCondition.TwoBolts(strut, "Count on no restraint at an end with one bolt.", Source),
                .. stocky || !restrained ? [] : (ScopeCondition[])[ScopeCondition.Assumed("the connected member is stiff enough to hold the end against turning", Source)],
            ],
            [new("on the full length about v–v", "L/r", ratio), new("effective", "KL/r", effective)],
            nominal,
            [new("no factor on the resistance: the loads carry the safety", @"\phi", 1.0, false, "P_d", "ASCE/SEI 10-15 (ultimate loads)")],
            SlendernessSteps, StrengthSteps);

        IReadOnlyList<WorkedStep> SlendernessSteps() =>
        [
            new("Slenderness about v–v", @"\frac{L}{r}", @"\frac{L}{r_v}", $@"\frac{{{Tex.Number(length)}}}{{{Tex.Number(s.RadiusV)}}}", ratio, "", Source),
            new(stocky ? $"Effective slenderness up to 120: {Words(eccentricity)}" : $"Effective slenderness above 120: {Words(restraint)}", @"\frac{KL}{r}",
                constant == 0 ? @"\frac{L}{r}" : $@"{Tex.Number(constant)} + {Tex.Number(factor)} \frac{{L}}{{r}}",
                $@"{Tex.Number(constant)} + {Tex.Number(factor)} \cdot {Tex.Number(ratio)}", effective, "", Source),
        ];

        IReadOnlyList<WorkedStep> StrengthSteps()
        {
            var steps = new List<WorkedStep>();
            string strength = "F_y";
            if (flat > limit)
            {
                strength = "F_{cr}";
                steps.Add(new("Slenderness of the flat part of the leg", @"\frac{w}{t}", @"\frac{b - t - r_1}{t}",
                    $@"\frac{{{Tex.Number(s.LongLeg)} - {Tex.Number(s.Thickness)} - {Tex.Number(s.Section.Angle.RootRadius)}}}{{{Tex.Number(s.Thickness)}}}", flat, "", Source));
                steps.Add(flat <= 1.8 * limit
                    ? new("Thin legs: reduced strength", strength, @"\left(1.677 - 0.677 \frac{w/t}{(w/t)_{lim}}\right) F_y",
                        $@"(1.677 - 0.677 \cdot \frac{{{Tex.Number(flat)}}}{{{Tex.Number(limit)}}}) \cdot {Tex.Number(fy)}", local, "MPa", Strength)
                    : new("Thin legs: reduced strength", strength, @"\frac{0.0332 \pi^2 E}{(w/t)^2}",
                        $@"\frac{{0.0332 \cdot \pi^2 \cdot {Tex.Number(E)}}}{{{Tex.Number(flat)}^2}}", local, "MPa", Strength));
            }

            string e = Tex.Number(E), kl = Tex.Number(effective);
            steps.Add(new("Slenderness where the curve turns elastic", "C_c", $@"\pi \sqrt{{\frac{{2E}}{{{strength}}}}}",
                $@"\pi \sqrt{{\frac{{2 \cdot {e}}}{{{Tex.Number(local)}}}}}", critical, "", Strength));
            steps.Add(effective <= critical
                ? new("Compressive stress", "F_a", $@"\left[1 - \tfrac12 \left(\frac{{KL/r}}{{C_c}}\right)^2\right] {strength}",
                    $@"(1 - 0.5 \cdot (\frac{{{kl}}}{{{Tex.Number(critical)}}})^2) \cdot {Tex.Number(local)}", stress, "MPa", Strength)
                : new("Compressive stress", "F_a", @"\frac{\pi^2 E}{(KL/r)^2}", $@"\frac{{\pi^2 \cdot {e}}}{{{kl}^2}}", stress, "MPa", Strength));
            steps.Add(new("Nominal resistance", "P", "F_a A", $@"{Tex.Number(stress)} \cdot {Tex.Number(s.Area)} / 1000", nominal / 1e3, "kN", Strength));
            return steps;
        }
    }

    private static string Words(Asce10Restraint restraint) => restraint switch
    {
        Asce10Restraint.None => "unrestrained",
        Asce10Restraint.OneEnd => "one end restrained",
        _ => "both ends restrained",
    };

    private static string Words(Asce10Eccentricity eccentricity) => eccentricity switch
    {
        Asce10Eccentricity.None => "concentric",
        Asce10Eccentricity.OneEnd => "eccentric at one end",
        _ => "eccentric at both ends",
    };
}
