using System.Runtime.CompilerServices;

namespace StrutLessons.Member;

/// <summary>
/// Curvature in one principal plane at one load, over η = 2x/L − 1 from −1 to 1:
/// d''(η) = Cos cos hη + Sin sin hη + Bow W(η), W = (cos hη − cos(πη/2))/(1 − ρ), regular at ρ = 1.
/// </summary>
internal readonly struct PlaneWave<T> where T : struct, ILane<T>
{
    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    internal PlaneWave(in AxisFunctions<T> axis, in PlaneRotations<T> ends, double length, double bow)
    {
        H = axis.H;
        OneMinusRho = (T.Of(1) - axis.Root) * (T.Of(1) + axis.Root);
        T perLength = T.Of(2 / length);
        T omega2 = T.Of(bow * Math.PI * Math.PI / (length * length));
        Cos = omega2 * axis.BowCosine - perLength * ends.Symmetric * axis.HOverSin;
        Sin = perLength * ends.Antisymmetric * axis.HOverSin / (axis.G * axis.H);
        Bow = omega2 * axis.Rho;
    }

    internal T H { get; }

    internal T OneMinusRho { get; }

    internal T Cos { get; }

    internal T Sin { get; }

    internal T Bow { get; }
}
