using StrutLessons.Capacity;
using StrutLessons.Member;

namespace StrutLessons.Standards;

/// <summary>The curves of the rules over the band of the spring model, for one strut whose length changes.</summary>
/// <param name="Model">Hinged, real and rigid ends along the slenderness.</param>
/// <param name="Curves">One curve for each rule.</param>
public sealed record StandardCurves(CapacityCurve Model, IReadOnlyList<StandardCurve> Curves)
{
    /// <summary>The curves between two slendernesses.</summary>
    /// <param name="strut">The strut of the spring model.</param>
    /// <param name="boltsPerEnd">Bolts at each end; 0 for a weld.</param>
    /// <param name="rules">The rules; all of <see cref="RuleChoice.All"/> unless chosen.</param>
    /// <param name="fromSlenderness">Smallest λ̄_v, at least 0.2.</param>
    /// <param name="toSlenderness">Largest λ̄_v, at most 6.</param>
    /// <param name="count">Number of points, 2 to 2000.</param>
    /// <exception cref="InputException">A range that makes no curve.</exception>
    public static StandardCurves Of(
        Strut strut, int boltsPerEnd = 2, IReadOnlyList<RuleChoice>? rules = null,
        double fromSlenderness = 0.3, double toSlenderness = 3, int count = 55)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Guard.Within(fromSlenderness, 0.2, 6, "smallest slenderness", "", "Give the relative slenderness λ̄_v, for example 0.3.");
        CapacityCurve model = CapacityCurve.Of(strut, fromSlenderness, toSlenderness, count);
        var standard = new StandardStrut(strut.Section, strut.Steel, strut.SystemLength, boltsPerEnd);
        double perSlenderness = strut.SystemLength / strut.RelativeSlendernessV;
        double[] slendernesses = [.. model.Points.Select(p => p.RelativeSlenderness)];
        return new(model, [.. (rules ?? RuleChoice.All).Select(r => StandardCurve.Of(r, standard, perSlenderness, slendernesses))]);
    }
}
