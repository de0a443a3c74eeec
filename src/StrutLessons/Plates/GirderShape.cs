namespace StrutLessons.Plates;

/// <summary>
/// A doubly symmetric I-girder as plates: the web spans between the mid-planes of the flanges, root fillets are left out.
/// </summary>
/// <param name="Height">Overall height h, mm.</param>
/// <param name="FlangeWidth">Flange width b, mm.</param>
/// <param name="WebThickness">Web thickness t_w, mm.</param>
/// <param name="FlangeThickness">Flange thickness t_f, mm.</param>
public sealed record GirderShape(double Height, double FlangeWidth, double WebThickness, double FlangeThickness)
{
    /// <summary>Distance between the mid-planes of the flanges, h_s = h − t_f, mm.</summary>
    public double WebHeight => Height - FlangeThickness;

    /// <summary>Second moment of one flange for bending in its own plane, t_f b³/12, mm⁴.</summary>
    public double FlangeSecondMoment => FlangeThickness * FlangeWidth * FlangeWidth * FlangeWidth / 12;

    /// <summary>St Venant torsion constant of one flange as a thin strip, b t_f³/3, mm⁴.</summary>
    public double FlangeTorsion => FlangeWidth * FlangeThickness * FlangeThickness * FlangeThickness / 3;

    /// <summary>This shape, if the plates form a girder.</summary>
    /// <exception cref="InputException">A value out of range; the message says which and why.</exception>
    internal GirderShape Checked()
    {
        Guard.Positive(Height, "girder height", "mm", "Give the overall height.");
        Guard.Positive(FlangeWidth, "flange width", "mm", "Give the full width of a flange.");
        Guard.Positive(WebThickness, "web thickness", "mm", "Give the thickness of the web.");
        Guard.Positive(FlangeThickness, "flange thickness", "mm", "Give the thickness of a flange.");
        Guard.Within(2 * FlangeThickness, 0, 0.8 * Height, "two flange thicknesses", "mm", "They must leave room for a web: check height and thickness.");
        Guard.Within(WebThickness, 0, 0.8 * FlangeWidth, "web thickness", "mm", "A web is thinner than its flanges are wide: check both.");
        return this;
    }
}
