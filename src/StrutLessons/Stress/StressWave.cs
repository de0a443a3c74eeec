using System.Runtime.Intrinsics;
using StrutLessons.Member;

namespace StrutLessons.Stress;

/// <summary>Where a stress is largest: value (MPa, in the sense asked for), corner 0…4, and η = 2x/L − 1.</summary>
internal readonly record struct Peak(double Stress, int Corner, double Eta);

/// <summary>
/// Stress along the strut at its five corners, at one load: s(η) = N/A + E d''(η)·r, compression positive.
/// A few sines and cosines; their largest value is found at sixteen stations and then exactly.
/// </summary>
internal readonly struct StressWave
{
    private const double HalfPi = Math.PI / 2;

    /// <summary>Half the distance of neighbouring stations in η.</summary>
    private const double HalfGap = 1.0 / 15;

    // Stations η = 1/15, 3/15, …, 1; their mirror images share even and odd parts.
    private static readonly Vector256<double> EtaA = Vector256.Create(1.0, 3.0, 5.0, 7.0) * HalfGap;
    private static readonly Vector256<double> EtaB = Vector256.Create(9.0, 11.0, 13.0, 15.0) * HalfGap;
    private static readonly Vector256<double> CosA = Vector256.Cos(HalfPi * EtaA);
    private static readonly Vector256<double> CosB = Vector256.Cos(HalfPi * EtaB);

    private readonly StrutNumbers strut;
    private readonly PlaneWave<Lane1> u, v;
    private readonly double mean;
    private readonly Vector256<double> evenUA, evenUB, oddUA, oddUB, evenVA, evenVB, oddVA, oddVB;

    internal StressWave(in StrutNumbers strut, double load)
    {
        this.strut = strut;
        var stiffness = new EndStiffness<Lane1>(strut, new Lane1(load));
        var ends = new EndRotations<Lane1>(strut, stiffness);
        u = new PlaneWave<Lane1>(stiffness.U, ends.U, strut.Length, strut.BowU);
        v = new PlaneWave<Lane1>(stiffness.V, ends.V, strut.Length, strut.BowV);
        mean = load / strut.Area;
        (evenUA, oddUA) = Parts(u, EtaA, CosA, strut.E);
        (evenUB, oddUB) = Parts(u, EtaB, CosB, strut.E);
        (evenVA, oddVA) = Parts(v, EtaA, CosA, strut.E);
        (evenVB, oddVB) = Parts(v, EtaB, CosB, strut.E);
    }

    /// <summary>The largest value of sense · s over the whole strut and all corners; sense +1 compression, −1 tension.</summary>
    internal Peak Largest(double sense)
    {
        Span<double> best = stackalloc double[5];
        double highest = double.NegativeInfinity, steepest = 0;
        for (int corner = 0; corner < 5; corner++)
        {
            Vector256<double> top = Vector256.Max(Top(corner, sense, first: true), Top(corner, sense, first: false));
            Vector128<double> pair = Vector128.Max(top.GetLower(), top.GetUpper());
            best[corner] = Math.Max(pair.ToScalar(), pair.GetElement(1));
            highest = Math.Max(highest, best[corner]);
            steepest = Math.Max(steepest, CurvatureBound(corner));
        }

        // Between two stations a function rises above both by at most |f''| Δη²/8: only these stations can lead to the peak.
        double margin = steepest * HalfGap * HalfGap / 2;
        var peak = new Peak(double.NegativeInfinity, 0, 0);
        for (int corner = 0; corner < 5; corner++)
        {
            if (best[corner] >= highest - margin)
            {
                Refine(corner, sense, highest - margin, ref peak);
            }
        }

        return peak;
    }

    /// <summary>Every place whose stress equals the largest to ten digits: mirrored corners, mirrored halves.</summary>
    internal List<Peak> AllLargest(double sense)
    {
        double level = Largest(sense).Stress;
        double tie = 1e-10 * Math.Max(Math.Abs(level), Math.Abs(mean));
        var peaks = new List<Peak>();
        for (int corner = 0; corner < 5; corner++)
        {
            double ru = sense * strut.CornersU[corner], rv = sense * strut.CornersV[corner];
            for (int i = 0; i < 16; i++)
            {
                double eta = Climb(ru, rv, (2 * i - 15) * HalfGap);
                double stress = sense * At(corner, eta);
                if (stress >= level - tie && !peaks.Exists(p => p.Corner == corner && Math.Abs(p.Eta - eta) < 1e-6))
                {
                    peaks.Add(new Peak(stress, corner, eta));
                }
            }
        }

        return peaks;
    }

    /// <summary>Stress at a corner, MPa, compression positive.</summary>
    internal double At(int corner, double eta) =>
        mean + strut.E * (strut.CornersU[corner] * PlaneCurvature.Value(u, eta) + strut.CornersV[corner] * PlaneCurvature.Value(v, eta));

    private Vector256<double> Top(int corner, double sense, bool first)
    {
        double ru = sense * strut.CornersU[corner], rv = sense * strut.CornersV[corner];
        Vector256<double> even = first ? ru * evenUA + rv * evenVA : ru * evenUB + rv * evenVB;
        Vector256<double> odd = first ? ru * oddUA + rv * oddVA : ru * oddUB + rv * oddVB;
        return Vector256.Create(sense * mean) + even + Vector256.Abs(odd);
    }

    /// <summary>Every local peak among the stations that reaches the threshold is followed to its exact place.</summary>
    private void Refine(int corner, double sense, double threshold, ref Peak peak)
    {
        double ru = sense * strut.CornersU[corner], rv = sense * strut.CornersV[corner];
        Span<double> f = stackalloc double[16];
        Spread(f, ru * evenUA + rv * evenVA, ru * oddUA + rv * oddVA, 0);
        Spread(f, ru * evenUB + rv * evenVB, ru * oddUB + rv * oddVB, 4);
        double shift = sense * mean;
        for (int i = 0; i < 16; i++)
        {
            if (f[i] + shift >= threshold && (i == 0 || f[i] >= f[i - 1]) && (i == 15 || f[i] >= f[i + 1]))
            {
                double eta = Climb(ru, rv, (2 * i - 15) * HalfGap);
                double value = shift + strut.E * (ru * PlaneCurvature.Value(u, eta) + rv * PlaneCurvature.Value(v, eta));
                // Mirrored corners of an equal angle and mirrored halves of the strut tie; rounding must not choose between them.
                if (value > peak.Stress * (peak.Stress > 0 ? 1 + 1e-13 : 1) + double.Epsilon)
                {
                    peak = new Peak(value, corner, eta);
                }
            }
        }
    }

    private static void Spread(Span<double> f, Vector256<double> even, Vector256<double> odd, int from)
    {
        Vector256<double> right = even + odd, left = even - odd;
        for (int i = 0; i < 4; i++)
        {
            f[8 + from + i] = right.GetElement(i);
            f[7 - from - i] = left.GetElement(i);
        }
    }

    /// <summary>The place of a maximum next to a station: the end itself, or Newton's method kept between the neighbouring stations.</summary>
    private double Climb(double ru, double rv, double station)
    {
        double eta = station, low = station - 2 * HalfGap, high = station + 2 * HalfGap;
        if (high > 1)
        {
            if (Slope(ru, rv, 1) >= 0)
            {
                return 1;
            }

            high = 1;
        }
        else if (low < -1)
        {
            if (Slope(ru, rv, -1) <= 0)
            {
                return -1;
            }

            low = -1;
        }

        for (int i = 0; i < 50; i++)
        {
            (double du, double ddu) = PlaneCurvature.Slopes(u, eta);
            (double dv, double ddv) = PlaneCurvature.Slopes(v, eta);
            double slope = ru * du + rv * dv, bend = ru * ddu + rv * ddv;
            if (slope > 0)
            {
                low = eta;
            }
            else
            {
                high = eta;
            }

            double next = eta - slope / bend;
            if (!(bend < 0 && next > low && next < high))
            {
                next = 0.5 * (low + high);
            }

            // The stress is flat at its peak: half of this step squared is lost at most.
            if (Math.Abs(next - eta) < 1e-8)
            {
                return next;
            }

            eta = next;
        }

        return eta;
    }

    private double Slope(double ru, double rv, double eta) => ru * PlaneCurvature.Slopes(u, eta).First + rv * PlaneCurvature.Slopes(v, eta).First;

    private static (Vector256<double> Even, Vector256<double> Odd) Parts(
        in PlaneWave<Lane1> wave, Vector256<double> eta, Vector256<double> cosBow, double e)
    {
        double h = wave.H.Value, gap = wave.OneMinusRho.Value;
        (Vector256<double> sin, Vector256<double> cos) = Vector256.SinCos(h * eta);
        Vector256<double> w = Math.Abs(gap) > PlaneCurvature.NearEuler
            ? (cos - cosBow) * (1 / gap)
            : PlaneCurvature.NearEulerShape(h, eta);
        return ((e * wave.Cos.Value) * cos + (e * wave.Bow.Value) * w, (e * wave.Sin.Value) * sin);
    }

    /// <summary>A bound of |d²s/dη²| at a corner.</summary>
    private double CurvatureBound(int corner) =>
        strut.E * (Math.Abs(strut.CornersU[corner]) * Bound(u) + Math.Abs(strut.CornersV[corner]) * Bound(v));

    private static double Bound(in PlaneWave<Lane1> wave)
    {
        // |W| ≤ (π²/8) η² ≤ 1.24 wherever both sinc factors are at most 1.
        double h2 = wave.H.Value * wave.H.Value;
        return h2 * (Math.Abs(wave.Cos.Value) + Math.Abs(wave.Sin.Value)) + Math.Abs(wave.Bow.Value) * (HalfPi * HalfPi + 1.24 * h2);
    }
}
