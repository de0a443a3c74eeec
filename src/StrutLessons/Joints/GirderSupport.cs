using StrutLessons.Materials;
using StrutLessons.Sections;
using StrutLessons.Torsion;

namespace StrutLessons.Joints;

/// <summary>The girder a gusset stands on, and where along its span. Immutable; mm.</summary>
public sealed record GirderSupport
{
    /// <summary>A girder between two points where its twist is prevented.</summary>
    /// <param name="girder">The section.</param>
    /// <param name="length">L between the points where twist is prevented, mm.</param>
    /// <param name="position">a of the joint from end 1, mm.</param>
    /// <param name="end1">End at x = 0: fork or warping fixed.</param>
    /// <param name="end2">End at x = L: fork or warping fixed.</param>
    /// <param name="stiffened">True if web stiffeners at the joint keep the section's shape: no local part.</param>
    /// <param name="heldAgainstTwist">True if the girder cannot twist at the joint: no global part.</param>
    /// <param name="torsionRule">Formula of I_t; thin plates as in the plate analyses unless chosen otherwise, which is on the soft side.</param>
    /// <param name="warpingRule">Formula of I_w.</param>
    /// <param name="elasticModulus">E, MPa.</param>
    /// <exception cref="InputException">A number out of range, or a joint outside the span.</exception>
    public GirderSupport(
        Girder girder,
        double length,
        double position,
        WarpingEnd end1 = WarpingEnd.Fork,
        WarpingEnd end2 = WarpingEnd.Fork,
        bool stiffened = false,
        bool heldAgainstTwist = false,
        TorsionConstantRule torsionRule = TorsionConstantRule.ThinPlates,
        WarpingConstantRule warpingRule = WarpingConstantRule.FlangesOnly,
        double elasticModulus = Steel.StandardElasticModulus)
    {
        ArgumentNullException.ThrowIfNull(girder);
        Girder = girder;
        Bar = GirderTorsion.Bar(girder, length, end1, end2, elasticModulus, null, torsionRule, warpingRule);
        Position = position > 0 && position < length
            ? position
            : throw Guard.Fail(position, "joint position a", "mm",
                $"inside the girder, greater than 0 and less than L = {Guard.Text(length)} mm",
                "Measure from end 1. Directly at a support use heldAgainstTwist.");
        Stiffened = stiffened;
        HeldAgainstTwist = heldAgainstTwist;
        TorsionRule = torsionRule;
        WarpingRule = warpingRule;
        ElasticModulus = elasticModulus;
    }

    /// <summary>The section.</summary>
    public Girder Girder { get; }

    /// <summary>The girder in torsion.</summary>
    public TorsionBar Bar { get; }

    /// <summary>L, mm.</summary>
    public double Length => Bar.Length;

    /// <summary>a from end 1, mm.</summary>
    public double Position { get; }

    /// <summary>True if stiffeners keep the section's shape at the joint.</summary>
    public bool Stiffened { get; }

    /// <summary>True if the girder cannot twist at the joint.</summary>
    public bool HeldAgainstTwist { get; }

    /// <summary>Formula of I_t.</summary>
    public TorsionConstantRule TorsionRule { get; }

    /// <summary>Formula of I_w.</summary>
    public WarpingConstantRule WarpingRule { get; }

    /// <summary>E, MPa.</summary>
    public double ElasticModulus { get; }

    /// <summary>What a stiffened web means for both ways.</summary>
    internal const string StiffenedNote =
        "Stiffened web: local bending is left out altogether, by hand formula and by plate analysis; real stiffeners leave a little of it.";

    /// <summary>True if both ends are forks, as the plate analysis of a whole girder has them.</summary>
    internal bool BetweenForks => Bar.End1 == WarpingEnd.Fork && Bar.End2 == WarpingEnd.Fork;

    /// <summary>The girder under a torque of 1 kNm at the joint.</summary>
    public PointTorque UnitTorque() => Bar.Under(1e6, Position);

    /// <summary>Twist of the whole girder per torque at the joint, f_glob, rad/(N mm); 0 if it is held against twist.</summary>
    public double TwistCompliance => HeldAgainstTwist ? 0 : UnitTorque().Compliance;

    /// <summary>Sideways deflection of the girder per sideways force, a² a′²/(3 E I_z L), mm/N: a hinged beam about its weak axis.</summary>
    public double SidewaysCompliance => Math.Pow(Position * (Length - Position), 2) / (3 * ElasticModulus * Girder.SecondMomentZ * Length);

    /// <summary>Torsion constants by the chosen formulas, then the twist under a torque.</summary>
    internal IEnumerable<WorkedStep> TwistSteps(PointTorque torque) =>
        Girder.InTorsion(TorsionRule, WarpingRule).WorkedSteps().Concat(torque.WorkedSteps());
}
