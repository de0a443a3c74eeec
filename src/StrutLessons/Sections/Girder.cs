namespace StrutLessons.Sections;

/// <summary>
/// A doubly symmetric rolled I-girder: height h, flange width b, web t_w, flange t_f, root radius r. Immutable; mm.
/// y is the strong axis (parallel to the flanges), z the weak axis.
/// </summary>
public sealed partial record Girder
{
    /// <summary>A girder from its dimensions; r = 0 for a welded section without fillets.</summary>
    /// <param name="name">Designation.</param>
    /// <param name="height">h over all, mm.</param>
    /// <param name="width">Flange width b, mm.</param>
    /// <param name="webThickness">t_w, mm.</param>
    /// <param name="flangeThickness">t_f, mm.</param>
    /// <param name="rootRadius">r between web and flange, mm.</param>
    /// <param name="source">Where the dimensions come from.</param>
    /// <exception cref="InputException">A dimension is not positive or the parts do not fit into each other.</exception>
    public Girder(
        string name, double height, double width, double webThickness, double flangeThickness, double rootRadius, string source = "custom")
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new InputException("name", "''", "a designation", "Give the girder a name such as 'IPE 360'.");
        }

        Height = Guard.Positive(height, "girder height h", "mm", "Give the height over both flanges.");
        Width = Guard.Positive(width, "flange width b", "mm", "Give the full width of the flange.");
        WebThickness = Guard.Positive(webThickness, "web thickness t_w", "mm", "Give the thickness of the web.");
        FlangeThickness = Guard.Positive(flangeThickness, "flange thickness t_f", "mm", "Give the thickness of the flange.");
        RootRadius = Guard.NotNegative(rootRadius, "root radius r", "mm", "Give 0 for a welded section.");
        if (flangeThickness >= height / 2)
        {
            throw Guard.Fail(flangeThickness, "flange thickness t_f", "mm", $"less than h/2 = {Guard.Text(height / 2)} mm",
                "Check the order of the numbers: height, width, web, flange, radius.");
        }

        if (webThickness >= width)
        {
            throw Guard.Fail(webThickness, "web thickness t_w", "mm", $"less than the flange width b = {Guard.Text(width)} mm",
                "Check the order of the numbers: height, width, web, flange, radius.");
        }

        double room = Math.Min((height - 2 * flangeThickness) / 2, (width - webThickness) / 2);
        if (rootRadius > room)
        {
            throw Guard.Fail(rootRadius, "root radius r", "mm", $"at most {Guard.Text(room)} mm, the room between web and flange",
                "Check the radius; rolled girders have 5 to 30 mm.");
        }

        Name = name;
        Source = source;
    }

    /// <summary>Designation.</summary>
    public string Name { get; }

    /// <summary>Height h over all, mm.</summary>
    public double Height { get; }

    /// <summary>Flange width b, mm.</summary>
    public double Width { get; }

    /// <summary>Web thickness t_w, mm.</summary>
    public double WebThickness { get; }

    /// <summary>Flange thickness t_f, mm.</summary>
    public double FlangeThickness { get; }

    /// <summary>Root radius r, mm.</summary>
    public double RootRadius { get; }

    /// <summary>Where the dimensions come from.</summary>
    public string Source { get; }

    /// <summary>Distance h_s = h − t_f between the flange mid-planes, mm.</summary>
    public double FlangeSpacing => Height - FlangeThickness;

    /// <summary>Area A = 2 b t_f + (h − 2 t_f) t_w + (4 − π) r², mm².</summary>
    public double Area => 2 * Width * FlangeThickness + ClearHeight * WebThickness + (4 - Math.PI) * RootRadius * RootRadius;

    /// <summary>Second moment about the strong axis, fillets included, mm⁴.</summary>
    public double SecondMomentY =>
        (Width * Math.Pow(Height, 3) - (Width - WebThickness) * Math.Pow(ClearHeight, 3)) / 12
        + Fillets(ClearHeight / 2 - RootFillet.Centroid * RootRadius);

    /// <summary>Second moment about the weak axis, fillets included, mm⁴.</summary>
    public double SecondMomentZ =>
        (2 * FlangeThickness * Math.Pow(Width, 3) + ClearHeight * Math.Pow(WebThickness, 3)) / 12
        + Fillets(WebThickness / 2 + RootFillet.Centroid * RootRadius);

    /// <summary>Second moment of one flange about the weak axis, I_f = t_f b³/12, mm⁴.</summary>
    public double FlangeSecondMoment => FlangeThickness * Math.Pow(Width, 3) / 12;

    /// <summary>St Venant torsion constant of one flange plate alone, b t_f³/3, mm⁴.</summary>
    public double FlangeTorsionConstant => Width * Math.Pow(FlangeThickness, 3) / 3;

    private double ClearHeight => Height - 2 * FlangeThickness;

    /// <summary>St Venant torsion constant I_t by the chosen formula, mm⁴.</summary>
    /// <exception cref="InputException">Not a named rule.</exception>
    public double TorsionConstant(TorsionConstantRule rule = TorsionConstantRule.Catalogue2014) => InTorsion(rule).StVenant;

    /// <summary>Warping constant I_w by the chosen formula, mm⁶.</summary>
    /// <exception cref="InputException">Not a named rule.</exception>
    public double WarpingConstant(WarpingConstantRule rule = WarpingConstantRule.FlangesOnly) =>
        InTorsion(warpingRule: rule).Warping;

    /// <summary>I_t and I_w with their worked steps.</summary>
    /// <exception cref="InputException">Not a named rule.</exception>
    public GirderTorsionConstants InTorsion(
        TorsionConstantRule rule = TorsionConstantRule.Catalogue2014,
        WarpingConstantRule warpingRule = WarpingConstantRule.FlangesOnly) => new(this, rule, warpingRule);

    /// <summary>The designation.</summary>
    public override string ToString() => Name;

    /// <summary>Four root fillets whose centroids lie this far from the axis.</summary>
    private double Fillets(double distance) =>
        4 * (RootFillet.OwnMoment * Math.Pow(RootRadius, 4) + RootFillet.Area * RootRadius * RootRadius * distance * distance);
}
