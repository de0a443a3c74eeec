using StrutLessons.Sections;

namespace StrutLessons.Eccentricity;

/// <summary>Whether a line of holes fits on a leg.</summary>
internal static class BoltFit
{
    /// <summary>Checks gauge, root fillet and edge distance on a leg of this length.</summary>
    /// <exception cref="InputException">Gauge outside the leg, hole in the fillet, or too close to the toe.</exception>
    internal static void Check(Angle angle, double legLength, BoltLine bolts)
    {
        double g = bolts.Gauge, d0 = bolts.HoleDiameter, t = angle.Thickness, r1 = angle.RootRadius;
        if (g >= legLength)
        {
            throw Guard.Fail(g, "gauge", "mm", $"inside the leg, less than {Guard.Text(legLength)} mm",
                "Measure the gauge from the heel, not from the toe, on the connected leg.");
        }

        // From the heel outwards: half a hole beyond the fillet, then 1.2 d0 to the toe.
        double least = t + r1 + d0 / 2, most = legLength - 1.2 * d0;
        if (least > most)
        {
            throw Guard.Fail(bolts.Diameter, "bolt diameter d", "mm",
                $"small enough for a hole between the root fillet and the toe of a {Guard.Text(legLength)} mm leg",
                $"The hole of {Guard.Text(d0)} mm needs a gauge from {Guard.Text(least)} to {Guard.Text(most)} mm, which is no range: take smaller bolts or a larger angle.");
        }

        if (g < least)
        {
            throw Guard.Fail(g, "gauge", "mm",
                $"between {Guard.Text(least)} and {Guard.Text(most)} mm, so that the hole stays clear of the root fillet (t + r1 + d0/2)",
                "Move the bolt line away from the heel or take smaller bolts.");
        }

        if (g > most)
        {
            throw Guard.Fail(g, "gauge", "mm",
                $"between {Guard.Text(least)} and {Guard.Text(most)} mm, so that e2 = {Guard.Text(legLength - g)} mm to the toe is at least 1.2 d0 = {Guard.Text(1.2 * d0)} mm (EN 1993-1-8:2005 Table 3.3, from memory)",
                "Move the bolt line towards the heel or take smaller bolts.");
        }
    }
}
