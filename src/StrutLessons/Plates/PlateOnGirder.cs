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

/// <summary>Flexibility of a gusset on a girder from two nested meshes.</summary>
/// <param name="Plate">The gusset.</param>
/// <param name="Girder">The girder.</param>
/// <param name="Height">Height of the gusset on the web, mm; none if it stands on the top flange.</param>
/// <param name="Span">Length and load position; none if the flanges are held.</param>
/// <param name="Coarse">On the mesh of double element size.</param>
/// <param name="Fine">On the fine mesh.</param>
/// <param name="UnitMomentGusset">Deflection of the gusset (mm per N mm) under a unit moment at the first bolt, fine mesh.</param>
/// <param name="UnitMomentGirder">Deflection of the web (mm per N mm) under the same moment.</param>
public sealed record GirderJointFlexibility(
    GussetPlate Plate, GirderShape Girder, double? Height, GirderSpan? Span, BoltFlexibility Coarse, BoltFlexibility Fine,
    PlateField UnitMomentGusset, PlateField UnitMomentGirder)
{
    /// <summary>The limit of the two meshes.</summary>
    public BoltFlexibility Limit { get; } = BoltFlexibility.Limit(Coarse, Fine);

    /// <summary>Slope per moment on both meshes, with the error estimate.</summary>
    public MeshEstimate SlopePerMoment => new(Coarse.SlopePerMoment, Fine.SlopePerMoment);

    /// <summary>Deflection per force on both meshes, with the error estimate.</summary>
    public MeshEstimate DeflectionPerForce => new(Coarse.DeflectionPerForce, Fine.DeflectionPerForce);
}
