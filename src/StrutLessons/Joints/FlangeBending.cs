using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>
/// How a flange turns under a moment on it while web and flanges keep their lines: the web bends, the flanges twist. Immutable;
/// every intermediate value is kept.
/// </summary>
/// <remarks>
/// Per unit length the web is a beam of length h_s = h − t_f between the flanges. Half the moment goes into the S-shape (both flanges
/// turn the same way, k_s = 6 D/h_s), half into uniform bending (they turn against each other, k_a = 2 D/h_s). In each mode the
/// flange is a bar in torsion on that foundation, K θ″ = k θ − m, with K = G I_t,flange plus the web's own twist (D h_s/5 and D h_s/3, Ritz
/// with the cubic shape), and a length λ = √(K/k). Derived for this project; no fitted constant. Model limits: sharp corners (root
/// fillets would stiffen), flange rigid across.
/// </remarks>
public sealed record FlangeBending : IWorked
{
    private const string Origin = "web as a beam between flanges, flange as a torsion bar on it; derived for this project";

    internal FlangeBending(Girder girder, double footLength, double elasticModulus)
    {
        Girder = girder;
        FootLength = Guard.Positive(footLength, "foot length b_g", "mm", "Give the length of the gusset's foot along the girder.");
        ElasticModulus = elasticModulus;
        PlateStiffness = PlateStrip.Stiffness(elasticModulus, girder.WebThickness);
        FlangeTorsion = PlateStrip.ShearModulus(elasticModulus) * girder.FlangeTorsionConstant;
        double hs = girder.FlangeSpacing;
        SameWay = new(6 * PlateStiffness / hs, FlangeTorsion + PlateStiffness * hs / 5);
        AgainstEachOther = new(2 * PlateStiffness / hs, FlangeTorsion + PlateStiffness * hs / 3);
        RigidFootCompliance = 0.5 * (SameWay.RigidFoot(footLength) + AgainstEachOther.RigidFoot(footLength));
        UniformMomentCompliance = 0.5 * (SameWay.UniformMoment(footLength) + AgainstEachOther.UniformMoment(footLength));
        double k = 3.2 * PlateStiffness / hs;
        ShortForm = k * (footLength + 2 * Math.Sqrt(FlangeTorsion / k));
    }

    /// <summary>The girder.</summary>
    public Girder Girder { get; }

    /// <summary>Length b_g of the gusset's foot, mm.</summary>
    public double FootLength { get; }

    /// <summary>E, MPa.</summary>
    public double ElasticModulus { get; }

    /// <summary>D of the web, N mm.</summary>
    public double PlateStiffness { get; }

    /// <summary>G I_t of one flange, N mm².</summary>
    public double FlangeTorsion { get; }

    /// <summary>S-shape of the web: both flanges turn the same way.</summary>
    public FlangeMode SameWay { get; }

    /// <summary>Uniform bending of the web: the flanges turn against each other.</summary>
    public FlangeMode AgainstEachOther { get; }

    /// <summary>f_loc of a foot that turns as one piece, rad/(N mm).</summary>
    public double RigidFootCompliance { get; }

    /// <summary>f_loc (mean rotation) of a moment spread evenly over the foot, rad/(N mm).</summary>
    public double UniformMomentCompliance { get; }

    /// <summary>Short form c_loc = k (b_g + 2λ), k = 3.2 D/h_s, λ = √(G I_t,flange/k), N mm/rad, for a check in the head.</summary>
    public double ShortForm { get; }

    /// <summary>f_loc for the chosen foot, rad/(N mm).</summary>
    /// <exception cref="InputException">Not a named foot.</exception>
    public double Compliance(FootModel foot) =>
        Guard.Named(foot, "flange foot") == FootModel.RigidFoot ? RigidFootCompliance : UniformMomentCompliance;

    /// <summary>Both modes and both feet; stiffness in kNm/rad, compliance in mrad/kNm.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        string d = Tex.Number(PlateStiffness * 1e-6), hs = Tex.Number(Girder.FlangeSpacing), b = Tex.Number(FootLength);
        return
        [
            new("Height of the web between the flange mid-planes", "h_s", "h - t_f",
                $"{Tex.Number(Girder.Height)} - {Tex.Number(Girder.FlangeThickness)}", Girder.FlangeSpacing, "mm", "geometry"),
            new("Bending stiffness of the web per mm", "D", @"\frac{E t_w^3}{12 (1 - \nu^2)}",
                $@"\frac{{{Tex.Number(ElasticModulus)} \cdot {Tex.Number(Girder.WebThickness)}^3}}{{12 (1 - 0.3^2)}} \cdot 10^{{-6}}", PlateStiffness * 1e-6, "kNm", "plate bending"),
            new("Torsional stiffness of one flange", "G I_{t,f}", @"\frac{E}{2 (1 + \nu)} \cdot \frac{b t_f^3}{3}",
                $@"\frac{{{Tex.Number(ElasticModulus)}}}{{2 (1 + 0.3)}} \cdot \frac{{{Tex.Number(Girder.Width)} \cdot {Tex.Number(Girder.FlangeThickness)}^3}}{{3}} \cdot 10^{{-9}}", FlangeTorsion * 1e-9, "kNm²", "thin rectangle"),
            new("S-shape: foundation", "k_s", @"\frac{6 D}{h_s}", $@"\frac{{6 \cdot {d}}}{{{hs}}} \cdot 10^3", SameWay.Foundation * 1e-3, "kN/rad", Origin),
            new("S-shape: reach along the flange", @"\lambda_s", @"\sqrt{\frac{G I_{t,f} + D h_s/5}{k_s}}", Reach(SameWay, 5), SameWay.Reach, "mm", Origin),
            new("Uniform bending: foundation", "k_a", @"\frac{2 D}{h_s}", $@"\frac{{2 \cdot {d}}}{{{hs}}} \cdot 10^3", AgainstEachOther.Foundation * 1e-3, "kN/rad", Origin),
            new("Uniform bending: reach along the flange", @"\lambda_a", @"\sqrt{\frac{G I_{t,f} + D h_s/3}{k_a}}", Reach(AgainstEachOther, 3), AgainstEachOther.Reach, "mm", Origin),
            new("Moment spread evenly over the foot, half in each mode", "f_{loc}",
                @"\sum \frac{1}{2 k b_g} \left[ 1 - \frac{\lambda}{b_g} \left( 1 - e^{-b_g/\lambda} \right) \right]",
                $"{Tex.Number(SameWay.UniformMoment(FootLength) * 5e8)} + {Tex.Number(AgainstEachOther.UniformMoment(FootLength) * 5e8)}",
                UniformMomentCompliance * 1e9, "mrad/kNm", Origin),
            new("Foot that turns as one piece", "f_{rigid}", @"\sum \frac{1}{2 k (b_g + 2 \lambda)}",
                $@"\frac{{10^3}}{{2 \cdot {Tex.Number(SameWay.Foundation * 1e-3)} ({b} + 2 \cdot {Tex.Number(SameWay.Reach)}) \cdot 10^{{-3}}}} + \frac{{10^3}}{{2 \cdot {Tex.Number(AgainstEachOther.Foundation * 1e-3)} ({b} + 2 \cdot {Tex.Number(AgainstEachOther.Reach)}) \cdot 10^{{-3}}}}",
                RigidFootCompliance * 1e9, "mrad/kNm", Origin),
            new("Short form for a check", "c_{loc}", @"k (b_g + 2\lambda),\; k = 3.2 D/h_s,\; \lambda = \sqrt{G I_{t,f}/k}",
                $@"\frac{{3.2 \cdot {d}}}{{{hs}}} ({b} + 2 \sqrt{{{Tex.Number(FlangeTorsion * 1e-9)} \cdot \frac{{{hs}}}{{3.2 \cdot {d}}} \cdot 10^3}})", ShortForm * 1e-6, "kNm/rad", Origin),
        ];
    }

    private string Reach(FlangeMode mode, int part) =>
        $@"\sqrt{{\frac{{{Tex.Number(FlangeTorsion * 1e-9)} + {Tex.Number(PlateStiffness * 1e-6)} \cdot {Tex.Number(Girder.FlangeSpacing)}/{part} \cdot 10^{{-3}}}}{{{Tex.Number(mode.Foundation * 1e-3)}}}}} \cdot 10^3";
}
