using System.Diagnostics.CodeAnalysis;
using System.Runtime.CompilerServices;
using System.Runtime.Intrinsics;
using StrutLessons.Member;

namespace StrutLessons.Stress;

/// <summary>
/// Where a stress is largest: its value (MPa) in the sense <c>Sense</c> (+1 compression, −1 tension), corner 0…4, and η = 2x/L − 1.
/// </summary>
internal readonly record struct Peak(double Stress, double Sense, int Corner, double Eta);

/// <summary>
/// Stress along the strut at its five corners, at one load: s(η) = N/A + E d''(η)·r, compression positive.
/// A few sines and cosines; their largest value is found at sixteen stations and then exactly.
/// </summary>
internal readonly ref struct StressWave
{
    /// <summary>Half the distance of neighbouring stations in η.</summary>
    private const double HalfGap = 1.0 / 15;

    // Stations η = 1/15, 3/15, …, 1; their mirror images share even and odd parts.
    private static readonly Vector256<double> EtaA = Vector256.Create(1.0, 3.0, 5.0, 7.0) * HalfGap;
    private static readonly Vector256<double> EtaB = Vector256.Create(9.0, 11.0, 13.0, 15.0) * HalfGap;
    private static readonly Vector256<double> CosA = Vector256.Cos(Math.PI / 2 * EtaA);
    private static readonly Vector256<double> CosB = Vector256.Cos(Math.PI / 2 * EtaB);

    private readonly ref readonly StrutNumbers strut;
    private readonly PlaneWave<Lane1> u, v;
    private readonly double mean;

    internal StressWave(ref readonly StrutNumbers strut, double load)
    {
        this.strut = ref strut;
        var stiffness = new EndStiffness<Lane1>(strut, new Lane1(load));
        var ends = new EndRotations<Lane1>(strut, stiffness);
        u = new PlaneWave<Lane1>(stiffness.U, ends.BowU, ends.U, strut.Length, strut.BowU);
        v = new PlaneWave<Lane1>(stiffness.V, ends.BowV, ends.V, strut.Length, strut.BowV);
        mean = load / strut.Area;
    }

    /// <summary>Follows the peak of one corner from where it was at another load. False if it is not near there any more.</summary>
    internal bool Follow(ref Peak peak)
    {
        CornerWave wave = Corner(peak.Corner, peak.Sense);
        double eta = Climb(wave, peak.Eta, peak.Eta, 1e-3);
        bool near = Math.Abs(eta - peak.Eta) < HalfGap;
        peak = peak with { Stress = peak.Sense * mean + wave.At(eta), Eta = eta };
        return near;
    }

    /// <summary>The largest stress over the whole strut and all corners, in compression, in tension, or in either sense.</summary>
    [MethodImpl(MethodImplOptions.NoInlining)]
    internal Peak Largest(bool compression, bool tension)
    {
        (Vector256<double> evenUA, Vector256<double> oddUA) = Parts(u, EtaA, CosA, strut.E);
        (Vector256<double> evenUB, Vector256<double> oddUB) = Parts(u, EtaB, CosB, strut.E);
        (Vector256<double> evenVA, Vector256<double> oddVA) = Parts(v, EtaA, CosA, strut.E);
        (Vector256<double> evenVB, Vector256<double> oddVB) = Parts(v, EtaB, CosB, strut.E);
        Span<double> pressed = stackalloc double[5], pulled = stackalloc double[5], stations = stackalloc double[16];
        double highest = double.NegativeInfinity;
        for (int corner = 0; corner < 5; corner++)
        {
            double ru = strut.CornersU[corner], rv = strut.CornersV[corner];
            Vector256<double> evenA = ru * evenUA + rv * evenVA, oddA = Vector256.Abs(ru * oddUA + rv * oddVA);
            Vector256<double> evenB = ru * evenUB + rv * evenVB, oddB = Vector256.Abs(ru * oddUB + rv * oddVB);
            pressed[corner] = compression ? mean + Highest(Vector256.MaxNative(evenA + oddA, evenB + oddB)) : double.NegativeInfinity;
            pulled[corner] = tension ? Highest(Vector256.MaxNative(oddA - evenA, oddB - evenB)) - mean : double.NegativeInfinity;
            highest = Math.Max(highest, Math.Max(pressed[corner], pulled[corner]));
        }

        // Between two stations a function rises above both by at most |f''| Δη²/8: only these stations can lead to the peak.
        double steepest = strut.E * (strut.FarU * u.SteepestBend().Value + strut.FarV * v.SteepestBend().Value);
        double threshold = highest - steepest * HalfGap * HalfGap / 2;
        var peak = new Peak(double.NegativeInfinity, 1, 0, 0);
        for (int corner = 0; corner < 5; corner++)
        {
            for (double sense = 1; sense >= -1; sense -= 2)
            {
                if ((sense > 0 ? pressed : pulled)[corner] >= threshold)
                {
                    double ru = sense * strut.CornersU[corner], rv = sense * strut.CornersV[corner];
                    Spread(stations, ru * evenUA + rv * evenVA, ru * oddUA + rv * oddVA, 0);
                    Spread(stations, ru * evenUB + rv * evenVB, ru * oddUB + rv * oddVB, 4);
                    Refine(corner, sense, stations, threshold, ref peak);
                }
            }
        }

        return peak;
    }

    /// <summary>Every place whose stress equals the largest to ten digits: mirrored corners, mirrored halves.</summary>
    internal List<Peak> AllLargest(double sense)
    {
        double level = Largest(sense > 0, sense < 0).Stress;
        double tie = 1e-10 * Math.Max(Math.Abs(level), Math.Abs(mean));
        var peaks = new List<Peak>();
        for (int corner = 0; corner < 5; corner++)
        {
            for (int i = 0; i < 16; i++)
            {
                double eta = Climb(Corner(corner, sense), (2 * i - 15) * HalfGap, (2 * i - 15) * HalfGap, 1e-9);
                double stress = sense * At(corner, eta);
                if (stress >= level - tie && !peaks.Exists(p => p.Corner == corner && Math.Abs(p.Eta - eta) < 1e-6))
                {
                    peaks.Add(new Peak(stress, sense, corner, eta));
                }
            }
        }

        return peaks;
    }

    /// <summary>Stress at a corner, MPa, compression positive.</summary>
    internal double At(int corner, double eta) => mean + Corner(corner, 1).At(eta);

    /// <summary>Bending stress of a corner, counted positive in one sense.</summary>
    [UnscopedRef]
    private CornerWave Corner(int corner, double sense) =>
        new(in u, in v, sense * strut.E * strut.CornersU[corner], sense * strut.E * strut.CornersV[corner]);

    private static double Highest(Vector256<double> values)
    {
        Vector128<double> pair = Vector128.MaxNative(values.GetLower(), values.GetUpper());
        return Math.Max(pair.ToScalar(), pair.GetElement(1));
    }

    /// <summary>Every local peak among the stations that reaches the threshold is followed to its exact place.</summary>
    private void Refine(int corner, double sense, ReadOnlySpan<double> f, double threshold, ref Peak peak)
    {
        double shift = sense * mean;
        CornerWave wave = Corner(corner, sense);
        for (int i = 0; i < 16; i++)
        {
            if (f[i] + shift >= threshold && (i == 0 || f[i] >= f[i - 1]) && (i == 15 || f[i] >= f[i + 1]))
            {
                // After a step of 1e-3 the place is off by some 1e-6, which costs 1e-12 of the stress: it is flat at its peak.
                double station = (2 * i - 15) * HalfGap;
                double start = i is 0 or 15 ? station : station + HalfGap * (f[i - 1] - f[i + 1]) / (f[i - 1] - 2 * f[i] + f[i + 1]);
                double eta = Climb(wave, station, start, 1e-3);
                double value = shift + wave.At(eta);
                // Mirrored corners of an equal angle and mirrored halves of the strut tie; rounding must not choose between them.
                if (value > peak.Stress + 1e-13 * Math.Abs(value))
                {
                    peak = new Peak(value, sense, corner, eta);
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

    /// <summary>
    /// The place of a maximum next to a station: the end itself, or Newton's method kept between the neighbouring stations.
    /// It begins at <paramref name="start"/> (the top of a parabola through the stations) and stops after a step shorter than <paramref name="lastStep"/>; the error left is of the order of that step squared.
    /// </summary>
    private static double Climb(in CornerWave wave, double station, double start, double lastStep)
    {
        double eta = start, low = station - 2 * HalfGap, high = station + 2 * HalfGap;
        if (high > 1)
        {
            if (wave.Slopes(1).First >= 0)
            {
                return 1;
            }

            high = 1;
        }
        else if (low < -1)
        {
            if (wave.Slopes(-1).First <= 0)
            {
                return -1;
            }

            low = -1;
        }

        for (int i = 0; i < 50; i++)
        {
            (double slope, double bend) = wave.Slopes(eta);
            if (slope > 0)
            {
                low = eta;
            }
            else
            {
                high = eta;
            }

            double step = slope / bend, next = eta - step;
            // At the top itself rounding decides on which side of the bracket the last, tiny step ends.
            if (bend < 0 && Math.Abs(step) < lastStep)
            {
                return Math.Clamp(next, -1, 1);
            }

            next = bend < 0 && next > low && next < high ? next : 0.5 * (low + high);
            if (high - low < 1e-12)
            {
                return next;
            }

            eta = next;
        }

        return eta;
    }

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
}
