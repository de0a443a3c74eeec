namespace StrutLessons.Nonlinear;

/// <summary>Root fillet and toe roundings of an angle as slivers across the rounding; every sliver has the exact area under the arc.</summary>
internal static class AngleRoundings
{
    private const int Slivers = 4;

    internal static void Add(List<SectionRectangle> parts, double b1, double b2, double t, double root, double toe)
    {
        for (int i = 0; i < Slivers; i++)
        {
            double from = (double)i / Slivers, to = (i + 1.0) / Slivers;
            if (root > 0)
            {
                // Height of the fillet at the distance s·r from the leg: r (1 − √(1 − (1 − s)²)).
                double height = root * (1 - Arc(1 - to, 1 - from));
                parts.Add(new SectionRectangle(t + from * root, t + to * root, -t - height, -t) { Sliver = true });
            }
            if (toe > 0)
            {
                // Thickness left at the distance s·r into the rounding: t − r (1 − √(1 − s²)).
                double left = t - toe * (1 - Arc(from, to));
                parts.Add(new SectionRectangle(b1 - toe + from * toe, b1 - toe + to * toe, -left, 0) { Sliver = true });
                parts.Add(new SectionRectangle(0, left, -b2 + toe - to * toe, -b2 + toe - from * toe) { Sliver = true });
            }
        }
    }

    /// <summary>Mean of √(1 − s²) between two places.</summary>
    private static double Arc(double from, double to)
    {
        static double Integral(double s) => 0.5 * (s * Math.Sqrt(1 - s * s) + Math.Asin(s));
        return (Integral(to) - Integral(from)) / (to - from);
    }
}
