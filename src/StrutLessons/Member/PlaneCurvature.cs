using System.Runtime.Intrinsics;

namespace StrutLessons.Member;

/// <summary>Curvature d'' of one principal plane at a place η = 2x/L − 1, and its derivatives; regular at every load.</summary>
internal static class PlaneCurvature
{
    /// <summary>|1 − ρ| below which W is taken as a product of sines instead of a quotient of small numbers.</summary>
    internal const double NearEuler = 1e-3;

    private const double HalfPi = Math.PI / 2;

    /// <summary>d''(η), 1/mm.</summary>
    internal static double Value(in PlaneWave<Lane1> wave, double eta) => Value(wave, eta, Math.Cos(HalfPi * eta));

    /// <summary>d''(η) where cos(πη/2) is known, 1/mm.</summary>
    internal static double Value(in PlaneWave<Lane1> wave, double eta, double bowCos)
    {
        (double sin, double cos) = Math.SinCos(wave.H.Value * eta);
        return wave.Cos.Value * cos + wave.Sin.Value * sin + wave.Bow.Value * Shape(wave.H.Value, wave.OneMinusRho.Value, eta, cos, bowCos);
    }

    /// <summary>First and second derivative of d'' with respect to η.</summary>
    internal static (double First, double Second) Slopes(in PlaneWave<Lane1> wave, double eta)
    {
        (double bowSin, double bowCos) = Math.SinCos(HalfPi * eta);
        return Slopes(wave, eta, bowSin, bowCos);
    }

    /// <summary>First and second derivative of d'' where sine and cosine of πη/2 are known.</summary>
    internal static (double First, double Second) Slopes(in PlaneWave<Lane1> wave, double eta, double bowSin, double bowCos)
    {
        double h = wave.H.Value;
        (double sin, double cos) = Math.SinCos(h * eta);
        double w = Shape(h, wave.OneMinusRho.Value, eta, cos, bowCos);
        double slope = ShapeSlope(h, wave.OneMinusRho.Value, eta, sin, bowSin);
        double bend = HalfPi * HalfPi * bowCos - h * h * w;
        double waveBend = wave.Cos.Value * cos + wave.Sin.Value * sin;
        return (h * (wave.Sin.Value * cos - wave.Cos.Value * sin) + wave.Bow.Value * slope, -h * h * waveBend + wave.Bow.Value * bend);
    }

    /// <summary>W(η) = (cos hη − cos(πη/2))/(1 − ρ).</summary>
    internal static double Shape(double h, double oneMinusRho, double eta, double cos, double bowCos)
    {
        if (Math.Abs(oneMinusRho) > NearEuler)
        {
            return (cos - bowCos) / oneMinusRho;
        }

        double sum = 0.5 * (HalfPi + h);
        return Math.PI * Math.PI / 8 / sum * eta * Math.Sin(sum * eta) * SmallSinc(0.5 * (HalfPi - h) * eta);
    }

    /// <summary>dW/dη.</summary>
    internal static double ShapeSlope(double h, double oneMinusRho, double eta, double sin, double bowSin) =>
        Math.Abs(oneMinusRho) > NearEuler
            ? (HalfPi * bowSin - h * sin) / oneMinusRho
            : HalfPi * HalfPi / (HalfPi + h)
                * (HalfPi * eta * Math.Cos(0.5 * (HalfPi + h) * eta) * SmallSinc(0.5 * (HalfPi - h) * eta) + sin);

    /// <summary><see cref="Shape"/> at four places, for ρ close to 1.</summary>
    internal static Vector256<double> NearEulerShape(double h, Vector256<double> eta)
    {
        double sum = 0.5 * (HalfPi + h), difference = 0.5 * (HalfPi - h);
        Vector256<double> small = (difference * difference) * eta * eta;
        Vector256<double> sinc = Vector256<double>.One - small * (1.0 / 6) + small * small * (1.0 / 120);
        return (Math.PI * Math.PI / 8 / sum) * eta * Vector256.Sin(sum * eta) * sinc;
    }

    private static double SmallSinc(double t) => 1 - t * t / 6 + t * t * t * t / 120;
}
