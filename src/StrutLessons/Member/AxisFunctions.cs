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

    internal AxisFunctions(T rho)
    {
        T one = T.Of(1);
        Rho = rho;
        Root = T.Sqrt(rho);
        H = T.Of(HalfPi) * Root;
        (T sin, T cos) = T.SinCos(H);
        Sin = sin;
        Cos = cos;
        T tau = H * H;
        HOverSin = T.WhereLess(H, 1e-4, one + tau * T.Of(1.0 / 6), H / sin);
        C = HOverSin * cos;
        G = T.WhereLess(tau, 0.05, Series(tau), (one - C) / tau);
    }

    /// <summary>ρ = N/N_E.</summary>
    internal readonly T Rho;

    /// <summary>r = √ρ.</summary>
    internal readonly T Root;

    /// <summary>h = qL/2.</summary>
    internal readonly T H;

    internal readonly T Sin;

    internal readonly T Cos;

    /// <summary>h/sin h.</summary>
    internal readonly T HOverSin;

    /// <summary>C = h cot h.</summary>
    internal readonly T C;

    /// <summary>g = (1 − h cot h)/h².</summary>
    internal readonly T G;

    /// <summary>g = 1/3 + τ/45 + 2τ²/945 + … from the Laurent series of the cotangent, for τ = h² &lt; 0.05.</summary>
    private static T Series(T tau)
    {
        T g = T.Of(1382.0 / 638512875) + tau * T.Of(4.0 / 18243225);
        g = T.Of(2.0 / 93555) + tau * g;
        g = T.Of(1.0 / 4725) + tau * g;
        g = T.Of(2.0 / 945) + tau * g;
        g = T.Of(1.0 / 45) + tau * g;
        return T.Of(1.0 / 3) + tau * g;
    }
}
