using System.Runtime.CompilerServices;
using StrutLessons.Member;

namespace StrutLessons.Capacity;

/// <summary>
/// Utilisation max|s|/f_y at four loads at once, at ten stations and five corners: coarse and fast, for the scan that
/// guards against a missed first crossing.
/// </summary>
internal static class LoadScan
{
    private const int Stations = 5;

    /// <summary>cos(πη/2) and the limit of W for ρ → 1 at η = 1/9, 3/9, …, 1.</summary>
    private static readonly FiveNumbers BowCos = AtStations(eta => Math.Cos(Math.PI / 2 * eta));
    private static readonly FiveNumbers EulerShape = AtStations(eta => Math.PI / 4 * eta * Math.Sin(Math.PI / 2 * eta));

    /// <summary>Utilisation of the loads, each against the yield criteria asked for.</summary>
    internal static Lane4 Utilisation(in StrutNumbers strut, Lane4 load, bool compression, bool tension)
    {
        var stiffness = new EndStiffness<Lane4>(strut, load);
        var ends = new EndRotations<Lane4>(strut, stiffness);
        var u = new PlaneWave<Lane4>(stiffness.U, ends.BowU, ends.U, strut.Length, strut.BowU);
        var v = new PlaneWave<Lane4>(stiffness.V, ends.BowV, ends.V, strut.Length, strut.BowV);
        Lane4 mean = load * Lane4.Of(1 / strut.Area), e = Lane4.Of(strut.E);
        var most = Lane4.Of(double.NegativeInfinity);
        Turner turnU = new(u.H), turnV = new(v.H);
        for (int i = 0; i < Stations; i++)
        {
            Lane4 evenU = e * (u.Cos * turnU.Cos + u.Bow * Shape(u, turnU.Cos, i));
            Lane4 evenV = e * (v.Cos * turnV.Cos + v.Bow * Shape(v, turnV.Cos, i));
            Lane4 oddU = e * u.Sin * turnU.Sin, oddV = e * v.Sin * turnV.Sin;
            for (int corner = 0; corner < 5; corner++)
            {
                Lane4 ru = Lane4.Of(strut.CornersU[corner]), rv = Lane4.Of(strut.CornersV[corner]);
                Lane4 even = mean + ru * evenU + rv * evenV, odd = Lane4.Abs(ru * oddU + rv * oddV);
                most = compression ? Lane4.Max(most, even + odd) : most;
                most = tension ? Lane4.Max(most, odd - even) : most;
            }

            turnU = turnU.Next();
            turnV = turnV.Next();
        }

        return most * Lane4.Of(1 / strut.YieldStrength);
    }

    [MethodImpl(MethodImplOptions.AggressiveInlining)]
    private static Lane4 Shape(in PlaneWave<Lane4> wave, Lane4 cos, int station) =>
        Lane4.WhereLess(Lane4.Abs(wave.OneMinusRho), 1e-7,
            Lane4.Of(EulerShape[station]),
            (cos - Lane4.Of(BowCos[station])) / wave.OneMinusRho);

    private static FiveNumbers AtStations(Func<double, double> function)
    {
        FiveNumbers values = default;
        for (int i = 0; i < Stations; i++)
        {
            values[i] = function((2 * i + 1) / 9.0);
        }

        return values;
    }

    /// <summary>sin hη and cos hη from one station to the next by the addition theorem.</summary>
    private readonly struct Turner
    {
        private readonly Lane4 stepSin, stepCos;

        internal Turner(Lane4 h)
        {
            (Sin, Cos) = Lane4.SinCos(h * Lane4.Of(1.0 / 9));
            stepSin = Lane4.Of(2) * Sin * Cos;
            stepCos = Lane4.Of(1) - Lane4.Of(2) * Sin * Sin;
        }

        private Turner(Lane4 sin, Lane4 cos, Lane4 stepSin, Lane4 stepCos)
        {
            Sin = sin;
            Cos = cos;
            this.stepSin = stepSin;
            this.stepCos = stepCos;
        }

        internal Lane4 Sin { get; }

        internal Lane4 Cos { get; }

        [MethodImpl(MethodImplOptions.AggressiveInlining)]
        internal Turner Next() => new(Sin * stepCos + Cos * stepSin, Cos * stepCos - Sin * stepSin, stepSin, stepCos);
    }
}
