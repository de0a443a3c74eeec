using StrutLessons.Member;

namespace StrutLessons.Capacity;

/// <summary>One slenderness of a capacity curve: the strut with hinged, with its own and with rigid ends.</summary>
/// <param name="SystemLength">mm.</param>
/// <param name="RelativeSlenderness">λ̄_v on the system length.</param>
/// <param name="Hinged">Capacity with hinged ends, N.</param>
/// <param name="Real">Capacity with the strut's own springs, N.</param>
/// <param name="Rigid">Capacity with rigid ends, N.</param>
/// <param name="CriticalLoad">Critical load with the strut's own springs, N.</param>
public readonly record struct CapacityCurvePoint(
    double SystemLength, double RelativeSlenderness, double Hinged, double Real, double Rigid, double CriticalLoad);

/// <summary>
/// Capacity against slenderness, with the hinged and the rigid strut as limits of the band. The load points, arms and bow
/// ratio of the strut stay; only the length changes.
/// </summary>
/// <remarks>
/// The band is not a bound in the strict sense: a spring in one plane only can bring the first-yield capacity below that of
/// the hinged strut although it raises the critical load.
/// </remarks>
/// <param name="Strut">The strut whose place is on the curve.</param>
/// <param name="Points">In the order of growing slenderness.</param>
public sealed record CapacityCurve(Strut Strut, IReadOnlyList<CapacityCurvePoint> Points)
{
    /// <summary>Curve between two slendernesses.</summary>
    /// <param name="strut">The strut; its own length gives one point among many.</param>
    /// <param name="fromSlenderness">Smallest λ̄_v, more than 0.</param>
    /// <param name="toSlenderness">Largest λ̄_v, at most 6.</param>
    /// <param name="count">Number of points, 2 to 2000.</param>
    /// <exception cref="InputException">A range that makes no curve, or a length shorter than the strut's arms.</exception>
    public static CapacityCurve Of(Strut strut, double fromSlenderness = 0.3, double toSlenderness = 3, int count = 55)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Guard.Within(fromSlenderness, 0.05, 6, "smallest slenderness", "", "Give the relative slenderness λ̄_v, for example 0.3.");
        Guard.Within(toSlenderness, 0.05, 6, "largest slenderness", "", "Give the relative slenderness λ̄_v, for example 3.");
        Guard.Within(count, 2, 2000, "number of points", "Some 50 points make a smooth curve.");
        if (toSlenderness <= fromSlenderness)
        {
            throw Guard.Fail(toSlenderness, "largest slenderness", "", $"more than the smallest, {Guard.Text(fromSlenderness)}", "Swap the two numbers.");
        }

        double perSlenderness = strut.SystemLength / strut.RelativeSlendernessV;
        double step = (toSlenderness - fromSlenderness) / (count - 1);
        return new(strut, [.. Enumerable.Range(0, count).Select(i => PointAt(strut, perSlenderness * (fromSlenderness + i * step)))]);
    }

    /// <summary>Hinged, real and rigid capacity of the strut at one length.</summary>
    /// <exception cref="InputException">The length is shorter than the strut's arms.</exception>
    public static CapacityCurvePoint PointAt(Strut strut, double systemLength)
    {
        ArgumentNullException.ThrowIfNull(strut);
        Strut real = strut.WithLength(systemLength);
        return new(systemLength, real.RelativeSlendernessV,
            StrutCapacity.LoadOf(real.WithSprings(EndSpring.Hinged)), StrutCapacity.LoadOf(real),
            StrutCapacity.LoadOf(real.WithSprings(EndSpring.Rigid)), CriticalLoad.Of(real));
    }
}
