using System.Runtime.CompilerServices;

namespace StrutLessons.Member;

/// <summary>
/// The functions of the load that describe bending in one principal plane, regular for every load 0 &lt; N &lt; 4 N_E:
/// no 0/0 at the Euler load N_E of the hinged bar and no loss of digits for N → 0.
/// </summary>
/// <remarks>
/// ρ = N/N_E, r = √ρ, h = qL/2 = (π/2) r with q² = N/EI.
/// The stability functions (Livesley and Chandler, Stability Functions for Structural Frameworks, 1956, from memory) in the half-angle form:
/// symmetric rotations s(1 − c) = 2C with C = h cot h; antisymmetric rotations s(1 + c) = 2/g with g = (1 − C)/h².
/// Both are finite up to h = π, the buckling load of the clamped bar.
/// </remarks>
internal readonly struct AxisFunctions<T> where T : struct, ILane<T>
{
    private const double HalfPi = Math.PI / 2;

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal AxisFunctions(T rho)
    {
        T one = T.Of(1);
        Rho = rho;
        Root = T.Sqrt(rho);
        H = T.Of(HalfPi) * Root;
        (T sin, T cos) = T.SinCos(H);
        T tau = H * H;
        HOverSin = T.WhereLess(H, 1e-4, one + tau * T.Of(1.0 / 6), H / sin);
        C = HOverSin * cos;
        G = T.WhereLess(tau, 0.05, Series(tau), (one - C) / tau);

        // δ = π/2 − h, exact where it is small because 1 − r is.
        T onePlus = one + Root;
        T oneMinus = one - Root;
        T delta = T.Of(HalfPi) * oneMinus;
        T delta2 = delta * delta;
        T away = T.Abs(delta);
        T sinc = T.WhereLess(away, 0.1, SincSeries(delta2), cos / delta);
        Versine = T.WhereLess(away, 0.1, T.Of(HalfPi) * delta * VersineSeries(delta2), (one - sin) / oneMinus);
        BowMoment = rho * HOverSin * T.Of(HalfPi) * sinc / onePlus;
        BowCosine = T.Of(1 / HalfPi) * Root * HOverSin * (Versine - one) / onePlus;
    }

    /// <summary>ρ = N/N_E.</summary>
    internal T Rho { get; }

    /// <summary>r = √ρ.</summary>
    internal T Root { get; }

    /// <summary>h = qL/2.</summary>
    internal T H { get; }

    /// <summary>h/sin h.</summary>
    internal T HOverSin { get; }

    /// <summary>C = h cot h.</summary>
    internal T C { get; }

    /// <summary>g = (1 − h cot h)/h².</summary>
    internal T G { get; }

    /// <summary>(1 − sin h)/(1 − r).</summary>
    internal T Versine { get; }

    /// <summary>ρ C/(1 − ρ): end moment of the clamped, bowed bar in units of 2π EI b/L².</summary>
    internal T BowMoment { get; }

    /// <summary>
    /// ρ (q/(ω sin h) − 1)/(1 − ρ), ω = π/L: the cosine in the curvature of the clamped, bowed bar,
    /// d'' = b ω² [ρ W(ξ) + BowCosine cos qξ] with W = (cos qξ − cos ωξ)/(1 − ρ).
    /// </summary>
    internal T BowCosine { get; }

    /// <summary>g = 1/3 + τ/45 + 2τ²/945 + … from the Laurent series of the cotangent, for τ = h² &lt; 0.05.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T Series(T tau)
    {
        T g = T.Of(1382.0 / 638512875) + tau * T.Of(4.0 / 18243225);
        g = T.Of(2.0 / 93555) + tau * g;
        g = T.Of(1.0 / 4725) + tau * g;
        g = T.Of(2.0 / 945) + tau * g;
        g = T.Of(1.0 / 45) + tau * g;
        return T.Of(1.0 / 3) + tau * g;
    }

    /// <summary>sin δ/δ for |δ| &lt; 0.1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T SincSeries(T delta2)
    {
        T s = T.Of(-1.0 / 5040) + delta2 * T.Of(1.0 / 362880);
        s = T.Of(1.0 / 120) + delta2 * s;
        s = T.Of(-1.0 / 6) + delta2 * s;
        return T.Of(1) + delta2 * s;
    }

    /// <summary>(1 − cos δ)/δ² for |δ| &lt; 0.1.</summary>
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static T VersineSeries(T delta2)
    {
        T s = T.Of(-1.0 / 40320) + delta2 * T.Of(1.0 / 3628800);
        s = T.Of(1.0 / 720) + delta2 * s;
        s = T.Of(-1.0 / 24) + delta2 * s;
        return T.Of(0.5) + delta2 * s;
    }
}
