namespace StrutLessons.Nonlinear;

/// <summary>One rectangle of a section, sides parallel to y and z, in mm.</summary>
/// <param name="YMin">Lower limit along y.</param>
/// <param name="YMax">Upper limit along y.</param>
/// <param name="ZMin">Lower limit along z.</param>
/// <param name="ZMax">Upper limit along z.</param>
/// <exception cref="InputException">A side is not a positive length.</exception>
public sealed record SectionRectangle(double YMin, double YMax, double ZMin, double ZMax)
{
    /// <summary>Side along y, mm.</summary>
    public double Width { get; } = Guard.Positive(YMax - YMin, "side along y", "mm", "Put the larger limit second.");

    /// <summary>Side along z, mm.</summary>
    public double Height { get; } = Guard.Positive(ZMax - ZMin, "side along z", "mm", "Put the larger limit second.");

    /// <summary>True for a sliver of a rounding: one cell is enough, whatever the mesh.</summary>
    internal bool Sliver { get; init; }

    internal double Area => Width * Height;

    internal Planar Middle => new(0.5 * (YMin + YMax), 0.5 * (ZMin + ZMax));

    /// <summary>Cells along y and z: the longer side gets <paramref name="along"/>, the shorter one <paramref name="through"/>, a square the same both ways.</summary>
    internal (int Y, int Z) Cells(int along, int through) =>
        Sliver ? (1, 1)
        : Math.Abs(Width - Height) < 0.01 * Math.Max(Width, Height) ? (through, through)
        : Width > Height ? (along, through)
        : (through, along);
}
