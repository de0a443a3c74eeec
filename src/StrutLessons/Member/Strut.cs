using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Member;

/// <summary>
/// A single-angle strut ready to be solved: section, steel, lengths, two ends, and the bows to be tried. Immutable.
/// </summary>
/// <remarks>
/// Theory: linearised second order (Euler–Bernoulli, plane sections, small slopes), elastic, no twist. Compression is positive.
/// The system length runs from hinge to hinge; the bar itself lies between the first bolts, the rest are rigid arms.
/// </remarks>
public sealed record Strut
{
    /// <summary>The bow that is usual for this theory, as a part of the system length: L/300.</summary>
    public const double UsualBowRatio = 1.0 / 300;

    /// <summary>A strut with its bows given one by one.</summary>
    /// <param name="section">Section with its connected leg.</param>
    /// <param name="steel">Yield strength and modulus.</param>
    /// <param name="systemLength">From hinge to hinge, mm.</param>
    /// <param name="end1">End at x = 0.</param>
    /// <param name="end2">End at x = L.</param>
    /// <param name="bows">One or more bows; each is tried, the lowest capacity governs.</param>
    /// <exception cref="InputException">Length not positive, shorter than the arms, or no bow named.</exception>
    public Strut(AngleSection section, Steel steel, double systemLength, StrutEnd end1, StrutEnd end2, params IReadOnlyList<Bow> bows)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(steel);
        ArgumentNullException.ThrowIfNull(end1);
        ArgumentNullException.ThrowIfNull(end2);
        ArgumentNullException.ThrowIfNull(bows);
        const string metres = "Give the length from hinge to hinge in mm.";
        Guard.Positive(systemLength, "system length", "mm", metres);
        double arms = end1.ArmLength + end2.ArmLength;
        if (systemLength <= arms)
        {
            throw Guard.Fail(systemLength, "system length", "mm", $"more than the two rigid arms together, {Guard.Text(arms)} mm",
                "The system length runs from hinge to hinge and contains the arms; check that it is in mm.");
        }

        if (bows.Count == 0)
        {
            throw new InputException("bows", "none", "at least one bow", "Give Bow.None for a straight strut.");
        }

        foreach (Bow bow in bows)
        {
            ArgumentNullException.ThrowIfNull(bow);
            Guard.Within(bow.Amplitude, 0, systemLength / 10, "bow amplitude e0", "mm",
                "The theory holds for small bows; usual is the length divided by 300. Check that it is in mm.");
        }

        Section = section;
        Steel = steel;
        SystemLength = systemLength;
        End1 = end1;
        End2 = end2;
        Bows = [.. bows];
    }

    /// <summary>A strut with the usual bow of L/300 in the directions of a search rule.</summary>
    /// <exception cref="InputException">As the other constructor.</exception>
    public Strut(AngleSection section, Steel steel, double systemLength, StrutEnd end1, StrutEnd end2,
        BowSearch search = BowSearch.BothSigns)
        : this(section, steel, systemLength, end1, end2, UsualBows(section, systemLength, search))
    {
    }

    /// <summary>Section with its connected leg.</summary>
    public AngleSection Section { get; }

    /// <summary>Yield strength and modulus.</summary>
    public Steel Steel { get; }

    /// <summary>Length from hinge to hinge, mm.</summary>
    public double SystemLength { get; }

    /// <summary>Length of the elastic bar between the first bolts, mm.</summary>
    public double BarLength => SystemLength - End1.ArmLength - End2.ArmLength;

    /// <summary>End at x = 0.</summary>
    public StrutEnd End1 { get; }

    /// <summary>End at x = L.</summary>
    public StrutEnd End2 { get; }

    /// <summary>The bows to be tried.</summary>
    public IReadOnlyList<Bow> Bows { get; }

    /// <summary>N_pl = A f_y, N.</summary>
    public double SquashLoad => Section.Area * Steel.YieldStrength;

    /// <summary>N_Ev = π² E I_v/L² of the bar hinged at both ends of the system length, N.</summary>
    public double EulerLoadV => Math.PI * Math.PI * Steel.ElasticModulus * Section.SecondMomentV / (SystemLength * SystemLength);

    /// <summary>N_Eu = π² E I_u/L², N.</summary>
    public double EulerLoadU => Math.PI * Math.PI * Steel.ElasticModulus * Section.SecondMomentU / (SystemLength * SystemLength);

    /// <summary>Relative slenderness λ̄_v = √(A f_y/N_Ev) on the system length (EN 1993-1-1:2005, 6.3.1.2).</summary>
    public double RelativeSlendernessV => Math.Sqrt(SquashLoad / EulerLoadV);

    /// <summary>The same strut with other ends.</summary>
    /// <exception cref="InputException">The arms no longer fit.</exception>
    public Strut WithEnds(StrutEnd end1, StrutEnd end2) => new(Section, Steel, SystemLength, end1, end2, Bows);

    /// <summary>The same strut with both springs replaced; load points and arms stay.</summary>
    public Strut WithSprings(EndSpring spring) => WithEnds(End1.With(spring), End2.With(spring));

    /// <summary>The same strut with other bows.</summary>
    /// <exception cref="InputException">No bow, or one too large.</exception>
    public Strut WithBows(params IReadOnlyList<Bow> bows) => new(Section, Steel, SystemLength, End1, End2, bows);

    /// <summary>The same strut at another system length, its bows scaled with the length.</summary>
    /// <exception cref="InputException">The length is not positive or shorter than the arms.</exception>
    public Strut WithLength(double systemLength)
    {
        Guard.Positive(systemLength, "system length", "mm", "Give the length from hinge to hinge in mm.");
        double scale = systemLength / SystemLength;
        return new(Section, Steel, systemLength, End1, End2, [.. Bows.Select(b => b.Scaled(scale))]);
    }

    private static IReadOnlyList<Bow> UsualBows(AngleSection section, double length, BowSearch search)
    {
        ArgumentNullException.ThrowIfNull(section);
        double e0 = Guard.Positive(length, "system length", "mm", "Give the length from hinge to hinge in mm.") * UsualBowRatio;
        return Guard.Named(search, "bow search") == BowSearch.BothSigns
            ? [Bow.AlongU(section, e0), Bow.AlongU(section, -e0)]
            : [Bow.AlongU(section, e0), Bow.AlongU(section, -e0), Bow.AlongV(section, e0), Bow.AlongV(section, -e0)];
    }
}
