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

    /// <summary>|1 − ρ| below which W is taken at its limit.</summary>
    private const double NearEuler = 1e-7;

    /// <summary>cos(πη/2) and the limit of W for ρ → 1 at η = 1/9, 3/9, …, 1.</summary>
    private static readonly FiveNumbers BowCos = AtStations(eta => Math.Cos(Math.PI / 2 * eta));
    private static readonly FiveNumbers EulerShape = AtStations(eta => Math.PI / 4 * eta * Math.Sin(Math.PI / 2 * eta));

    /// <summary>Utilisation of the loads at the stations, each against the yield criteria asked for.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="load">Loads, N.</param>
    /// <param name="compression">True if compression counts.</param>
    /// <param name="tension">True if tension counts.</param>
    /// <param name="hidden">By how much the utilisation between the stations may exceed that at them.</param>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal static Lane4 Utilisation(in StrutNumbers strut, Lane4 load, bool compression, bool tension, out Lane4 hidden)
    {
        var stiffness = new EndStiffness<Lane4>(strut, load);
        var ends = new EndRotations<Lane4>(strut, stiffness);
        var u = new PlaneWave<Lane4>(stiffness.U, ends.BowU, ends.U, strut.Length, strut.BowU);
        var v = new PlaneWave<Lane4>(stiffness.V, ends.BowV, ends.V, strut.Length, strut.BowV);
        Lane4 mean = load * Lane4.Of(1 / strut.Area);
        var most = Lane4.Of(double.NegativeInfinity);
        // Between two stations a function rises above both by at most |f''| Δη²/8.
        hidden = Lane4.Of(strut.E / strut.YieldStrength / (2 * 9 * 9)) * (Lane4.Of(strut.FarU) * u.SteepestBend() + Lane4.Of(strut.FarV) * v.SteepestBend());
        var planeU = new ScanWave(u, strut.E);
        var planeV = new ScanWave(v, strut.E);
        for (int i = 0; i < Stations; i++)
        {
            Lane4 evenU = planeU.Even(i), oddU = planeU.Odd, evenV = planeV.Even(i), oddV = planeV.Odd;
            for (int corner = 0; corner < 5; corner++)
            {
                Lane4 ru = Lane4.Of(strut.CornersU[corner]), rv = Lane4.Of(strut.CornersV[corner]);
                Lane4 even = mean + ru * evenU + rv * evenV, odd = Lane4.Abs(ru * oddU + rv * oddV);
                most = compression ? Lane4.Max(most, even + odd) : most;
                most = tension ? Lane4.Max(most, odd - even) : most;
            }

            planeU.Advance();
            planeV.Advance();
        }

        return most * Lane4.Of(1 / strut.YieldStrength);
    }

    private static FiveNumbers AtStations(Func<double, double> function)
    {
        FiveNumbers values = default;
        for (int i = 0; i < Stations; i++)
        {
            values[i] = function((2 * i + 1) / 9.0);
        }

        return values;
    }

    /// <summary>E d'' of one plane at the stations, one after another; sines and cosines by the addition theorem.</summary>
    private struct ScanWave
    {
        private readonly Lane4 stepSin, stepCos, cosine, sine, bow, limit;
        private Lane4 sin, cos;

        internal ScanWave(in PlaneWave<Lane4> wave, double e)
        {
            (sin, cos) = Lane4.SinCos(wave.H * Lane4.Of(1.0 / 9));
            stepSin = Lane4.Of(2) * sin * cos;
            stepCos = Lane4.Of(1) - Lane4.Of(2) * sin * sin;
            // W = (cos hη − cos(πη/2))/(1 − ρ), and its limit close to ρ = 1.
            Lane4 gap = Lane4.Abs(wave.OneMinusRho), bowed = Lane4.Of(e) * wave.Bow, none = Lane4.Of(0);
            bow = Lane4.WhereLess(gap, NearEuler, none, bowed / wave.OneMinusRho);
            limit = Lane4.WhereLess(gap, NearEuler, bowed, none);
            cosine = Lane4.Of(e) * wave.Cos + bow;
            sine = Lane4.Of(e) * wave.Sin;
        }

        internal readonly Lane4 Odd => sine * sin;

        internal readonly Lane4 Even(int station) =>
            cosine * cos - bow * Lane4.Of(BowCos[station]) + limit * Lane4.Of(EulerShape[station]);

        internal void Advance() => (sin, cos) = (sin * stepCos + cos * stepSin, cos * stepCos - sin * stepSin);
    }
}
