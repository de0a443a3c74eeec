namespace StrutLessons.Nonlinear;

/// <summary>Strain measures of the rod's axis at one place.</summary>
/// <param name="E">Stretch of the axis through the shear centre, e = |r'| − 1.</param>
/// <param name="K1">Curvature k1 = t'·n1, 1/mm.</param>
/// <param name="K2">Curvature k2 = t'·n2, 1/mm.</param>
/// <param name="Tau">Twist of the section along the axis, rad/mm.</param>
internal readonly record struct StrainMeasures(double E, double K1, double K2, double Tau)
{
    public static StrainMeasures operator -(StrainMeasures a, StrainMeasures b) => new(a.E - b.E, a.K1 - b.K1, a.K2 - b.K2, a.Tau - b.Tau);

    /// <summary>Strain of a fibre at a point seen from the shear centre.</summary>
    internal double At(Planar p, bool wagner) => E - p.Y * K1 - p.Z * K2 + (wagner ? 0.5 * Tau * Tau * p.Dot(p) : 0);
}
