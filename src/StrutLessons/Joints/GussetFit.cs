using StrutLessons.Eccentricity;
using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>Whether bolts and leg fit on a gusset.</summary>
internal static class GussetFit
{
    private const string Rule = "(EN 1993-1-8:2005 Table 3.3, from memory)";

    /// <summary>Checks edge and end distances in the plate and that the angle ends before the support.</summary>
    /// <exception cref="InputException">A bolt too close to an edge of the plate, or the angle running into the support.</exception>
    internal static void Check(Gusset gusset, AngleSection section, BoltLine bolts)
    {
        BoltFit.Check(section.Angle, section.ConnectedLength, bolts);
        double edge = 1.2 * bolts.HoleDiameter;
        AtLeast(gusset.WidthLeft, edge, "gusset width left", "e2", "Widen the plate beside the bolt line or take smaller bolts.");
        AtLeast(gusset.WidthRight, edge, "gusset width right", "e2", "Widen the plate beside the bolt line or take smaller bolts.");
        AtLeast(gusset.EndDistance, edge, "gusset end distance", "e1", "Let the plate run further past the last bolt or take smaller bolts.");

        // The square end of the leg lies at s = g − e1; the support comes closest at the leg's near corner.
        double clear = bolts.EndDistance + section.ConnectedLength / 2 / Math.Tan(gusset.Inclination);
        if (gusset.FreeLength < clear - 1e-9 * clear)
        {
            throw Guard.Fail(gusset.FreeLength, "free length g", "mm",
                $"at least {Guard.Text(clear)} mm, so that the end of the angle stays clear of the support",
                "Move the bolts away from the support or shorten the end distance of the angle.");
        }
    }

    private static void AtLeast(double value, double least, string field, string symbol, string advice)
    {
        if (value < least)
        {
            throw Guard.Fail(value, field, "mm", $"at least {symbol} = 1.2 d0 = {Guard.Text(least)} mm {Rule}", advice);
        }
    }
}
