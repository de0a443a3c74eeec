namespace StrutLessons.Plates;

/// <summary>
/// How a line on a web moves under unit loads: deflection w under a sideways force F, slope θ up the web under a moment M about
/// the girder's axis. Units N, mm, rad.
/// </summary>
/// <param name="DeflectionPerForce">f_ww, mm/N.</param>
/// <param name="DeflectionPerMoment">f_wθ, 1/N; zero at mid-height.</param>
/// <param name="SlopePerMoment">f_θθ, rad/(N mm).</param>
public sealed record WebFlexibility(double DeflectionPerForce, double DeflectionPerMoment, double SlopePerMoment)
{
    /// <summary>Rotational stiffness c = 1/f_θθ, N mm/rad.</summary>
    public double RotationalStiffness => 1 / SlopePerMoment;
}
