namespace StrutLessons.Joints;

/// <summary>
/// A joint as the strut sees it: a rotational spring at its elastic centre, with a rigid arm from there to the first bolt.
/// Parts in series: f = Σ fᵢ, s_h = Σ fᵢ dᵢ/Σ fᵢ. Immutable.
/// </summary>
/// <remarks>
/// "Out of plane" is rotation that bends the gusset (displacement z of the section), "in plane" is rotation in the gusset's own plane
/// (displacement y). The system length of the strut runs from hinge to hinge.
/// </remarks>
public sealed partial record JointHinge
{
    private JointHinge(IReadOnlyList<JointContribution> contributions, int boltCount, InPlaneEnd inPlane, double imposed, IReadOnlyList<string> notes)
    {
        Contributions = contributions;
        BoltCount = boltCount;
        InPlane = inPlane;
        Compliance = contributions.Sum(c => c.Compliance);
        ElasticCentre = Compliance > 0 ? contributions.Sum(c => c.Compliance * c.HingeDistance) / Compliance : 0;
        Notes = notes;
        // One bolt is a pin: the strut turns about it, whatever the plate behind it could hold.
        bool pin = boltCount == 1;
        OutOfPlaneStiffness = pin ? 0 : 1 / Compliance;
        HingeDistance = pin ? 0 : ElasticCentre;
        InPlaneStiffness = pin || inPlane == InPlaneEnd.Released ? 0 : double.PositiveInfinity;
        ImposedRotationPerNewton = pin ? 0 : imposed;
    }

    /// <summary>The parts in series.</summary>
    public IReadOnlyList<JointContribution> Contributions { get; }

    /// <summary>Bolts in the group; one bolt makes a pin.</summary>
    public int BoltCount { get; }

    /// <summary>How two or more bolts hold the strut in the plane of the gusset.</summary>
    public InPlaneEnd InPlane { get; }

    /// <summary>f = Σ fᵢ of the parts, rad/(N mm), whether or not the bolts can transfer a moment.</summary>
    public double Compliance { get; }

    /// <summary>s_h = Σ fᵢ dᵢ/Σ fᵢ, mm from the first bolt, whether or not the bolts can transfer a moment.</summary>
    public double ElasticCentre { get; }

    /// <summary>Spring c = 1/f against rotation out of the plane of the gusset, N mm/rad; 0 for one bolt, infinite without any compliance.</summary>
    public double OutOfPlaneStiffness { get; }

    /// <summary>Distance s_h from the first bolt back to the hinge, mm; 0 for one bolt.</summary>
    public double HingeDistance { get; private init; }

    /// <summary>Spring against rotation in the plane of the gusset, N mm/rad: infinite for two or more bolts, 0 for one bolt or when released.</summary>
    public double InPlaneStiffness { get; }

    /// <summary>
    /// Rotation that the compression itself imposes on the joint, rad/N; not 0 off mid-height on a girder web. Positive if the
    /// free end of the gusset moves to the side z &gt; 0, from the strut towards the gusset (w′ &gt; 0 at end 1, w′ &lt; 0 at end 2).
    /// </summary>
    public double ImposedRotationPerNewton { get; }

    /// <summary>Where the formula is outside its stated range, and other things to know.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>Transverse compliance 1/k_t at the elastic centre, mm/N: f_ww − s_h² f; the strut model leaves it out.</summary>
    public double TransverseCompliance =>
        Contributions.Sum(c => c.TransverseCompliance + c.Compliance * c.HingeDistance * c.HingeDistance)
        - ElasticCentre * ElasticCentre * Compliance;

    /// <summary>Parts in series at one end of a strut.</summary>
    /// <param name="contributions">At least one part.</param>
    /// <param name="boltCount">Bolts in the group; one bolt makes a pin.</param>
    /// <param name="inPlane">How two or more bolts hold the strut in the plane of the gusset.</param>
    /// <param name="imposedRotationPerNewton">See <see cref="ImposedRotationPerNewton"/>.</param>
    /// <param name="notes">Things to know about the numbers.</param>
    /// <exception cref="InputException">No part, no bolt, or a number that is not finite.</exception>
    public static JointHinge InSeries(
        IReadOnlyList<JointContribution> contributions,
        int boltCount,
        InPlaneEnd inPlane = InPlaneEnd.Rigid,
        double imposedRotationPerNewton = 0,
        params IReadOnlyList<string> notes)
    {
        ArgumentNullException.ThrowIfNull(contributions);
        ArgumentNullException.ThrowIfNull(notes);
        if (contributions.Count == 0)
        {
            throw new InputException("contributions", "none", "at least one part", "Give the gusset, a part of compliance 0 if the joint is rigid.");
        }

        Guard.Within(boltCount, 1, 100, "number of bolts", "Give the bolts of one end.");
        Guard.Finite(imposedRotationPerNewton, "imposed rotation", "rad/N", "Give 0 unless the gusset sits off mid-height on a girder web.");
        IReadOnlyList<string> all = boltCount == 1
            ? [.. notes, "One bolt: the strut turns about it, so the joint gives no moment (c = 0) whatever the plate could hold."]
            : [.. notes];
        return new([.. contributions], boltCount, Guard.Named(inPlane, "in-plane end"), imposedRotationPerNewton, all);
    }

    /// <summary>The same spring moved to another place, to show what the choice does.</summary>
    /// <param name="place">Elastic centre (right), bolt line or weld.</param>
    /// <param name="freeLength">Free length g from the first bolt to the weld, mm; needed for <see cref="SpringPlace.Weld"/>.</param>
    /// <exception cref="InputException">Not a named place, or a free length that is not positive.</exception>
    public JointHinge PlacedAt(SpringPlace place, double freeLength) => BoltCount == 1 ? this : this with
    {
        HingeDistance = Guard.Named(place, "spring place") switch
        {
            SpringPlace.ElasticCentre => ElasticCentre,
            SpringPlace.BoltLine => 0,
            _ => Guard.Positive(freeLength, "free length g", "mm", "Measure along the strut from the support to the first bolt."),
        },
    };
}
