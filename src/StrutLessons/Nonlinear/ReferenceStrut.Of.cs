using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Nonlinear;

public sealed partial record ReferenceStrut
{
    /// <summary>Peak of the residual stress that is usual for rolled angles of any grade: 0.25 · 235 MPa (common practice).</summary>
    public const double UsualResidualPeak = 0.25 * 235;

    /// <summary>The bow that is usual beside residual stress and yielding, as a part of the system length: L/1000 (common practice).</summary>
    public const double UsualBowRatio = 1.0 / 1000;

    /// <summary>
    /// The same strut as the plane model has it, for the reference analysis and for <see cref="RollAnalysis"/>: axes, load points, springs and arms
    /// are the same; the length runs between the bolts; the section has its fillets, roundings and torsion constant.
    /// </summary>
    /// <param name="strut">The strut; its own bows are not used.</param>
    /// <param name="bow">The bow, between the bolts.</param>
    /// <param name="residualPeak">Peak of the residual stress before it is balanced, MPa; the elastic models ignore it.</param>
    /// <exception cref="InputException">
    /// A constant joint moment (the load path has one load alone), legs too thick for the reference section, a bow above L/20, or a residual stress that is not possible.
    /// </exception>
    public static ReferenceStrut Of(Strut strut, Bow bow, double residualPeak = UsualResidualPeak)
    {
        ArgumentNullException.ThrowIfNull(strut);
        ArgumentNullException.ThrowIfNull(bow);
        Angle angle = strut.Section.Angle;
        var section = ReferenceSection.Angle(
            strut.Section.ConnectedLength, strut.Section.OutstandingLength, angle.Thickness, angle.RootRadius, angle.ToeRadius, strut.Section.TorsionConstant);
        var steel = new ReferenceSteel(strut.Steel.ElasticModulus, strut.Steel.ShearModulus, strut.Steel.YieldStrength);
        return new(section, steel, strut.BarLength, bow.Amplitude * bow.Direction, residualPeak, EndOf(strut.End1), EndOf(strut.End2));
    }

    private static ReferenceEnd EndOf(StrutEnd end) => end.ConstantMoment == Planar.Zero
        ? new(end.Eccentricity, end.Spring.InPlane, end.Spring.OutOfPlane, end.ArmLength)
        : throw Guard.Fail(end.ConstantMoment.Length, "constant joint moment", "N mm", "0 for this analysis",
            "Every load grows together along the path: give the tie's force in proportion to the strut's, or leave the tie out.");
}
