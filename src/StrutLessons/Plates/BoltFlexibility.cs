namespace StrutLessons.Plates;

/// <summary>
/// How the first bolt moves under unit loads there: deflection w out of the gusset's plane, slope θ along the strut, slope ω
/// across it, under a force F, a moment M and a twisting moment T that work on them. Units N, mm, rad.
/// </summary>
/// <param name="DeflectionPerForce">f_ww, mm/N.</param>
/// <param name="DeflectionPerMoment">f_wθ, 1/N; equal to the slope per force.</param>
/// <param name="SlopePerMoment">f_θθ, rad/(N mm).</param>
/// <param name="DeflectionPerTwist">f_wω, 1/N; zero for a symmetric gusset.</param>
/// <param name="SlopePerTwist">f_θω, rad/(N mm); zero for a symmetric gusset.</param>
/// <param name="RollPerTwist">f_ωω, rad/(N mm).</param>
public sealed record BoltFlexibility(
    double DeflectionPerForce, double DeflectionPerMoment, double SlopePerMoment,
    double DeflectionPerTwist, double SlopePerTwist, double RollPerTwist) : IWorked
{
    /// <summary>Rotational stiffness of the hinge, c = 1/f_θθ, N mm/rad.</summary>
    public double RotationalStiffness => 1 / SlopePerMoment;

    /// <summary>Distance from the first bolt back to the hinge, s_h = f_wθ/f_θθ, mm.</summary>
    public double HingeDistance => DeflectionPerMoment / SlopePerMoment;

    /// <summary>Stiffness against a shift of the hinge, k_t = 1/(f_ww − f_wθ²/f_θθ), N/mm.</summary>
    public double ShearStiffness => 1 / (DeflectionPerForce - DeflectionPerMoment * DeflectionPerMoment / SlopePerMoment);

    /// <summary>The three flexibilities and what follows from them; kN, kNm, mrad and mm.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        // 1 mm/N = 1e3 mm/kN, 1/N = 1e6 mm/kNm, 1 rad/(N mm) = 1e9 mrad/kNm.
        const string analysis = "plate analysis", centre = "elastic centre of the joint";
        double ww = DeflectionPerForce * 1e3, wTheta = DeflectionPerMoment * 1e6, theta = SlopePerMoment * 1e9;
        return
        [
            new("Deflection at the first bolt per force", "f_{ww}", "", "", ww, "mm/kN", analysis),
            new("Deflection at the first bolt per moment", @"f_{w\theta}", "", "", wTheta, "mm/kNm", analysis),
            new("Slope at the first bolt per moment", @"f_{\theta\theta}", "", "", theta, "mrad/kNm", analysis),
            new("Rotational stiffness of the joint", "c", @"\frac{1}{f_{\theta\theta}}", $@"\frac{{1000}}{{{Tex.Number(theta)}}}",
                RotationalStiffness * 1e-6, "kNm/rad", "definition"),
            new("Distance from the first bolt back to the hinge", "s_h", @"\frac{f_{w\theta}}{f_{\theta\theta}}",
                $@"1000 \cdot \frac{{{Tex.Number(wTheta)}}}{{{Tex.Number(theta)}}}", HingeDistance, "mm", centre),
            new("Stiffness against a shift of the hinge", "k_t", @"\frac{1}{f_{ww} - f_{w\theta}^2/f_{\theta\theta}}",
                $@"\frac{{1}}{{{Tex.Number(ww)} - \frac{{{Tex.Number(wTheta)} \cdot {Tex.Number(wTheta)}}}{{{Tex.Number(theta)}}}}}",
                ShearStiffness * 1e-3, "kN/mm", centre),
        ];
    }

    /// <summary>Entry by entry the limit of two meshes.</summary>
    internal static BoltFlexibility Limit(BoltFlexibility coarse, BoltFlexibility fine)
    {
        return new(
            Of(b => b.DeflectionPerForce), Of(b => b.DeflectionPerMoment), Of(b => b.SlopePerMoment),
            Of(b => b.DeflectionPerTwist), Of(b => b.SlopePerTwist), Of(b => b.RollPerTwist));

        double Of(Func<BoltFlexibility, double> entry) => new MeshEstimate(entry(coarse), entry(fine)).Value;
    }

    /// <summary>From the movements of a rigid patch.</summary>
    internal static BoltFlexibility From(KeptSystem patch)
    {
        return new(
            Of(RigidPatch.Deflection, RigidPatch.Deflection), Of(RigidPatch.Deflection, RigidPatch.Slope),
            Of(RigidPatch.Slope, RigidPatch.Slope), Of(RigidPatch.Deflection, RigidPatch.Roll),
            Of(RigidPatch.Slope, RigidPatch.Roll), Of(RigidPatch.Roll, RigidPatch.Roll));

        double Of(int row, int column) => patch.Flexibility(row, column);
    }
}
