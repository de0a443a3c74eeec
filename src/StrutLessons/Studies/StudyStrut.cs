using StrutLessons.Joints;
using StrutLessons.Materials;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Studies;

/// <summary>
/// The inputs of one case of a study: a strut with the same joint at both ends. A new one is the diagonal of the conveyor gallery that the lessons
/// carry along; change what differs: <c>new StudyStrut { GussetThickness = 12 }</c>. Immutable; mm, MPa, N, degrees where the name says so.
/// </summary>
/// <remarks>
/// What may be left open follows the size of the angle and of the bolts (common practice): pitch 3 d, end distances 2 d, gusset twice as
/// wide as the connected leg, gauge at 0.5625 of it (45 mm on 80 mm).
/// </remarks>
public readonly record struct StudyStrut
{
    /// <summary>The diagonal of the conveyor gallery.</summary>
    public StudyStrut()
    {
    }

    /// <summary>The angle.</summary>
    public Angle Angle { get; init; } = AngleCatalogue.Find("L 80x80x8");

    /// <summary>Which leg is bolted.</summary>
    public ConnectedLeg Leg { get; init; } = ConnectedLeg.Long;

    /// <summary>Steel grade; gives the yield strength for the thickness.</summary>
    public SteelGrade Grade { get; init; } = SteelGrade.S355;

    /// <summary>Yield strength in place of the grade's, MPa; null follows the grade.</summary>
    public double? YieldStrength { get; init; }

    /// <summary>System length from hinge to hinge, mm; counts where no slenderness is given.</summary>
    public double Length { get; init; } = 2150;

    /// <summary>Relative slenderness λ̄_v on the system length in place of the length; null follows the length.</summary>
    public double? Slenderness { get; init; }

    /// <summary>Gauge over the connected leg; counts where no gauge is given.</summary>
    public double GaugeShare { get; init; } = 0.5625;

    /// <summary>Gauge, mm from the heel; null follows the share.</summary>
    public double? Gauge { get; init; }

    /// <summary>Bolts at each end.</summary>
    public int BoltCount { get; init; } = 2;

    /// <summary>Bolt diameter d, mm.</summary>
    public double BoltDiameter { get; init; } = 20;

    /// <summary>Pitch, mm; null is 3 d.</summary>
    public double? Pitch { get; init; }

    /// <summary>End distance of the angle, mm; null is 2 d.</summary>
    public double? EndDistance { get; init; }

    /// <summary>Gusset thickness, mm.</summary>
    public double GussetThickness { get; init; } = 10;

    /// <summary>Full gusset width at the first bolt, mm; null is twice the connected leg.</summary>
    public double? GussetWidth { get; init; }

    /// <summary>Free length g from the support to the first bolt, mm.</summary>
    public double FreeLength { get; init; } = 65;

    /// <summary>From the last bolt to the free end of the gusset, mm; null is 2 d.</summary>
    public double? GussetEndDistance { get; init; }

    /// <summary>Opening of each side of the gusset towards the support, mm per mm.</summary>
    public double Taper { get; init; }

    /// <summary>Angle between strut and support line, degrees.</summary>
    public double InclinationDegrees { get; init; } = 90;

    /// <summary>How both ends are held.</summary>
    public StudyEnd End { get; init; } = StudyEnd.RigidSupport;

    /// <summary>Hand formula or plate analysis.</summary>
    public JointMethod Method { get; init; } = JointMethod.HandFormula;

    /// <summary>How two or more bolts hold the strut in the plane of the gusset.</summary>
    public InPlaneEnd InPlane { get; init; } = InPlaneEnd.Rigid;

    /// <summary>The girder, for ends on a girder.</summary>
    public Girder Girder { get; init; } = GirderCatalogue.Find("IPE 360");

    /// <summary>Span of the girder between points without twist, mm.</summary>
    public double GirderSpan { get; init; } = 5600;

    /// <summary>Place of the joint over the span.</summary>
    public double PositionShare { get; init; } = 0.5;

    /// <summary>Height of the gusset on the web over the distance of the flange mid-planes.</summary>
    public double HeightShare { get; init; } = 0.5;

    /// <summary>True if stiffeners keep the girder's shape at the joint.</summary>
    public bool Stiffened { get; init; }

    /// <summary>True if the girder cannot twist at the joint.</summary>
    public bool HeldAgainstTwist { get; init; }

    /// <summary>Force of an adjacent tie over the strut's compression; 0 without.</summary>
    public double TieRatio { get; init; }

    /// <summary>Constant force of an adjacent tie, N; 0 without.</summary>
    public double TieForce { get; init; }

    /// <summary>From the gusset's mid-plane to the line of the tie, mm.</summary>
    public double TieEccentricity { get; init; } = 25;

    /// <summary>Side of the tie.</summary>
    public TieSide TieSide { get; init; } = TieSide.SameAsStrut;

    /// <summary>The bow is the system length over this number.</summary>
    public double BowDivisor { get; init; } = 300;

    /// <summary>Which bows are tried.</summary>
    public BowSearch Bows { get; init; } = BowSearch.BothSigns;

    /// <summary>Everything that decides about section and end, with the rest set aside.</summary>
    internal StudyStrut EndPart() => this with
    {
        Grade = SteelGrade.S355, YieldStrength = null, Length = 0, Slenderness = null, BowDivisor = 0, Bows = default,
    };
}
