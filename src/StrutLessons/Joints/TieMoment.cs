using StrutLessons.Eccentricity;

namespace StrutLessons.Joints;

/// <summary>
/// The moment of an adjacent tie as the strut's end sees it, in the axes of the section: a constant first moment, or a shift of the
/// strut's own eccentricity if the tie's force grows with N. Immutable.
/// </summary>
/// <remarks>
/// Sign: the strut pushes from its centroid's side of the gusset and bends the free end of the plate towards that side, with the first
/// moment N z_e. A tie that pulls on the other side bends the plate the same way: it adds. On the same side it takes away.
/// With one bolt the strut turns freely on the gusset, and the tie's moment stays in the plate.
/// </remarks>
public sealed record TieMoment : IWorked
{
    internal TieMoment(AdjacentTie tie, LoadPoint loadPoint)
    {
        Tie = tie;
        LoadPoint = loadPoint;
        StrutEccentricity = loadPoint.ThroughOtherLeg ? loadPoint.Offset.Y : loadPoint.Offset.Z;
        if (Math.Abs(StrutEccentricity) < 1e-9 * loadPoint.Section.ConnectedLength)
        {
            throw Guard.Fail(StrutEccentricity, "eccentricity across the gusset", "mm", "different from 0",
                "The strut's centroid lies in the load plane, so a tie has no same or opposite side; give its moment to the strut's end directly.");
        }

        Transferred = loadPoint.Bolts.Count > 1;
        double sign = Math.Sign(StrutEccentricity) * (tie.Side == TieSide.OppositeToStrut ? 1 : -1);
        double lever = Transferred ? sign * tie.Eccentricity * tie.MomentShare : 0;
        SignedLever = lever;
        Planar Across(double value) => loadPoint.ThroughOtherLeg ? new(value, 0) : new(0, value);
        ConstantMoment = Across(lever * tie.Force);
        EccentricityShift = Across(lever * tie.Ratio);
    }

    /// <summary>The tie.</summary>
    public AdjacentTie Tie { get; }

    /// <summary>The strut's load point.</summary>
    public LoadPoint LoadPoint { get; }

    /// <summary>Distance of the strut's load plane from its centroid, mm, with sign.</summary>
    public double StrutEccentricity { get; }

    /// <summary>False for one bolt: the moment stays in the plate.</summary>
    public bool Transferred { get; }

    /// <summary>Lever of the tie's force in the direction of the strut's eccentricity, mm; 0 if not transferred.</summary>
    public double SignedLever { get; }

    /// <summary>First moment that does not grow with N, N mm: for the strut's end.</summary>
    public Planar ConstantMoment { get; }

    /// <summary>Shift of the load point that stands for a tie in proportion to N, mm: add it to the eccentricity.</summary>
    public Planar EccentricityShift { get; }

    /// <summary>First moment on the joint at a compression N, strut and tie together, N mm, in the direction across the gusset.</summary>
    public double MomentAt(double compression) => compression * StrutEccentricity + SignedLever * Tie.ForceAt(compression);

    /// <summary>
    /// Compression below which even a pulling tie on the strut's own side bends the joint more than no tie at all,
    /// N* = T e_t/(2 |z_e|), N; 0 for a tie on the other side, infinite if a tie in proportion to N is that large at every load.
    /// </summary>
    public double WorseThanNoTieBelow
    {
        get
        {
            double strut = Math.Abs(StrutEccentricity), tie = -SignedLever * Math.Sign(StrutEccentricity);
            // Reversed beyond its own size: T e_t > 2 N |z_e|.
            double constant = tie * Tie.Force / 2, growing = tie * Tie.Ratio / 2;
            return growing >= strut ? double.PositiveInfinity : Math.Max(0, constant / (strut - growing));
        }
    }

    /// <summary>Lever, moment, and the comparison of both sides.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string source = "equilibrium of the joint; sides as in the remarks of this type";
        string across = LoadPoint.ThroughOtherLeg ? "y" : "z";
        var steps = new List<WorkedStep>
        {
            new("Line of the tie from the gusset's mid-plane", "e_t", "", "", Tie.Eccentricity, "mm", "given"),
            new("Its lever in the direction of the strut's eccentricity: plus on the other side, minus on the strut's side, 0 for one bolt",
                @"\bar e_t", "", "", SignedLever, "mm", source),
        };
        if (Tie.Force != 0)
        {
            steps.Add(new("Constant force of the tie", "T", "", "", Tie.Force * 1e-3, "kN", "given"));
            steps.Add(new("First moment it adds at the strut's end", $"M_{{t,{across}}}", @"T \bar e_t",
                $@"{Tex.Number(Tie.Force * 1e-3)} \cdot {Tex.Bracketed(SignedLever)} \cdot 10^{{-3}}",
                SignedLever * Tie.Force * 1e-6, "kNm", source));
        }

        if (Tie.Ratio != 0)
        {
            steps.Add(new("Force of the tie per compression of the strut", @"\tau", "T/N", "", Tie.Ratio, "", "given"));
            steps.Add(new("The tie shifts the strut's eccentricity by", $@"\Delta {across}_e", @"\tau \bar e_t",
                $@"{Tex.Number(Tie.Ratio)} \cdot {Tex.Bracketed(SignedLever)}", SignedLever * Tie.Ratio, "mm", source));
        }

        steps.Add(new("Below this compression the tie makes the joint's moment larger than it is without a tie", "N^*",
            $@"\frac{{T e_t}}{{2 |{across}_e|}}", "", WorseThanNoTieBelow * 1e-3, "kN", source));
        return steps;
    }
}
