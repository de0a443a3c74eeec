using StrutLessons.Plates;
using StrutLessons.Torsion;

namespace StrutLessons.Joints;

/// <summary>
/// A gusset on a girder's flange: gusset, local bending of the web with twist of the flange, and twist of the whole girder, in
/// series. Immutable.
/// </summary>
/// <remarks>
/// 1/c = 1/c_G + sin²α (f_loc + f_glob). Hinge distances from the first bolt: gusset 0.47 g sin α, local g + t_f/(2 sin α) (flange
/// mid-plane), global g + h/(2 sin α) (shear centre). Adding both girder parts counts the flange's torsion twice, which makes the girder
/// alone 2 to 10 % too soft. A force across the gusset also bends the girder sideways; that is not in the formula.
/// </remarks>
public sealed record FlangeJoint : IWorked
{
    internal FlangeJoint(GussetFormula gusset, GirderSupport support, FootModel foot)
    {
        Gusset = gusset;
        Support = support;
        Foot = Guard.Named(foot, "flange foot");
        Local = new FlangeBending(support.Girder, gusset.Gusset.FootLength, support.ElasticModulus);
        Global = support.UnitTorque();
        InclinationFactor = Inclination.Factor(gusset.Gusset);

        double g = gusset.Gusset.FreeLength, sine = Inclination.Sine(gusset.Gusset);
        List<JointContribution> parts = [gusset.Contribution];
        List<string> notes = [.. gusset.Notes];
        if (support.Stiffened)
        {
            notes.Add(GirderSupport.StiffenedNote);
        }
        else
        {
            parts.Add(new(PartName.FlangeLocal, InclinationFactor * Local.Compliance(foot), g + support.Girder.FlangeThickness / (2 * sine),
                "web strip and flange torsion, derived for this project"));
        }

        if (support.HeldAgainstTwist)
        {
            notes.Add("Girder held against twist at the joint: no global part.");
        }
        else
        {
            parts.Add(new(PartName.Global, InclinationFactor * Global.Compliance, g + support.Girder.Height / (2 * sine),
                "warping torsion, Vlasov (from memory, re-derived)"));
        }

        Hinge = JointHinge.InSeries(parts, gusset.Hinge.BoltCount, gusset.Hinge.InPlane, 0, notes);
    }

    /// <summary>The gusset on a rigid support.</summary>
    public GussetFormula Gusset { get; }

    /// <summary>The girder.</summary>
    public GirderSupport Support { get; }

    /// <summary>How the gusset passes its moment to the flange.</summary>
    public FootModel Foot { get; }

    /// <summary>Local bending, worked out even where stiffeners remove it.</summary>
    public FlangeBending Local { get; }

    /// <summary>The girder under 1 kNm at the joint, worked out even where it is held against twist.</summary>
    public PointTorque Global { get; }

    /// <summary>sin²α.</summary>
    public double InclinationFactor { get; }

    /// <summary>The joint as the strut sees it.</summary>
    public JointHinge Hinge { get; }

    /// <summary>
    /// The same joint by plate analysis: the gusset alone, with a web and flanges that are held, with the whole girder; the differences are
    /// the parts in series.
    /// </summary>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the leg, 2 to 16.</param>
    /// <exception cref="InputException">A shape that the plate model cannot have; a girder of another elastic modulus than the gusset.</exception>
    public JointByPlates PlateAnalysis(int fineness = PlateOnRigidSupport.DefaultFineness) => JointByPlates.Of(this, fineness);

    /// <summary>Hand formula and plate analysis side by side.</summary>
    /// <param name="fineness">As for <see cref="PlateAnalysis"/>.</param>
    /// <exception cref="InputException">As for <see cref="PlateAnalysis"/>.</exception>
    public JointComparison Compare(int fineness = PlateOnRigidSupport.DefaultFineness) => new(Hinge, PlateAnalysis(fineness));

    /// <summary>Gusset, web, girder, inclination, series.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps() =>
    [
        .. Gusset.WorkedSteps(), .. Support.Stiffened ? [] : Local.WorkedSteps(), .. Support.HeldAgainstTwist ? [] : Support.TwistSteps(Global),
        .. Inclination.Steps(Gusset.Gusset), .. Hinge.WorkedSteps(),
    ];
}
