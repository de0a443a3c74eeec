namespace StrutLessons.Plates;

/// <summary>
/// Plate analysis of a gusset together with the girder that carries it: on the top flange in the plane of the web, or across the web.
/// Flexibility at the first bolt; angle and sides of the gusset are measured against the girder's axis.
/// </summary>
public static class PlateOnGirder
{
    /// <summary>On the top flange, both flanges held sideways all along.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="girder">The girder.</param>
    /// <param name="material">Material of both; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static GirderJointFlexibility OnFlangeHeld(
        GussetPlate plate, GirderShape girder, PlateMaterial? material = null, int fineness = PlateOnRigidSupport.DefaultFineness) =>
        Analyse(plate, girder, null, null, material, fineness);

    /// <summary>On the top flange of a girder between forks.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="girder">The girder.</param>
    /// <param name="span">Length, and the position where the gauge line meets the flange.</param>
    /// <param name="material">Material of both; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static GirderJointFlexibility OnFlange(
        GussetPlate plate, GirderShape girder, GirderSpan span, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness)
    {
        ArgumentNullException.ThrowIfNull(span);
        return Analyse(plate, girder, null, span, material, fineness);
    }

    /// <summary>Across the web, both flanges held sideways all along.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="girder">The girder.</param>
    /// <param name="height">Height of the gusset above the mid-plane of the bottom flange, mm.</param>
    /// <param name="material">Material of both; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static GirderJointFlexibility OnWebHeld(
        GussetPlate plate, GirderShape girder, double height, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness) =>
        Analyse(plate, girder, height, null, material, fineness);

    /// <summary>Across the web of a girder between forks.</summary>
    /// <param name="plate">The gusset.</param>
    /// <param name="girder">The girder.</param>
    /// <param name="height">Height of the gusset above the mid-plane of the bottom flange, mm.</param>
    /// <param name="span">Length, and the position where the gauge line meets the web.</param>
    /// <param name="material">Material of both; structural steel if not given.</param>
    /// <param name="fineness">Parts of the fine mesh per half free length next to the patch, 2 to 16.</param>
    /// <exception cref="InputException">A dimension out of range.</exception>
    public static GirderJointFlexibility OnWeb(
        GussetPlate plate, GirderShape girder, double height, GirderSpan span, PlateMaterial? material = null,
        int fineness = PlateOnRigidSupport.DefaultFineness)
    {
        ArgumentNullException.ThrowIfNull(span);
        return Analyse(plate, girder, height, span, material, fineness);
    }

    private static GirderJointFlexibility Analyse(
        GussetPlate plate, GirderShape girder, double? height, GirderSpan? span, PlateMaterial? material, int fineness)
    {
        ArgumentNullException.ThrowIfNull(plate);
        ArgumentNullException.ThrowIfNull(girder);
        plate.Checked();
        girder.Checked();
        if (height is { } onWeb)
        {
            WebFoot.CheckHeight(girder, onWeb);
        }

        double sin = Math.Sin(plate.Angle);
        span?.Checked(-plate.LeftFoot / sin, plate.RightFoot / sin);
        GussetPanel.CheckFineness(fineness);
        var whole = new GirderCase(girder, span, (material ?? PlateMaterial.Steel).Checked());
        var coarse = new GirderJointPanel(plate, whole, height, new(fineness, false));
        var fine = new GirderJointPanel(plate, whole, height, new(fineness, true));
        var (gussetField, girderField) = fine.UnitMomentFields();
        return new(plate, girder, height, span, coarse.Flexibility, fine.Flexibility, gussetField, girderField);
    }
}
