namespace StrutLessons.Member;

/// <summary>
/// Curvature in one principal plane at one load, over η = 2x/L − 1 from −1 to 1:
/// d''(η) = Cos cos hη + Sin sin hη + Bow W(η), W = (cos hη − cos(πη/2))/(1 − ρ), regular at ρ = 1.
/// </summary>
internal readonly struct PlaneWave<T> where T : struct, ILane<T>
{
    internal PlaneWave(in AxisFunctions<T> axis, in BowFunctions<T> bowed, in PlaneRotations<T> ends, double length, double bow)
    {
        H = axis.H;
        OneMinusRho = (T.Of(1) - axis.Root) * (T.Of(1) + axis.Root);
        T perLength = T.Of(2 / length);
        T omega2 = T.Of(bow * Math.PI * Math.PI / (length * length));
        Cos = omega2 * bowed.Cosine - perLength * ends.Symmetric * axis.HOverSin;
        Sin = perLength * ends.Antisymmetric * axis.HOverSin / (axis.G * axis.H);
        Bow = omega2 * axis.Rho;
    }

    internal readonly T H;

    internal readonly T OneMinusRho;

    internal readonly T Cos;

    internal readonly T Sin;

    internal readonly T Bow;

    /// <summary>A bound of |d²(d'')/dη²| over the whole bar, 1/mm.</summary>
    internal T SteepestBend()
    {
        // |W| ≤ (π²/8) η² ≤ 1.24 wherever both sinc factors are at most 1.
        T h2 = H * H;
        return h2 * (T.Abs(Cos) + T.Abs(Sin)) + T.Abs(Bow) * (T.Of(Math.PI * Math.PI / 4) + T.Of(1.24) * h2);
    }
}
