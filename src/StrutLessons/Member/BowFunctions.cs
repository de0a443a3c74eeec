namespace StrutLessons.Member;

/// <summary>
/// What a half-sine bow adds to the functions of the load, regular at the Euler load of the hinged bar, where the textbook
/// form b ρ/(1 − ρ) is 0/0. Symbols as in <see cref="AxisFunctions{T}"/>.
/// </summary>
internal readonly struct BowFunctions<T> where T : struct, ILane<T>
{
    private const double HalfPi = Math.PI / 2;

    internal BowFunctions(in AxisFunctions<T> axis)
    {
        T one = T.Of(1);
        T onePlus = one + axis.Root;
        T oneMinus = one - axis.Root;
        // δ = π/2 − h, exact where it is small because 1 − r is.
        T delta = T.Of(HalfPi) * oneMinus;
        T delta2 = delta * delta;
        T away = T.Abs(delta);
        T sinc = T.WhereLess(away, 0.1, SincSeries(delta2), axis.Cos / delta);
        Versine = T.WhereLess(away, 0.1, T.Of(HalfPi) * delta * VersineSeries(delta2), (one - axis.Sin) / oneMinus);
        T share = axis.HOverSin / onePlus;
        Moment = axis.Rho * T.Of(HalfPi) * sinc * share;
        Cosine = T.Of(1 / HalfPi) * axis.Root * (Versine - one) * share;
    }

    /// <summary>(1 − sin h)/(1 − r).</summary>
    internal readonly T Versine;

    /// <summary>ρ C/(1 − ρ): end moment of the clamped, bowed bar in units of 2π EI b/L².</summary>
    internal readonly T Moment;

    /// <summary>
    /// ρ (q/(ω sin h) − 1)/(1 − ρ), ω = π/L: the cosine in the curvature of the clamped, bowed bar,
    /// d'' = b ω² [ρ W(ξ) + Cosine cos qξ] with W = (cos qξ − cos ωξ)/(1 − ρ).
    /// </summary>
    internal readonly T Cosine;

    /// <summary>sin δ/δ for |δ| &lt; 0.1.</summary>
    private static T SincSeries(T delta2)
    {
        T s = T.Of(-1.0 / 5040) + delta2 * T.Of(1.0 / 362880);
        s = T.Of(1.0 / 120) + delta2 * s;
        s = T.Of(-1.0 / 6) + delta2 * s;
        return T.Of(1) + delta2 * s;
    }

    /// <summary>(1 − cos δ)/δ² for |δ| &lt; 0.1.</summary>
    private static T VersineSeries(T delta2)
    {
        T s = T.Of(-1.0 / 40320) + delta2 * T.Of(1.0 / 3628800);
        s = T.Of(1.0 / 720) + delta2 * s;
        s = T.Of(-1.0 / 24) + delta2 * s;
        return T.Of(0.5) + delta2 * s;
    }
}
