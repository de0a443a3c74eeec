namespace StrutLessons.Plates;

/// <summary>
/// A girder alone, pushed and turned by a gusset that stands across its web. The foot is a straight line: the web under it keeps
/// w = w0 + β·x and has one slope θ up the web; the gusset's own thickness is not counted as a footprint.
/// </summary>
public static class WebFoot
{
    /// <summary>Both flanges held sideways all along: only the web's bending and the flanges' twisting remain (local part).</summary>
    /// <param name="girder">The girder.</param>
    /// <param name="footLength">Length of the foot along the girder, mm.</param>
    /// <param name="height">Height of the foot above the mid-plane of the bottom flange, mm.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half foot or half web height, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static WebFootResult HeldFlanges(
        GirderShape girder, double footLength, double height, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness) =>
        Analyse(girder, footLength, height, null, material, fineness);

    /// <summary>The whole girder between forks (local and global part together).</summary>
    /// <param name="girder">The girder.</param>
    /// <param name="footLength">Length of the foot along the girder, mm; its middle is at the load position.</param>
    /// <param name="height">Height of the foot above the mid-plane of the bottom flange, mm.</param>
    /// <param name="span">Length and load position.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half foot or half web height, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static WebFootResult FullGirder(
        GirderShape girder, double footLength, double height, GirderSpan span, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness)
    {
        ArgumentNullException.ThrowIfNull(span);
        return Analyse(girder, footLength, height, span, material, fineness);
    }

    /// <summary>Refuses a foot that does not stand on the web with some web above and below it.</summary>
    internal static void CheckHeight(GirderShape girder, double height) =>
        Guard.Within(
            height, LeastShare * girder.WebHeight, (1 - LeastShare) * girder.WebHeight, "height on the web", "mm",
            "Measure from the mid-plane of the bottom flange; closer to a flange the joint belongs to the flange.");

    private static WebFootResult Analyse(
        GirderShape girder, double footLength, double height, GirderSpan? span, PlateMaterial? material, int fineness)
    {
        ArgumentNullException.ThrowIfNull(girder);
        girder.Checked();
        Guard.Positive(footLength, "foot length", "mm", "Give the length of the gusset along the girder.");
        CheckHeight(girder, height);
        span?.Checked(-footLength / 2, footLength / 2);
        GussetPanel.CheckFineness(fineness);
        var whole = new GirderCase(girder, span, (material ?? PlateMaterial.Steel).Checked());
        var (coarse, _) = WebFootPanel.Analyse(whole, footLength, height, new(fineness, false));
        var (fine, field) = WebFootPanel.Analyse(whole, footLength, height, new(fineness, true));
        return new(girder, footLength, height, span, coarse, fine, field);
    }

    // Nearer to a flange than a twentieth of the web the strip between them is shorter than the weld.
    private const double LeastShare = 0.05;
}

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

/// <summary>Flexibility of a girder's web from two nested meshes.</summary>
/// <param name="Girder">The girder.</param>
/// <param name="FootLength">Length of the foot, mm.</param>
/// <param name="Height">Height of the foot, mm.</param>
/// <param name="Span">Length and load position; none if the flanges are held.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMoment">Deflection of the web (mm per N mm) under a unit moment, fine mesh.</param>
public sealed record WebFootResult(
    GirderShape Girder, double FootLength, double Height, GirderSpan? Span, WebFlexibility Coarse, WebFlexibility Fine,
    PlateField UnitMoment)
{
    /// <summary>The limit of the two meshes.</summary>
    public WebFlexibility Limit { get; } = new(
        new MeshEstimate(Coarse.DeflectionPerForce, Fine.DeflectionPerForce).Value,
        new MeshEstimate(Coarse.DeflectionPerMoment, Fine.DeflectionPerMoment).Value,
        new MeshEstimate(Coarse.SlopePerMoment, Fine.SlopePerMoment).Value);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}
