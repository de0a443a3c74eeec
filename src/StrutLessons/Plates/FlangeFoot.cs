namespace StrutLessons.Plates;

/// <summary>
/// A girder alone, turned by a moment about its own axis that enters its top flange over the length of a foot. The web bends as a
/// plate; each flange bends sideways and twists.
/// </summary>
public static class FlangeFoot
{
    /// <summary>Both flanges held sideways all along: only the web's bending and the flanges' twisting remain (local part).</summary>
    /// <param name="girder">The girder.</param>
    /// <param name="footLength">Length of the foot along the girder, mm.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half foot or half web height, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static FlangeFootResult HeldFlanges(
        GirderShape girder, double footLength, PlateMaterial? material = null, int fineness = PlateOnRigidSupport.DefaultFineness) =>
        Analyse(girder, footLength, null, material, fineness);

    /// <summary>The whole girder between forks (local and global part together).</summary>
    /// <param name="girder">The girder.</param>
    /// <param name="footLength">Length of the foot along the girder, mm; its middle is at the load position.</param>
    /// <param name="span">Length and load position.</param>
    /// <param name="material">Its material; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half foot or half web height, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static FlangeFootResult FullGirder(
        GirderShape girder, double footLength, GirderSpan span, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness)
    {
        ArgumentNullException.ThrowIfNull(span);
        return Analyse(girder, footLength, span, material, fineness);
    }

    private static FlangeFootResult Analyse(GirderShape girder, double footLength, GirderSpan? span, PlateMaterial? material, int fineness)
    {
        ArgumentNullException.ThrowIfNull(girder);
        girder.Checked();
        Guard.Positive(footLength, "foot length", "mm", "Give the length of the gusset along the girder.");
        span?.Checked(-footLength / 2, footLength / 2);
        GussetPanel.CheckFineness(fineness);
        var whole = new GirderCase(girder, span, (material ?? PlateMaterial.Steel).Checked());
        var coarse = new FlangeFootPanel(whole, footLength, new(fineness, false));
        var fine = new FlangeFootPanel(whole, footLength, new(fineness, true));
        var (coarseRigid, coarseChord) = coarse.RigidFoot();
        var (fineRigid, fineChord) = fine.RigidFoot();
        var (fineUniform, field) = fine.UniformMoment();
        return new(
            girder, footLength, span, new(coarseRigid, fineRigid), new(coarse.UniformMoment().Twist, fineUniform),
            new(coarseChord, fineChord), field);
    }
}
