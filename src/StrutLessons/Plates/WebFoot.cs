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
