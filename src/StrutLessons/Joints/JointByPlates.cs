using StrutLessons.Plates;

namespace StrutLessons.Joints;

/// <summary>
/// A joint from plate analyses of its own geometry: gusset on a rigid support, on a girder's flange or across a girder's web.
/// The twin of the hand formulas; parts in series are differences of analyses in which more and more may move. Immutable.
/// </summary>
/// <remarks>
/// Gusset: analysis on a rigid support. Local part: the same gusset on a girder whose flanges keep their lines, less the gusset. Global part:
/// the whole girder between forks, less the one before. Their sum is the whole joint, coupling included, so nothing is counted twice. The
/// rigid foot of a web analysis is a line; a footprint divides the local part by the rough rule of <see cref="WebBending"/>.
/// Not in the plate model: bolt slip, weld size, root fillets, stiffeners, girder ends that cannot warp (closed form of torsion instead).
/// </remarks>
public sealed partial record JointByPlates
{
    private const string Analysis = "plate analysis, limit of two meshes";

    private JointByPlates(GussetFormula hand, int fineness, IReadOnlyList<string> notes)
    {
        Inputs = hand;
        Plate = PlateOf(hand);
        OnRigidSupport = PlateOnRigidSupport.Flexibility(Plate, MaterialOf(hand.ElasticModulus), fineness);
        Contributions = [Difference(PartName.Gusset, OnRigidSupport.Limit, null)];
        Hinge = InSeries(0, notes);
    }

    private JointByPlates(GussetFormula hand, GirderSupport support, WebSeat? seat, JointHinge byHand, int fineness)
        : this(hand, fineness, [])
    {
        if (support.ElasticModulus != hand.ElasticModulus)
        {
            throw Guard.Fail(support.ElasticModulus, "elastic modulus E of the girder", "MPa", $"that of the gusset, {Guard.Text(hand.ElasticModulus)} MPa",
                "The plate analysis knows one material: give both the same modulus.");
        }

        Support = support;
        Seat = seat;
        var girder = new GirderShape(support.Girder.Height, support.Girder.Width, support.Girder.WebThickness, support.Girder.FlangeThickness);
        var span = new GirderSpan(support.Length, support.Position);
        PlateMaterial material = MaterialOf(hand.ElasticModulus);
        List<JointContribution> parts = [.. Contributions];
        List<string> notes = [];
        if (support.Stiffened)
        {
            notes.Add(GirderSupport.StiffenedNote);
        }
        else
        {
            FlangesHeld = seat is null
                ? PlateOnGirder.OnFlangeHeld(Plate, girder, material, fineness)
                : PlateOnGirder.OnWebHeld(Plate, girder, seat.Height, material, fineness);
            double footprint = seat is null ? 1 : new WebBending(support.Girder, seat, hand.Gusset.FootLength, hand.ElasticModulus).FootprintFactor;
            parts.Add(Difference(seat is null ? PartName.FlangeLocal : PartName.WebLocal, FlangesHeld.Limit, OnRigidSupport.Limit, footprint));
        }

        if (support.HeldAgainstTwist)
        {
            notes.Add("Girder held against twist at the joint: no global part.");
        }
        else if (FlangesHeld is not null && support.BetweenForks)
        {
            WholeGirder = seat is null
                ? PlateOnGirder.OnFlange(Plate, girder, span, material, fineness)
                : PlateOnGirder.OnWeb(Plate, girder, seat.Height, span, material, fineness);
            parts.Add(Difference(PartName.Global, WholeGirder.Limit, FlangesHeld.Limit));
        }
        else
        {
            parts.Add(byHand.Contributions.Single(c => c.Name == PartName.Global));
            notes.Add("The plate model knows girders between forks without stiffeners only: the global part is the closed form of warping torsion.");
        }

        if (seat is not null && FlangesHeld is not null)
        {
            WebPushed = WholeGirder is null
                ? WebFoot.HeldFlanges(girder, Plate.FootLength, seat.Height, material, fineness)
                : WebFoot.FullGirder(girder, Plate.FootLength, seat.Height, span, material, fineness);
        }

        Contributions = parts;
        Hinge = InSeries(byHand.ImposedRotationPerNewton == 0 ? 0 : ImposedRotation(byHand), notes);
    }

    /// <summary>The hand formula of the gusset, which holds the inputs of both ways.</summary>
    public GussetFormula Inputs { get; }

    /// <summary>The gusset as the plate model has it.</summary>
    public GussetPlate Plate { get; }

    /// <summary>The girder; none for a rigid support.</summary>
    public GirderSupport? Support { get; }

    /// <summary>The seat on the web; none on a flange or a rigid support.</summary>
    public WebSeat? Seat { get; }

    /// <summary>The gusset on a rigid support.</summary>
    public GussetFlexibility OnRigidSupport { get; }

    /// <summary>The gusset on a girder whose flanges keep their lines; none if the web is stiffened.</summary>
    public GirderJointFlexibility? FlangesHeld { get; }

    /// <summary>The gusset on the whole girder between forks; none if it is stiffened, held against twist, or kept from warping at an end.</summary>
    public GirderJointFlexibility? WholeGirder { get; }

    /// <summary>The web alone, pushed and turned by a straight foot; none on a flange or if stiffened.</summary>
    public WebFootResult? WebPushed { get; }

    /// <summary>The parts in series.</summary>
    public IReadOnlyList<JointContribution> Contributions { get; }

    /// <summary>The joint as the strut sees it.</summary>
    public JointHinge Hinge { get; }

    /// <summary>Estimated error of the finest analysis' rotation, fine mesh against the limit of both.</summary>
    public double MeshError => (WholeGirder ?? FlangesHeld)?.SlopePerMoment.RelativeError ?? OnRigidSupport.SlopePerMoment.RelativeError;

    internal static JointByPlates Of(GussetFormula hand, int fineness) => new(hand, fineness, []);

    internal static JointByPlates Of(FlangeJoint hand, int fineness) => new(hand.Gusset, hand.Support, null, hand.Hinge, fineness);

    internal static JointByPlates Of(WebJoint hand, int fineness) => new(hand.Gusset, hand.Support, hand.Web.Seat, hand.Hinge, fineness);

    private static PlateMaterial MaterialOf(double elasticModulus) => new(elasticModulus, Materials.Steel.StandardPoissonRatio);

    private static GussetPlate PlateOf(GussetFormula hand)
    {
        Gusset g = hand.Gusset;
        return new(g.Thickness, g.WidthLeft, g.WidthRight, hand.PatchWidth, g.FreeLength, hand.PatchLength, g.EndDistance,
            g.IsSquare ? Math.PI / 2 : g.Inclination, g.Taper);
    }

    /// <summary>What one analysis moves more than another, as a part in series.</summary>
    private static JointContribution Difference(string name, BoltFlexibility whole, BoltFlexibility? without, double stiffening = 1)
    {
        double rotation = (whole.SlopePerMoment - (without?.SlopePerMoment ?? 0)) / stiffening;
        double coupling = (whole.DeflectionPerMoment - (without?.DeflectionPerMoment ?? 0)) / stiffening;
        double push = (whole.DeflectionPerForce - (without?.DeflectionPerForce ?? 0)) / stiffening;
        string source = (without is null ? Analysis : "difference of two plate analyses, each the limit of two meshes")
            + (stiffening == 1 ? "" : "; width of the foot by the rough rule 1 + 8e/h_s");
        // A support that hardly gives leaves a difference of the size of the meshes' error: it counts as rigid.
        return rotation <= 1e-6 * whole.SlopePerMoment
            ? new(name, 0, 0, source)
            : new(name, rotation, Math.Max(0, coupling / rotation), source, Math.Max(0, push - coupling * coupling / rotation));
    }

    private JointHinge InSeries(double imposed, IReadOnlyList<string> notes) =>
        JointHinge.InSeries(Contributions, Inputs.Hinge.BoltCount, Inputs.Hinge.InPlane, imposed, notes);

    /// <summary>Rotation per compression off mid-depth: the web pushed in, and the girder's twist where the plate model lacks it.</summary>
    private double ImposedRotation(JointHinge byHand)
    {
        if (Support is not { } support || Seat is not { } seat || WebPushed is not { } web)
        {
            return byHand.ImposedRotationPerNewton;
        }

        double middle = support.Girder.FlangeSpacing / 2;
        double towards = web.Limit.DeflectionPerMoment * (seat.Height < middle ? 1 : -1)
            - (WholeGirder is null ? support.TwistCompliance * Math.Abs(seat.Height - middle) : 0);
        return Inclination.Factor(Inputs.Gusset) * (seat.ZTowards == ZTowards.MidDepth ? towards : -towards);
    }
}
