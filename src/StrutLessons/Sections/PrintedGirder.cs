namespace StrutLessons.Sections;

/// <summary>
/// What a printed table says about a girder; null where no source at hand prints it. Kept to compare, never used in a calculation.
/// </summary>
/// <param name="Area">A, mm².</param>
/// <param name="SecondMomentY">I_y about the strong axis, mm⁴.</param>
/// <param name="SecondMomentZ">I_z about the weak axis, mm⁴.</param>
/// <param name="TorsionConstant">I_t, mm⁴, by the catalogue formula of 2014.</param>
/// <param name="WarpingConstant">I_w, mm⁶, flanges alone.</param>
/// <param name="Source">A source for every value.</param>
public sealed record PrintedGirder(
    double? Area, double? SecondMomentY, double? SecondMomentZ, double? TorsionConstant, double? WarpingConstant, string Source);
