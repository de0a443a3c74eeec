namespace StrutLessons.Sections;

/// <summary>Which leg of an angle is bolted to the gusset.</summary>
public enum ConnectedLeg
{
    /// <summary>The longer leg (either leg of an equal angle).</summary>
    Long,

    /// <summary>The shorter leg.</summary>
    Short,
}

/// <summary>
/// The shape of a rolled angle: legs over their full outside, thickness, root radius and toe radius.
/// The heel and the outer corners of the toes are sharp; the inner corner of each toe is rounded (EN 10056-1 practice).
/// Immutable; lengths in mm.
/// </summary>
public sealed record Angle
{
    /// <summary>An angle from its dimensions.</summary>
    /// <param name="name">Designation, for example <c>L 80x80x8</c>.</param>
    /// <param name="longLeg">Longer leg a, outside to toe, mm.</param>
    /// <param name="shortLeg">Shorter leg b, mm; equal to <paramref name="longLeg"/> for an equal angle.</param>
    /// <param name="thickness">Leg thickness t, mm.</param>
    /// <param name="rootRadius">Fillet radius r₁ between the legs, mm; 0 for a sharp root.</param>
    /// <param name="toeRadius">Radius r₂ of the inner toe corners, mm; 0 for sharp toes.</param>
    /// <param name="source">Where the dimensions come from.</param>
    /// <exception cref="InputException">A dimension is not positive, the legs are swapped, or the radii do not fit the legs.</exception>
    public Angle(
        string name, double longLeg, double shortLeg, double thickness, double rootRadius, double toeRadius, string source = "custom")
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new InputException("name", "''", "a designation", "Give the angle a name such as 'L 80x80x8'.");
        }

        LongLeg = Guard.Positive(longLeg, "long leg a", "mm", "Measure the leg over its full outside, from the heel to the toe.");
        ShortLeg = Guard.Positive(shortLeg, "short leg b", "mm", "Measure the leg over its full outside, from the heel to the toe.");
        if (shortLeg > longLeg)
        {
            throw Guard.Fail(shortLeg, "short leg b", "mm", $"at most the long leg a = {Guard.Text(longLeg)} mm",
                "Swap the legs: a is the longer one. Say with ConnectedLeg which leg is bolted.");
        }

        Thickness = Guard.Positive(thickness, "thickness t", "mm", "Give the thickness of the legs.");
        if (thickness >= shortLeg)
        {
            throw Guard.Fail(thickness, "thickness t", "mm", $"less than the short leg b = {Guard.Text(shortLeg)} mm",
                "Check the order of the numbers: legs first, then thickness.");
        }

        RootRadius = Guard.NotNegative(rootRadius, "root radius r1", "mm", "Give 0 for a sharp root.");
        ToeRadius = Guard.NotNegative(toeRadius, "toe radius r2", "mm", "Give 0 for sharp toes; rolled angles have about half the root radius.");
        if (toeRadius > thickness)
        {
            throw Guard.Fail(toeRadius, "toe radius r2", "mm", $"at most the thickness t = {Guard.Text(thickness)} mm",
                "The toe is only as thick as the leg; rolled angles have about half the root radius.");
        }

        if (thickness + rootRadius > shortLeg - toeRadius)
        {
            throw Guard.Fail(rootRadius, "root radius r1", "mm",
                $"at most b − t − r2 = {Guard.Text(shortLeg - thickness - toeRadius)} mm",
                "The fillet must end before the rounding of the toe begins.");
        }

        Name = name;
        Source = source;
    }

    /// <summary>Trade designation.</summary>
    public string Name { get; }

    /// <summary>Longer leg a, mm.</summary>
    public double LongLeg { get; }

    /// <summary>Shorter leg b, mm.</summary>
    public double ShortLeg { get; }

    /// <summary>Leg thickness t, mm.</summary>
    public double Thickness { get; }

    /// <summary>Root radius r₁, mm.</summary>
    public double RootRadius { get; }

    /// <summary>Toe radius r₂, mm.</summary>
    public double ToeRadius { get; }

    /// <summary>Where the dimensions come from.</summary>
    public string Source { get; }

    /// <summary>True if both legs have the same length.</summary>
    public bool IsEqual => LongLeg == ShortLeg;

    /// <summary>The angle with one leg laid on the gusset: all properties in the axes of that leg.</summary>
    /// <param name="leg">Which leg is bolted; for an equal angle both give the same section.</param>
    /// <exception cref="InputException"><paramref name="leg"/> is not a named value.</exception>
    public AngleSection Connected(ConnectedLeg leg = ConnectedLeg.Long) => new(this, leg);
}
