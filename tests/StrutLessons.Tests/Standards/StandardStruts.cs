using StrutLessons.Materials;
using StrutLessons.Sections;
using StrutLessons.Standards;

namespace StrutLessons.Tests.Standards;

/// <summary>Struts of the checks, and values read from worked steps.</summary>
internal static class StandardStruts
{
    internal static StandardStrut Of(string angle, double length, double yield, int bolts = 2, ConnectedLeg leg = ConnectedLeg.Long) =>
        Of(AngleCatalogue.Find(angle), length, yield, bolts, leg);

    internal static StandardStrut Of(Angle angle, double length, double yield, int bolts = 2, ConnectedLeg leg = ConnectedLeg.Long) =>
        new(angle.Connected(leg), Steel.Custom("given", yield), length, bolts);

    internal static double Value(this StandardResult result, string symbol) => result.Slenderness.Last(s => s.Symbol == symbol).Value;

    internal static double Step(this IWorked result, string symbol) => result.WorkedSteps().First(s => s.Symbol == symbol).Value;
}
