namespace StrutLessons.Sections;

/// <summary>St Venant torsion constant of a rolled angle.</summary>
public static class AngleTorsion
{
    /// <summary>
    /// I_t = ⅓ a t³ + ⅓ (b − t) t³ + α₃ D₃⁴ − 0.21 t⁴, with α₃ = 0.0768 + 0.0479 r₁/t and
    /// D₃ = 2[(3 r₁ + 2 t) − √(2 (2 r₁ + t)²)]. Source: SCI P363, section 3.2.6. In mm⁴; about 2 % above a field solution.
    /// </summary>
    public static double Constant(Angle angle)
    {
        double t = angle.Thickness, r = angle.RootRadius;
        double alpha3 = 0.0768 + 0.0479 * r / t;
        double d3 = 2 * (3 * r + 2 * t - Math.Sqrt(2) * (2 * r + t));
        double t3 = t * t * t;
        return angle.LongLeg * t3 / 3 + (angle.ShortLeg - t) * t3 / 3 + alpha3 * Math.Pow(d3, 4) - 0.21 * t3 * t;
    }
}
