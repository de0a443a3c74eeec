namespace StrutLessons.Nonlinear;

/// <summary>
/// One strut for the reference analysis, as plain numbers. Axes as everywhere in this library: x from end 1 to end 2,
/// y along the connected leg from the heel, z towards the gusset. A roll is positive if it turns y towards z.
/// </summary>
/// <param name="Section">Shape of the section.</param>
/// <param name="Steel">Stress-strain law.</param>
/// <param name="Length">L, mm: from end section to end section.</param>
/// <param name="Bow">Stress-free bow at mid-length, mm; its shape is a half sine wave.</param>
/// <param name="ResidualPeak">
/// Peak of the residual stress before it is balanced, MPa: compression at heel and toes, tension between (see <see cref="ReferenceSection"/>). 0 leaves it out.
/// </param>
/// <param name="End1">The end at x = 0.</param>
/// <param name="End2">The end at x = L.</param>
/// <exception cref="InputException">A value is not a possible number.</exception>
public sealed partial record ReferenceStrut(
    ReferenceSection Section, ReferenceSteel Steel, double Length, Planar Bow, double ResidualPeak, ReferenceEnd End1, ReferenceEnd End2)
{
    /// <summary>Shape of the section.</summary>
    public ReferenceSection Section { get; } = Section ?? throw Missing("section");

    /// <summary>Stress-strain law.</summary>
    public ReferenceSteel Steel { get; } = Steel ?? throw Missing("steel");

    /// <summary>L, mm.</summary>
    public double Length { get; } = Guard.Positive(Length, "length", "mm", "Give the length between the two end sections.");

    /// <summary>Stress-free bow at mid-length, mm.</summary>
    public Planar Bow { get; } = Bow.Length <= Length / 20
        ? Bow
        : throw Guard.Fail(Bow.Length, "bow", "mm", $"at most L/20 = {Guard.Text(Length / 20)} mm", "A rolled bar is straight within about L/300 to L/1000.");

    /// <summary>Peak of the residual stress, MPa.</summary>
    public double ResidualPeak { get; } = ResidualPeak >= 0 && ResidualPeak < Steel.YieldStrength
        ? ResidualPeak
        : throw Guard.Fail(ResidualPeak, "residual stress", "MPa", "0 or more and below the yield strength", "A quarter of 235 MPa is common practice for hot-rolled angles.");

    /// <summary>The end at x = 0.</summary>
    public ReferenceEnd End1 { get; } = End1 ?? throw Missing("end 1");

    /// <summary>The end at x = L.</summary>
    public ReferenceEnd End2 { get; } = End2 ?? throw Missing("end 2");

    /// <summary>Plastic resistance of the section under pure compression, A f_y, N.</summary>
    public double SquashLoad => Section.Area * Steel.YieldStrength;

    private static InputException Missing(string field) => new(field, "null", "given", "Leave nothing out.");
}
