using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Linearised second-order rod with roll: cubic Hermite v, w, φ of the shear centre, small slopes, elastic.
/// First a flexure-only solution (φ = 0), then one coupled solution at the same load N whose coefficients use the flexure-only moments:
/// <para>
/// M1 = N Y_C + m1, M2 = N Z_C + m2 with m1 = E(I_z v_f'' + I_yz w_f''), m2 = E(I_yz v_f'' + I_y w_f''), p1 = v_f'' + v0'', p2 = w_f'' + w0'';
/// Wagner term W = −N i_0² − E(v_f'' ∫y r² dA + w_f'' ∫z r² dA), r about S, y and z about C.
/// </para>
/// <para>
/// Row δφ: ∫(GJ + W) φ' δφ' + ∫δφ [M1 (w'' + w0'') − M2 (v'' + v0'')] = 0;
/// row δw gains ∫δw'' φ [M1 + E I_yz p2 − E I_y p1], row δv gains ∫δv'' φ [−M2 + E I_z p2 − E I_yz p1].
/// </para>
/// Curvatures for stress: k1 = v'' + φ p2, k2 = w'' − φ p1. The coupled matrix is not symmetric.
/// </summary>
internal sealed class RollModel
{
    private const int PerNode = 6, Half = 11;
    private readonly ReferenceStrut strut;
    private readonly int elements, size;
    private readonly HermiteElement element;
    private readonly double young, torsional, stiffY, stiffZ, stiffYZ, polar, thirdY, thirdZ;
    private readonly Planar arm;
    private readonly BandedLdl flexure;
    private readonly BandedLu coupled;
    private readonly bool[] held;
    private readonly double[] loadVector;
    private readonly (double[] Constant, double[] PerLoad) plane, rolling;

    internal RollModel(ReferenceStrut strut, int elements)
    {
        this.strut = strut;
        this.elements = elements;
        size = PerNode * (elements + 1);
        element = new HermiteElement(strut.Length / elements, 4);
        ReferenceSection s = strut.Section;
        (young, torsional) = (strut.Steel.ElasticModulus, strut.Steel.ShearModulus * s.TorsionConstant);
        (stiffY, stiffZ, stiffYZ) = (young * s.Iy, young * s.Iz, young * s.Iyz);
        arm = s.Centroid - s.ShearCentre;
        polar = (s.Iy + s.Iz) / s.Area + arm.Dot(arm);
        (thirdY, thirdZ) = ThirdMoments(s);
        flexure = new BandedLdl(size, Half + 1);
        coupled = new BandedLu(size, Half);
        held = FindHeld();
        (Flexure, Roll) = (new double[size], new double[size]);
        loadVector = UnitLoad();
        (plane, rolling) = (Split(false), Split(true));
    }

    /// <summary>Unknowns of the flexure-only solution: v, v', w, w', φ, φ' per node.</summary>
    internal double[] Flexure { get; }

    /// <summary>Unknowns of the coupled solution.</summary>
    internal double[] Roll { get; }

    /// <summary>Solves for a load; false at or beyond a critical load.</summary>
    internal bool Solve(double load, bool roll) => SolveFlexure(load) && (!roll || SolveRoll(load));

    /// <summary>Unstable modes of the straight strut under a concentric load.</summary>
    internal int UnstableModes(double load, bool roll)
    {
        Combine(roll ? rolling : plane, load);
        flexure.Factorise();
        return flexure.NegativePivots;
    }

    /// <summary>Displacements and stress of the last solution.</summary>
    internal ElasticState Read(double load, bool roll)
    {
        double[] d = roll ? Roll : Flexure;
        int mid = elements / 2 * PerNode;
        var axis = new Planar(d[mid], d[mid + 2]);
        double phi = d[mid + 4];
        var centroid = new Planar(axis.Y - phi * arm.Z, axis.Z + phi * arm.Y);
        double compression = double.NegativeInfinity, tension = compression, compressionAt = 0, tensionAt = 0;
        for (int place = 0; place <= 2 * elements; place++)
        {
            double x = 0.5 * place * element.Length;
            Planar bow = BowSecond(x);
            var first = new Planar(Curvature(Flexure, place, 0), Curvature(Flexure, place, 2));
            Planar bend = roll ? new Planar(Curvature(d, place, 0), Curvature(d, place, 2)) : first;
            double turn = roll ? RollAt(place) : 0;
            var k = new Planar(bend.Y + turn * (first.Z + bow.Z), bend.Z - turn * (first.Y + bow.Y));
            foreach (Planar corner in strut.Section.Corners)
            {
                double stress = load / strut.Section.Area + young * k.Dot(corner - strut.Section.Centroid);
                if (stress > compression)
                {
                    (compression, compressionAt) = (stress, x);
                }
                if (-stress > tension)
                {
                    (tension, tensionAt) = (-stress, x);
                }
            }
        }
        return new ElasticState(load, axis, centroid, phi, compression, compressionAt, tension, tensionAt);
    }

    private bool SolveFlexure(double load)
    {
        Combine(plane, load);
        PutLoad(load, Flexure);
        if (!flexure.Factorise() || flexure.NegativePivots > 0)
        {
            return false;
        }
        flexure.Solve(Flexure);
        return true;
    }

    private bool SolveRoll(double load)
    {
        coupled.Clear();
        PutLoad(load, Roll);
        for (int e = 0; e < elements; e++)
        {
            (Vector256<double> vf, Vector256<double> wf) = (Field(Flexure, e, 0), Field(Flexure, e, 2));
            Vector256<double> bowPart = default;
            for (int g = 0; g < element.Places.Length; g++)
            {
                (Vector256<double> n0, Vector256<double> n1, Vector256<double> n2) = (element.Value[g], element.First[g], element.Second[g]);
                double weight = element.Weights[g], cv = Vector256.Dot(n2, vf), cw = Vector256.Dot(n2, wf);
                Planar bow = BowSecond((e + element.Places[g]) * element.Length);
                double m1 = load * arm.Y + stiffZ * cv + stiffYZ * cw, m2 = load * arm.Z + stiffYZ * cv + stiffY * cw;
                double p1 = cv + bow.Y, p2 = cw + bow.Z;
                double wagner = -load * polar - young * (cv * thirdY + cw * thirdZ);
                AddPair(e, 0, 0, n2, n2, weight * stiffZ);
                AddPair(e, 0, 2, n2, n2, weight * stiffYZ);
                AddPair(e, 2, 0, n2, n2, weight * stiffYZ);
                AddPair(e, 2, 2, n2, n2, weight * stiffY);
                AddPair(e, 0, 0, n1, n1, -weight * load);
                AddPair(e, 2, 2, n1, n1, -weight * load);
                AddPair(e, 4, 4, n1, n1, weight * (torsional + wagner));
                AddPair(e, 4, 2, n0, n2, weight * m1);
                AddPair(e, 4, 0, n0, n2, -weight * m2);
                AddPair(e, 2, 4, n2, n0, weight * (m1 + stiffYZ * p2 - stiffY * p1));
                AddPair(e, 0, 4, n2, n0, weight * (-m2 + stiffZ * p2 - stiffYZ * p1));
                bowPart -= (weight * (m1 * bow.Z - m2 * bow.Y)) * n0;
            }
            for (int i = 0; i < 4; i++)
            {
                Roll[Place(e, 4, i)] += bowPart[i];
            }
        }
        AddEnds(load, coupled.Add);
        for (int i = 0; i < size; i++)
        {
            if (held[i])
            {
                coupled.Fix(i);
                Roll[i] = 0;
            }
        }
        return coupled.Solve(Roll);
    }

    /// <summary>Flexure, and with roll the symmetric coupling of a straight bar under concentric load: its critical loads make this matrix singular.</summary>
    private void AssembleSymmetric(double load, bool roll)
    {
        flexure.Clear();
        for (int e = 0; e < elements; e++)
        {
            for (int g = 0; g < element.Places.Length; g++)
            {
                (Vector256<double> n0, Vector256<double> n1, Vector256<double> n2) = (element.Value[g], element.First[g], element.Second[g]);
                double weight = element.Weights[g];
                for (int i = 0; i < 4; i++)
                {
                    for (int k = 0; k < 4; k++)
                    {
                        double bend = weight * n2[i] * n2[k], slope = weight * n1[i] * n1[k], mixed = weight * n2[i] * n0[k] * load;
                        AddUpper(Place(e, 0, i), Place(e, 0, k), stiffZ * bend - load * slope);
                        AddUpper(Place(e, 2, i), Place(e, 2, k), stiffY * bend - load * slope);
                        flexure.Add(Place(e, 0, i), Place(e, 2, k), stiffYZ * bend);
                        if (roll)
                        {
                            AddUpper(Place(e, 4, i), Place(e, 4, k), (torsional - load * polar) * slope);
                            flexure.Add(Place(e, 2, i), Place(e, 4, k), arm.Y * mixed);
                            flexure.Add(Place(e, 0, i), Place(e, 4, k), -arm.Z * mixed);
                        }
                    }
                }
            }
        }
        AddEnds(load, AddUpper);
        for (int i = 0; i < size; i++)
        {
            if (held[i] || (!roll && i % PerNode >= 4))
            {
                flexure.Fix(i);
            }
        }
    }

    private void AddUpper(int i, int j, double value)
    {
        if (i <= j)
        {
            flexure.Add(i, j, value);
        }
    }

    private void AddPair(int e, int rowField, int columnField, Vector256<double> row, Vector256<double> column, double factor)
    {
        for (int i = 0; i < 4; i++)
        {
            for (int k = 0; k < 4; k++)
            {
                coupled.Add(Place(e, rowField, i), Place(e, columnField, k), factor * row[i] * column[k]);
            }
        }
    }

    /// <summary>Springs, arms to the hinges and the shortening of those arms.</summary>
    private void AddEnds(double load, Action<int, int, double> add)
    {
        double hold = 12e6 * young * strut.Section.Iu / Math.Pow(strut.Length, 3);
        for (int end = 0; end < 2; end++)
        {
            ReferenceEnd data = end == 0 ? strut.End1 : strut.End2;
            int node = end == 0 ? 0 : size - PerNode;
            for (int field = 0; field <= 2; field += 2)
            {
                double spring = field == 0 ? data.InPlaneSpring : data.OutOfPlaneSpring;
                int v = node + field, slope = v + 1;
                add(slope, slope, (double.IsInfinity(spring) ? 0 : spring) - load * data.Arm);
                if (data.Arm > 0)
                {
                    double lever = (end == 0 ? -1 : 1) * data.Arm;
                    add(v, v, hold);
                    add(v, slope, hold * lever);
                    add(slope, v, hold * lever);
                    add(slope, slope, hold * lever * lever);
                }
            }
        }
    }

    /// <summary>The matrix of <see cref="AssembleSymmetric"/> is a constant part plus the load times another.</summary>
    private (double[] Constant, double[] PerLoad) Split(bool roll)
    {
        // Any load will do; one near the Euler load keeps all digits.
        double load = 10 * young * strut.Section.Iv / (strut.Length * strut.Length);
        AssembleSymmetric(0, roll);
        double[] constant = [.. flexure.Band];
        AssembleSymmetric(load, roll);
        return (constant, [.. flexure.Band.Zip(constant, (with, without) => (with - without) / load)]);
    }

    private void Combine((double[] Constant, double[] PerLoad) parts, double load)
    {
        double[] band = flexure.Band;
        for (int i = 0; i < band.Length; i++)
        {
            band[i] = parts.Constant[i] + load * parts.PerLoad[i];
        }
    }

    private void PutLoad(double load, double[] b)
    {
        for (int i = 0; i < size; i++)
        {
            b[i] = load * loadVector[i];
        }
    }

    private double[] UnitLoad()
    {
        double[] b = new double[size];
        for (int e = 0; e < elements; e++)
        {
            for (int g = 0; g < element.Places.Length; g++)
            {
                Planar slope = BowFirst((e + element.Places[g]) * element.Length);
                for (int i = 0; i < 4; i++)
                {
                    double n = element.Weights[g] * element.First[g][i];
                    b[Place(e, 0, i)] += n * slope.Y;
                    b[Place(e, 2, i)] += n * slope.Z;
                }
            }
        }
        int last = size - PerNode;
        b[1] -= strut.End1.LoadPoint.Y;
        b[3] -= strut.End1.LoadPoint.Z;
        b[last + 1] += strut.End2.LoadPoint.Y;
        b[last + 3] += strut.End2.LoadPoint.Z;
        for (int i = 0; i < size; i++)
        {
            b[i] = held[i] ? 0 : b[i];
        }
        return b;
    }

    /// <summary>
    /// Curvature at a node or in the middle of an element (place 0, 1, 2, … in half elements). Inside an element the interpolated curvature is a
    /// straight line: it misses l²/12 of the fourth derivative at the ends and has l²/24 of it too much in the middle.
    /// </summary>
    private double Curvature(double[] d, int place, int field)
    {
        if (place % 2 == 1)
        {
            (double start, double end) = EndCurvatures(d, place / 2, field);
            double fourth = 0.5 * (FourthTimesSquare(d, place / 2, field) + FourthTimesSquare(d, place / 2 + 1, field));
            return 0.5 * (start + end) - fourth / 24;
        }
        int node = place / 2;
        double left = node > 0 ? EndCurvatures(d, node - 1, field).End : EndCurvatures(d, node, field).Start;
        double right = node < elements ? EndCurvatures(d, node, field).Start : left;
        return 0.5 * (left + right) + FourthTimesSquare(d, node, field) / 12;
    }

    /// <summary>Fourth derivative times l² at a node, from the jump of the third between elements; at the ends from the nearest inner node.</summary>
    private double FourthTimesSquare(double[] d, int node, int field)
    {
        int inner = Math.Clamp(node, 1, elements - 1);
        (double leftStart, double leftEnd) = EndCurvatures(d, inner - 1, field);
        (double rightStart, double rightEnd) = EndCurvatures(d, inner, field);
        return rightEnd - rightStart - (leftEnd - leftStart);
    }

    private (double Start, double End) EndCurvatures(double[] d, int e, int field)
    {
        Vector256<double> values = Field(d, e, field);
        return (Vector256.Dot(HermiteElement.SecondAt(0, element.Length), values), Vector256.Dot(HermiteElement.SecondAt(1, element.Length), values));
    }

    /// <summary>Roll at a place in half elements; it is held at both ends.</summary>
    private double RollAt(int place) => place == 2 * elements
        ? 0
        : Vector256.Dot(HermiteElement.ValueAt(place % 2 / 2.0, element.Length), Field(Roll, place / 2, 4));

    private static Vector256<double> Field(double[] d, int e, int field)
    {
        int i = e * PerNode + field;
        return Vector256.Create(d[i], d[i + 1], d[i + PerNode], d[i + PerNode + 1]);
    }

    private static int Place(int e, int field, int i) => (e + i / 2) * PerNode + field + i % 2;

    private bool[] FindHeld()
    {
        bool[] fix = new bool[size];
        for (int end = 0; end < 2; end++)
        {
            ReferenceEnd data = end == 0 ? strut.End1 : strut.End2;
            int node = end == 0 ? 0 : size - PerNode;
            fix[node] = fix[node + 2] = data.Arm == 0;
            fix[node + 1] = double.IsInfinity(data.InPlaneSpring);
            fix[node + 3] = double.IsInfinity(data.OutOfPlaneSpring);
            fix[node + 4] = true;
        }
        return fix;
    }

    private Planar BowFirst(double x) => Math.PI / strut.Length * Math.Cos(Math.PI * x / strut.Length) * strut.Bow;

    private Planar BowSecond(double x) => -(Math.PI / strut.Length * (Math.PI / strut.Length) * Math.Sin(Math.PI * x / strut.Length)) * strut.Bow;

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
