using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Linearised second-order rod with roll. First a flexure-only solution (φ = 0), then one coupled solution at the same load N whose coefficients use
/// the flexure-only curvatures v_f'', w_f'':
/// <para>
/// M1 = N Y_C + m1, M2 = N Z_C + m2 with m1 = E(I_z v_f'' + I_yz w_f''), m2 = E(I_yz v_f'' + I_y w_f''), p1 = v_f'' + v0'', p2 = w_f'' + w0'';
/// Wagner term W = −N i_0² − E(v_f'' ∫y r² dA + w_f'' ∫z r² dA), r about the shear centre, y and z about the centroid (Y_C, Z_C).
/// </para>
/// <para>
/// Row δφ: ∫(GJ + W) φ' δφ' + ∫δφ [M1 (w'' + w0'') − M2 (v'' + v0'')] = 0;
/// row δw gains ∫δw'' φ [M1 + E I_yz p2 − E I_y p1], row δv gains ∫δv'' φ [−M2 + E I_z p2 − E I_yz p1].
/// </para>
/// The coupled matrix is not symmetric: it linearises about the flexure-only state with the roll still in the load.
/// </summary>
internal sealed class RollModel
{
    private readonly FlexureModel flexure;
    private readonly BandedLu coupled;
    private readonly double thirdY, thirdZ;
    private readonly Vector256<double>[] blocks = new Vector256<double>[20];

    internal RollModel(ReferenceStrut strut, int elements)
    {
        flexure = new FlexureModel(strut, elements);
        coupled = new BandedLu(flexure.Size, FlexureModel.Half);
        (thirdY, thirdZ) = ThirdMoments(strut.Section);
        Solution = new double[flexure.Size];
    }

    /// <summary>The flexure-only part.</summary>
    internal FlexureModel Flexure => flexure;

    /// <summary>Unknowns of the coupled solution.</summary>
    internal double[] Solution { get; }

    /// <summary>Solves for a load; false at or beyond a critical load.</summary>
    internal bool Solve(double load, bool roll) => flexure.Solve(load) && (!roll || SolveCoupled(load));

    private bool SolveCoupled(double load)
    {
        coupled.Clear();
        flexure.AddTo(coupled, load);
        flexure.PutLoad(load, Solution);
        for (int e = 0; e < flexure.Elements; e++)
        {
            AddElement(e, load);
        }
        foreach (int i in flexure.Held)
        {
            coupled.Fix(i);
            Solution[i] = 0;
        }
        return coupled.Solve(Solution);
    }

    private void AddElement(int e, double load)
    {
        HermiteElement element = flexure.Element;
        (double stiffY, double stiffZ, double stiffYZ) = (flexure.StiffY, flexure.StiffZ, flexure.StiffYZ);
        Vector256<double> vf = FlexureModel.Field(flexure.Solution, e, 0), wf = FlexureModel.Field(flexure.Solution, e, 2), bowLoad = default;
        Array.Clear(blocks);
        for (int g = 0; g < element.Places.Length; g++)
        {
            (Vector256<double> n0, Vector256<double> n1, Vector256<double> n2) = (element.Value[g], element.First[g], element.Second[g]);
            double weight = element.Weights[g], cv = Vector256.Dot(n2, vf), cw = Vector256.Dot(n2, wf);
            Planar bow = flexure.BowCurvature((e + element.Places[g]) * element.Length);
            double m1 = load * flexure.Arm.Y + stiffZ * cv + stiffYZ * cw, m2 = load * flexure.Arm.Z + stiffYZ * cv + stiffY * cw;
            double p1 = cv + bow.Y, p2 = cw + bow.Z;
            double wagner = -load * flexure.Polar - flexure.Young * (cv * thirdY + cw * thirdZ);
            Vector256<double> phiPhi = (weight * (flexure.Torsional + wagner)) * n1, phiW = (weight * m1) * n2, phiV = (-weight * m2) * n2;
            Vector256<double> wPhi = (weight * (m1 + stiffYZ * p2 - stiffY * p1)) * n0, vPhi = (weight * (-m2 + stiffZ * p2 - stiffYZ * p1)) * n0;
            for (int i = 0; i < 4; i++)
            {
                blocks[i] += n1[i] * phiPhi;
                blocks[4 + i] += n0[i] * phiW;
                blocks[8 + i] += n0[i] * phiV;
                blocks[12 + i] += n2[i] * wPhi;
                blocks[16 + i] += n2[i] * vPhi;
            }
            bowLoad -= (weight * (m1 * bow.Z - m2 * bow.Y)) * n0;
        }
        Scatter(e, 0, 4, 4);
        Scatter(e, 4, 4, 2);
        Scatter(e, 8, 4, 0);
        Scatter(e, 12, 2, 4);
        Scatter(e, 16, 0, 4);
        for (int i = 0; i < 4; i++)
        {
            Solution[FlexureModel.Place(e, 4, i)] += bowLoad[i];
        }
    }

    private void Scatter(int e, int block, int rowField, int columnField)
    {
        for (int i = 0; i < 4; i++)
        {
            Vector256<double> row = blocks[block + i];
            for (int k = 0; k < 4; k++)
            {
                coupled.Add(FlexureModel.Place(e, rowField, i), FlexureModel.Place(e, columnField, k), row[k]);
            }
        }
    }

    /// <summary>∫y r² dA and ∫z r² dA: y, z about the centroid, r about the shear centre. 2 × 2 Gauss points per rectangle are exact.</summary>
    private static (double Y, double Z) ThirdMoments(ReferenceSection s)
    {
        double sumY = 0, sumZ = 0, place = 0.5 / Math.Sqrt(3);
        foreach (SectionRectangle r in s.Rectangles)
        {
            for (int i = 0; i < 4; i++)
            {
                Planar p = r.Middle + new Planar((i < 2 ? place : -place) * r.Width, (i % 2 == 0 ? place : -place) * r.Height);
                Planar c = p - s.Centroid, o = p - s.ShearCentre;
                sumY += 0.25 * r.Area * c.Y * o.Dot(o);
                sumZ += 0.25 * r.Area * c.Z * o.Dot(o);
            }
        }
        return (sumY, sumZ);
    }
}
