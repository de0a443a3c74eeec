using StrutLessons.Plates;

namespace StrutLessons.Joints;

/// <summary>
/// The stiffness of a gusset on a rigid support by hand: a strip whose width grows by the plate that is dragged along. Immutable;
/// every intermediate value is kept.
/// </summary>
/// <remarks>
/// <para>Square (α = 90°): c = D b_eff/g with b_eff = w + Σ λ tanh(B/λ). The plate beside the rigid patch is a bar in torsion on strips
/// of stiffness D/g: (K θ′)′ = k θ with K = D g and a free outer edge. λ = g + L_b/2: 45° spread, and half the bolt group.</para>
/// <para>Inclined: the strips at the near corner are shorter, g_n = g − (w/2) cot α; g is replaced by g_eq = √(g g_n sin α), and strips
/// that run from the near side of the leg straight to the support add S.</para>
/// <para>Source: derivation and plate analyses of this project. Fitted to the plate analyses: the 45° and the ½ in λ, the geometric
/// mean and √sin α, 0.5 in S, 0.47 and 0.327 of the elastic centre (strip: 0.50 and 0.333), 0.75 and 0.80 of the buckling loads,
/// 0.9 of the softening. Range: α ≥ 60°; at 45° an estimate (−40 to +25 %).</para>
/// </remarks>
public sealed partial record GussetFormula
{
    /// <summary>Where the formulas of this record come from.</summary>
    public const string Origin = "strip model of this project, constants fitted to its plate analyses";

    internal GussetFormula(
        Gusset gusset, double patchWidth, double patchLength, int boltCount, InPlaneEnd inPlane, double elasticModulus)
    {
        Gusset = gusset;
        PatchWidth = Guard.Positive(patchWidth, "patch width w", "mm", "Give the width of the leg that lies on the plate.");
        PatchLength = Guard.NotNegative(patchLength, "patch length L_b", "mm", "Give the length of the bolt group; 0 for one bolt.");
        ElasticModulus = Guard.Within(elasticModulus, 50_000, 500_000, "elastic modulus E", "MPa", "Give E in MPa = N/mm², 210 000 for steel.");

        double g = gusset.FreeLength, alpha = gusset.Inclination, sin = Math.Sin(alpha);
        // tan(90°) is not quite infinite in floating point.
        double cot = gusset.IsSquare ? 0 : 1 / Math.Tan(alpha), cos = gusset.IsSquare ? 0 : Math.Cos(alpha);
        HalfLeft = Math.Min(patchWidth / 2, gusset.WidthLeft);
        HalfRight = Math.Min(patchWidth / 2, gusset.WidthRight);
        NearLength = g - HalfRight * cot;
        if (NearLength <= 0)
        {
            throw Guard.Fail(g, "free length g", "mm", $"more than (w/2) cot α = {Guard.Text(HalfRight * cot)} mm",
                "The near corner of the leg would cross the support: move the bolts away from it.");
        }

        PlateStiffness = PlateStrip.Stiffness(elasticModulus, gusset.Thickness);
        EquivalentLength = gusset.IsSquare ? g : Math.Sqrt(g * NearLength * sin);
        Spread = EquivalentLength + patchLength / 2;
        SideLeft = gusset.WidthLeft + gusset.Taper * g / 2 - HalfLeft;
        SideRight = gusset.WidthRight + gusset.Taper * g / 2 - HalfRight;
        DraggedLeft = Spread * Math.Tanh(SideLeft / Spread);
        DraggedRight = Spread * Math.Tanh(SideRight / Spread);
        EffectiveWidth = HalfLeft + HalfRight + DraggedLeft + DraggedRight;

        double nearest = NearLength * sin;
        // Beside the bolts the plate does not taper.
        double beside = gusset.WidthRight - HalfRight;
        SideStripLength = gusset.IsSquare ? 0 : Math.Clamp((beside / cos - nearest) / sin, 0, patchLength);
        SideStrips = gusset.IsSquare ? 0 : 0.5 * cot / (sin * sin) * Math.Log(1 + SideStripLength * sin / nearest);

        Stiffness = PlateStiffness * (EffectiveWidth / EquivalentLength + SideStrips);
        Compliance = 1 / Stiffness;
        HingeDistance = 0.47 * g * sin;
        DeflectionPerForce = 0.327 * g * g * sin * Compliance;
        double transverse = DeflectionPerForce - HingeDistance * HingeDistance * Compliance;
        FreeBucklingLoad = 0.75 * Math.PI * Math.PI * Stiffness / (4 * g);
        GuidedBucklingLoad = 0.80 * Math.PI * Math.PI * Stiffness / g;

        Contribution = new(PartName.Gusset, Compliance, HingeDistance, Origin, transverse);
        Notes = RangeNotes(cot);
        Hinge = JointHinge.InSeries([Contribution], boltCount, inPlane, 0, Notes);
    }

    /// <summary>The plate.</summary>
    public Gusset Gusset { get; }

    /// <summary>Width w of the rigid patch, mm.</summary>
    public double PatchWidth { get; }

    /// <summary>Length L_b of the rigid patch, mm.</summary>
    public double PatchLength { get; }

    /// <summary>E of the plate, MPa.</summary>
    public double ElasticModulus { get; }

    /// <summary>D = E t³/[12(1 − ν²)], N mm.</summary>
    public double PlateStiffness { get; }

    /// <summary>Half patch on the left: w/2, or the plate where it is narrower, mm.</summary>
    public double HalfLeft { get; }

    /// <summary>Half patch on the right, mm.</summary>
    public double HalfRight { get; }

    /// <summary>g_n = g − (w/2) cot α, free length at the near corner, mm; g for a square gusset.</summary>
    public double NearLength { get; }

    /// <summary>g_eq = √(g g_n sin α), mm; g for a square gusset.</summary>
    public double EquivalentLength { get; }

    /// <summary>λ = g_eq + L_b/2, mm: over this length plate beside the patch is dragged along.</summary>
    public double Spread { get; }

    /// <summary>B on the left: plate beside the patch, at half the free length, mm.</summary>
    public double SideLeft { get; }

    /// <summary>B on the right, mm.</summary>
    public double SideRight { get; }

    /// <summary>λ tanh(B/λ) on the left, mm.</summary>
    public double DraggedLeft { get; }

    /// <summary>λ tanh(B/λ) on the right, mm.</summary>
    public double DraggedRight { get; }

    /// <summary>b_eff, mm.</summary>
    public double EffectiveWidth { get; }

    /// <summary>L_f: length along the leg from which strips run straight to the support, mm; 0 for a square gusset.</summary>
    public double SideStripLength { get; }

    /// <summary>S: stiffness of those strips divided by D; 0 for a square gusset.</summary>
    public double SideStrips { get; }

    /// <summary>c, N mm/rad.</summary>
    public double Stiffness { get; }

    /// <summary>f = 1/c, rad/(N mm).</summary>
    public double Compliance { get; }

    /// <summary>s_h = 0.47 g sin α, mm from the first bolt.</summary>
    public double HingeDistance { get; }

    /// <summary>f_ww = 0.327 g² sin α f: deflection at the first bolt per force across the plate, mm/N.</summary>
    public double DeflectionPerForce { get; }

    /// <summary>N_free: buckling load of the gusset alone, its end free to move and turn, N.</summary>
    public double FreeBucklingLoad { get; }

    /// <summary>N_guided: buckling load of the gusset alone, its end free to move but not to turn, N. Not reliable for inclined gussets.</summary>
    public double GuidedBucklingLoad { get; }

    /// <summary>The gusset as a part of a joint.</summary>
    public JointContribution Contribution { get; }

    /// <summary>Where the formula is outside its stated range.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>The gusset as the whole joint.</summary>
    public JointHinge Hinge { get; }

    /// <summary>Limiting values beside the computed one.</summary>
    public GussetLimits Limits => new(this);

    /// <summary>
    /// c(N) = c (1 − 0.9 N/N_free), N mm/rad: the gusset softened by its own compression. For show only: a spring at the elastic centre
    /// with a rigid arm already softens in this way, so using both counts the effect twice.
    /// </summary>
    /// <param name="load">Compression N, N.</param>
    /// <exception cref="InputException">Negative, or beyond N_free.</exception>
    public double StiffnessUnder(double load) =>
        Stiffness * (1 - 0.9 * Guard.Within(load, 0, FreeBucklingLoad, "compression N", "N", "The gusset alone buckles at the upper limit.") / FreeBucklingLoad);

    /// <summary>The same gusset by plate analysis.</summary>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the leg, 2 to 16.</param>
    /// <exception cref="InputException">A shape that the plate model cannot have, such as a leg wider than the plate.</exception>
    public JointByPlates PlateAnalysis(int fineness = PlateOnRigidSupport.DefaultFineness) => JointByPlates.Of(this, fineness);

    /// <summary>Hand formula and plate analysis side by side.</summary>
    /// <param name="fineness">As for <see cref="PlateAnalysis"/>.</param>
    /// <exception cref="InputException">As for <see cref="PlateAnalysis"/>.</exception>
    public JointComparison Compare(int fineness = PlateOnRigidSupport.DefaultFineness) => new(Hinge, PlateAnalysis(fineness));

    private List<string> RangeNotes(double cot)
    {
        var notes = new List<string>();
        if (Gusset.InclinationDegrees < 45)
        {
            notes.Add("Inclination below 45°: the hand formula is outside its range; use the plate analysis, method PlateAnalysis().");
        }
        else if (Gusset.InclinationDegrees < 60)
        {
            notes.Add("Inclination below 60°: the hand formula is an estimate only (−40 to +25 % at 45°); use the plate analysis, method PlateAnalysis().");
        }

        if (cot > 0 && Gusset.WidthRight * cot > Gusset.FreeLength)
        {
            notes.Add("On the near side the weld runs on beside the leg: the hand formula is least reliable there; use the plate analysis, method PlateAnalysis().");
        }

        if (HalfLeft < PatchWidth / 2 || HalfRight < PatchWidth / 2)
        {
            notes.Add("The leg is wider than the plate on one side: only the plate was counted.");
        }

        return notes;
    }
}
