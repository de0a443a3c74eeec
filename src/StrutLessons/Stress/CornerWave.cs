using System.Runtime.Intrinsics;
using StrutLessons.Member;

namespace StrutLessons.Stress;

/// <summary>
/// Bending stress of one corner along the strut, E d''(η)·r: a sum of sines and cosines with three wave numbers (of both
/// principal planes and of the bow), taken side by side in one vector.
/// </summary>
internal readonly ref struct CornerWave
{
    private readonly ref readonly PlaneWave<Lane1> u, v;
    private readonly double ru, rv;
    private readonly bool regular;
    private readonly Vector256<double> numbers, cosines, sines;

    /// <param name="u">Curvature along u.</param>
    /// <param name="v">Curvature along v.</param>
    /// <param name="ru">Distance of the corner along u times E, and −1 where tension counts.</param>
    /// <param name="rv">The same along v.</param>
    internal CornerWave(ref readonly PlaneWave<Lane1> u, ref readonly PlaneWave<Lane1> v, double ru, double rv)
    {
        this.u = ref u;
        this.v = ref v;
        this.ru = ru;
        this.rv = rv;
        double gapU = u.OneMinusRho.Value, gapV = v.OneMinusRho.Value;
        // Close to an Euler load the cosines cancel: there the product form of PlaneCurvature is taken.
        regular = Math.Min(Math.Abs(gapU), Math.Abs(gapV)) > PlaneCurvature.NearEuler;
        double bowU = ru * u.Bow.Value / gapU, bowV = rv * v.Bow.Value / gapV;
        numbers = Vector256.Create(u.H.Value, v.H.Value, Math.PI / 2, 0);
        cosines = Vector256.Create(ru * u.Cos.Value + bowU, rv * v.Cos.Value + bowV, -bowU - bowV, 0);
        sines = Vector256.Create(ru * u.Sin.Value, rv * v.Sin.Value, 0, 0);
    }

    /// <summary>Stress at a place, MPa.</summary>
    internal double At(double eta)
    {
        if (!regular)
        {
            double bowCos = Math.Cos(Math.PI / 2 * eta);
            return ru * PlaneCurvature.Value(u, eta, bowCos) + rv * PlaneCurvature.Value(v, eta, bowCos);
        }

        (Vector256<double> sin, Vector256<double> cos) = Vector256.SinCos(numbers * eta);
        return Vector256.Sum(cosines * cos + sines * sin);
    }

    /// <summary>First and second derivative with respect to η, MPa.</summary>
    internal (double First, double Second) Slopes(double eta)
    {
        if (!regular)
        {
            (double bowSin, double bowCos) = Math.SinCos(Math.PI / 2 * eta);
            (double du, double ddu) = PlaneCurvature.Slopes(u, eta, bowSin, bowCos);
            (double dv, double ddv) = PlaneCurvature.Slopes(v, eta, bowSin, bowCos);
            return (ru * du + rv * dv, ru * ddu + rv * ddv);
        }

        (Vector256<double> sin, Vector256<double> cos) = Vector256.SinCos(numbers * eta);
        return (
            Vector256.Sum(numbers * (sines * cos - cosines * sin)),
            -Vector256.Sum(numbers * numbers * (cosines * cos + sines * sin)));
    }
}
