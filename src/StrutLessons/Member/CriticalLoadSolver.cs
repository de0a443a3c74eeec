using System.Runtime.CompilerServices;

namespace StrutLessons.Member;

/// <summary>
/// The elastic critical load: the smallest N at which the strut's end stiffness becomes singular, found by inverse iteration
/// with a nonlinear Rayleigh quotient and proved by a count of negative pivots (Wittrick and Williams, 1971).
/// </summary>
/// <remarks>
/// The root of xᵀK(N)x = 0 lies at or above the lowest critical load for every x, and the count proves that it does not lie
/// above it. If the count shows that a lower one was passed, the load is bracketed by counts alone and the iteration starts again.
/// </remarks>
internal static class CriticalLoadSolver
{
    private const int MostIterations = 40;

    /// <summary>Smallest critical load, N.</summary>
    internal static double Solve(in StrutNumbers strut)
    {
        double clamped = strut.ClampedLoad;
        if (strut.Spring1Y.Scale == 0 && strut.Spring1Z.Scale == 0 && strut.Spring2Y.Scale == 0 && strut.Spring2Z.Scale == 0)
        {
            return clamped;
        }

        // The Euler load of the system length is a lower bound: arms and springs only stiffen.
        double overSystem = 1 + strut.Arm1 + strut.Arm2;
        double start = 0.98 * strut.EulerU / (overSystem * overSystem);
        double found = Iterate(strut, start, clamped);
        if (IsLowest(strut, found, clamped))
        {
            return found;
        }

        (double low, double high) = BracketByCount(strut, clamped);
        if (low >= clamped * (1 - 1e-13))
        {
            return clamped;
        }

        found = Iterate(strut, low, clamped);
        return found >= low && found <= high ? found : BisectByCount(strut, low, high);
    }

    /// <summary>Number of critical loads below <paramref name="load"/>, for 0 &lt; N &lt; 4 N_Ev.</summary>
    internal static int CountBelow(in StrutNumbers strut, double load)
    {
        Factor4<Lane1> f = new EndStiffness<Lane1>(strut, new Lane1(load)).Matrix.Factor();
        return Negative(f.D1) + Negative(f.D2) + Negative(f.D3) + Negative(f.D4);

        static int Negative(Lane1 pivot) => pivot.Value < 0 ? 1 : 0;
    }

    private static bool IsLowest(in StrutNumbers strut, double load, double clamped) =>
        load < clamped && CountBelow(strut, load * (1 - 1e-11)) == 0;

    [MethodImpl(MethodImplOptions.NoInlining)]
    private static double Iterate(in StrutNumbers strut, double start, double clamped)
    {
        double load = start;
        // No symmetry, so that no mode is orthogonal to it.
        var x = new Four<Lane1>(new(1), new(0.7), new(-0.8), new(-0.9));
        for (int i = 0; i < MostIterations; i++)
        {
            var stiffness = new EndStiffness<Lane1>(strut, new Lane1(load));
            Symmetric4<Lane1> k = stiffness.Matrix, b = Softening(strut, stiffness);
            Factor4<Lane1> factor = k.Factor();
            int turns = i == 0 ? 4 : 1;
            for (int turn = 0; turn < turns; turn++)
            {
                x = Unit(factor.Solve(b.Times(x)));
            }

            // xᵀK(N)x has its pole at the clamped bar's buckling load P: the root of α − β/(P − N) with the same value and slope.
            double value = k.Quadratic(x).Value, slope = b.Quadratic(x).Value, gap = clamped - load;
            double next = clamped - slope * gap * gap / (value + slope * gap);
            if (!double.IsFinite(next))
            {
                // The load sits on the critical load to the last digit.
                return load;
            }

            if (next <= 0 || next >= clamped)
            {
                next = 0.5 * (load + clamped);
            }

            // The error of the next load is of the order of this step squared.
            bool settled = Math.Abs(next - load) <= Math.Max(1e-6 * Math.Min(load, gap), 1e-14 * load);
            load = next;
            if (settled)
            {
                break;
            }
        }

        return load;
    }

    /// <summary>−dK/dN, positive definite.</summary>
    private static Symmetric4<Lane1> Softening(in StrutNumbers strut, in EndStiffness<Lane1> stiffness)
    {
        double load = stiffness.Load.Value;
        (double cU, double inverseU) = Derivatives(stiffness.U, load);
        (double cV, double inverseV) = Derivatives(stiffness.V, load);
        double unitU = strut.UnitU, unitV = strut.UnitV;
        EndStiffness<Lane1>.Turn(strut.AxisU, new(-unitU * (inverseU + cU)), new(-unitV * (inverseV + cV)),
            out Lane1 nearY, out Lane1 nearYz, out Lane1 nearZ);
        EndStiffness<Lane1>.Turn(strut.AxisU, new(-unitU * (inverseU - cU)), new(-unitV * (inverseV - cV)),
            out Lane1 farY, out Lane1 farYz, out Lane1 farZ);
        return EndStiffness<Lane1>.Assemble(strut, new(-1), nearY, nearYz, nearZ, farY, farYz, farZ, withSprings: false);
    }

    /// <summary>dC/dN and d(1/g)/dN; from dC/dτ = (C − C² − τ)/2τ and g = (1 − C)/τ, or the series for small τ = h².</summary>
    private static (double C, double InverseG) Derivatives(in AxisFunctions<Lane1> axis, double load)
    {
        double tau = axis.H.Value * axis.H.Value, c = axis.C.Value, g = axis.G.Value;
        double dc, dg;
        if (tau < 0.05)
        {
            dg = 1.0 / 45 + tau * (4.0 / 945 + tau * (3.0 / 4725 + tau * (8.0 / 93555 + tau * (5.0 * 1382 / 638512875))));
            dc = -(g + tau * dg);
        }
        else
        {
            dc = (c - c * c - tau) / (2 * tau);
            dg = -(dc + g) / tau;
        }

        double perLoad = tau / load;
        return (dc * perLoad, -dg / (g * g) * perLoad);
    }

    private static Four<Lane1> Unit(Four<Lane1> x)
    {
        double most = Math.Max(Math.Max(Math.Abs(x.Y1.Value), Math.Abs(x.Z1.Value)), Math.Max(Math.Abs(x.Y2.Value), Math.Abs(x.Z2.Value)));
        Lane1 scale = new(1 / most);
        return new(x.Y1 * scale, x.Z1 * scale, x.Y2 * scale, x.Z2 * scale);
    }

    private static (double Low, double High) BracketByCount(in StrutNumbers strut, double clamped)
    {
        double low = 0, high = clamped;
        for (int i = 0; i < 12 || (low == 0 && i < 60); i++)
        {
            double middle = 0.5 * (low + high);
            if (CountBelow(strut, middle) == 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return (low, high);
    }

    private static double BisectByCount(in StrutNumbers strut, double low, double high)
    {
        while (high - low > 4 * double.BitIncrement(high) - 4 * high)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (CountBelow(strut, middle) == 0)
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return high;
    }
}
