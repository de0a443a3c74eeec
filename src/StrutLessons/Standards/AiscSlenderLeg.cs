namespace StrutLessons.Standards;

/// <summary>Effective width of a slender leg, ANSI/AISC 360-22, E7.1 and Table B4.1a case 3.</summary>
internal static class AiscSlenderLeg
{
    private const double C1 = 0.22, C2 = 1.49;

    /// <summary>b_e, mm; the whole leg up to λ = λ_r √(F_y/F_n).</summary>
    internal static double EffectiveWidth(double width, double thickness, double fy, double fn, double elasticModulus)
    {
        double slenderness = width / thickness, limit = 0.45 * Math.Sqrt(elasticModulus / fy);
        if (slenderness <= limit * Math.Sqrt(fy / fn))
        {
            return width;
        }

        double local = Math.Pow(C2 * limit / slenderness, 2) * fy, root = Math.Sqrt(local / fn);
        // Just beyond the limit the formula gives a hair more than the whole leg.
        return width * Math.Min(1, (1 - C1 * root) * root);
    }
}
