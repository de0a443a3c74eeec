using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Linearised second-order rod: cubic Hermite v, w and roll φ of the shear centre, small slopes, elastic. This part is symmetric and linear in the load N:
/// bending and N's work on the slopes, springs and arms at the ends, and, if asked for, the roll of a straight bar under a concentric load.
/// Six unknowns per node: v, v', w, w', φ, φ'.
/// </summary>
internal sealed class FlexureModel
{
    internal const int PerNode = 6, Half = 11;
    private readonly double[] unitLoad;
    private readonly (double[] Constant, double[] PerLoad) plane, rolling;
    private readonly int[] held, heldInPlane;

    internal FlexureModel(ReferenceStrut strut, int elements)
    {
        Strut = strut;
        Elements = elements;
        Size = PerNode * (elements + 1);
        Element = new HermiteElement(strut.Length / elements, 4);
        ReferenceSection s = strut.Section;
        Young = strut.Steel.ElasticModulus;
        Torsional = strut.Steel.ShearModulus * s.TorsionConstant;
        (StiffY, StiffZ, StiffYZ) = (Young * s.Iy, Young * s.Iz, Young * s.Iyz);
        Arm = s.Centroid - s.ShearCentre;
        Polar = (s.Iy + s.Iz) / s.Area + Arm.Dot(Arm);
        Matrix = new BandedLdl(Size, Half + 1);
        Solution = new double[Size];
        held = [.. Enumerable.Range(0, Size).Where(IsHeld)];
        heldInPlane = [.. Enumerable.Range(0, Size).Where(i => IsHeld(i) || i % PerNode >= 4)];
        unitLoad = UnitLoad();
        (plane, rolling) = (Split(false), Split(true));
    }

    internal ReferenceStrut Strut { get; }

    internal int Elements { get; }

    internal int Size { get; }

    internal HermiteElement Element { get; }

    internal BandedLdl Matrix { get; }

    internal double Young { get; }

    /// <summary>G J, N mm².</summary>
    internal double Torsional { get; }

    /// <summary>E I_y, N mm²; the next two are E I_z and E I_yz.</summary>
    internal double StiffY { get; }

    internal double StiffZ { get; }

    internal double StiffYZ { get; }

    /// <summary>The centroid seen from the shear centre, mm.</summary>
    internal Planar Arm { get; }

    /// <summary>i_0², polar radius of gyration about the shear centre squared, mm².</summary>
    internal double Polar { get; }

    /// <summary>Unknowns that are zero at the ends.</summary>
    internal ReadOnlySpan<int> Held => held;

    /// <summary>Unknowns of the last solution.</summary>
    internal double[] Solution { get; }

    /// <summary>Solves with the roll held at zero; false at or beyond the critical load.</summary>
    internal bool Solve(double load)
    {
        PutMatrix(load, roll: false);
        PutLoad(load, Solution);
        if (!Matrix.Factorise() || Matrix.NegativePivots > 0)
        {
            return false;
        }
        Matrix.Solve(Solution);
        return true;
    }

    /// <summary>Unstable modes of the straight strut under a concentric load.</summary>
    internal int UnstableModes(double load, bool roll)
    {
        PutMatrix(load, roll);
        Matrix.Factorise();
        return Matrix.NegativePivots;
    }

    /// <summary>Adds the flexural part for a load, before anything is held, to a full banded matrix.</summary>
    internal void AddTo(BandedLu target, double load)
    {
        int width = Matrix.Width;
        for (int i = 0; i < Size; i++)
        {
            for (int k = 0; k <= Half && i + k < Size; k++)
            {
                double entry = plane.Constant[i * width + k] + load * plane.PerLoad[i * width + k];
                if (entry != 0)
                {
                    target.Add(i, i + k, entry);
                    if (k > 0)
                    {
                        target.Add(i + k, i, entry);
                    }
                }
            }
        }
    }

    /// <summary>Right-hand side for a load: the bow and the load points.</summary>
    internal void PutLoad(double load, double[] b)
    {
        for (int i = 0; i < Size; i++)
        {
            b[i] = load * unitLoad[i];
        }
    }

    internal static Vector256<double> Field(double[] d, int e, int field)
    {
        int i = e * PerNode + field;
        return Vector256.Create(d[i], d[i + 1], d[i + PerNode], d[i + PerNode + 1]);
    }

    /// <summary>Unknown of an element: field 0 (v), 2 (w) or 4 (φ), value 0–3 (value and slope left, value and slope right).</summary>
    internal static int Place(int e, int field, int i) => (e + i / 2) * PerNode + field + i % 2;

    internal Planar BowCurvature(double x)
    {
        double omega = Math.PI / Strut.Length;
        return -(omega * omega * Math.Sin(omega * x)) * Strut.Bow;
    }

    private void PutMatrix(double load, bool roll)
    {
        (double[] constant, double[] perLoad) = roll ? rolling : plane;
        double[] band = Matrix.Band;
        for (int i = 0; i < band.Length; i++)
        {
            band[i] = constant[i] + load * perLoad[i];
        }
        foreach (int i in roll ? held : heldInPlane)
        {
            Matrix.Fix(i);
        }
    }

    private (double[] Constant, double[] PerLoad) Split(bool roll)
    {
        // Any load will do for the second part; one near the Euler load keeps all digits.
        double load = 10 * Young * Strut.Section.Iv / (Strut.Length * Strut.Length);
        Assemble(0, roll);
        double[] constant = [.. Matrix.Band];
        Assemble(load, roll);
        return (constant, [.. Matrix.Band.Zip(constant, (with, without) => (with - without) / load)]);
    }

    private void Assemble(double load, bool roll)
    {
        Matrix.Clear();
        double[,] bend = new double[4, 4], slope = new double[4, 4], mixed = new double[4, 4];
        for (int g = 0; g < Element.Places.Length; g++)
        {
            (Vector256<double> n0, Vector256<double> n1, Vector256<double> n2) = (Element.Value[g], Element.First[g], Element.Second[g]);
            double weight = Element.Weights[g];
            for (int i = 0; i < 16; i++)
            {
                bend[i / 4, i % 4] += weight * n2[i / 4] * n2[i % 4];
                slope[i / 4, i % 4] += weight * n1[i / 4] * n1[i % 4];
                mixed[i / 4, i % 4] += weight * n2[i / 4] * n0[i % 4];
            }
        }
        for (int e = 0; e < Elements; e++)
        {
            for (int i = 0; i < 4; i++)
            {
                for (int k = 0; k < 4; k++)
                {
                    AddUpper(Place(e, 0, i), Place(e, 0, k), StiffZ * bend[i, k] - load * slope[i, k]);
                    AddUpper(Place(e, 2, i), Place(e, 2, k), StiffY * bend[i, k] - load * slope[i, k]);
                    Matrix.Add(Place(e, 0, i), Place(e, 2, k), StiffYZ * bend[i, k]);
                    if (roll)
                    {
                        AddUpper(Place(e, 4, i), Place(e, 4, k), (Torsional - load * Polar) * slope[i, k]);
                        Matrix.Add(Place(e, 2, i), Place(e, 4, k), load * Arm.Y * mixed[i, k]);
                        Matrix.Add(Place(e, 0, i), Place(e, 4, k), -load * Arm.Z * mixed[i, k]);
                    }
                }
            }
        }
        AddEnd(Strut.End1, 0, -1, load);
        AddEnd(Strut.End2, Size - PerNode, 1, load);
    }

    /// <summary>Springs, the arm to the hinge, and the shortening of that arm: −½ N a θ².</summary>
    private void AddEnd(ReferenceEnd end, int node, int side, double load)
    {
        double hold = 12e6 * Young * Strut.Section.Iu / Math.Pow(Strut.Length, 3), lever = side * end.Arm;
        for (int field = 0; field <= 2; field += 2)
        {
            double spring = field == 0 ? end.InPlaneSpring : end.OutOfPlaneSpring;
            int v = node + field;
            Matrix.Add(v + 1, v + 1, (double.IsInfinity(spring) ? 0 : spring) - load * end.Arm);
            if (end.Arm > 0)
            {
                Matrix.Add(v, v, hold);
                Matrix.Add(v, v + 1, hold * lever);
                Matrix.Add(v + 1, v + 1, hold * lever * lever);
            }
        }
    }

    private void AddUpper(int i, int j, double value)
    {
        if (i <= j)
        {
            Matrix.Add(i, j, value);
        }
    }

    private double[] UnitLoad()
    {
        double[] b = new double[Size];
        for (int e = 0; e < Elements; e++)
        {
            for (int g = 0; g < Element.Places.Length; g++)
            {
                double x = (e + Element.Places[g]) * Element.Length, omega = Math.PI / Strut.Length;
                Planar slope = (omega * Math.Cos(omega * x)) * Strut.Bow;
                for (int i = 0; i < 4; i++)
                {
                    double n = Element.Weights[g] * Element.First[g][i];
                    b[Place(e, 0, i)] += n * slope.Y;
                    b[Place(e, 2, i)] += n * slope.Z;
                }
            }
        }
        int last = Size - PerNode;
        b[1] -= Strut.End1.LoadPoint.Y;
        b[3] -= Strut.End1.LoadPoint.Z;
        b[last + 1] += Strut.End2.LoadPoint.Y;
        b[last + 3] += Strut.End2.LoadPoint.Z;
        foreach (int i in held)
        {
            b[i] = 0;
        }
        return b;
    }

    private bool IsHeld(int unknown)
    {
        if (unknown >= PerNode && unknown < Size - PerNode)
        {
            return false;
        }
        ReferenceEnd end = unknown < PerNode ? Strut.End1 : Strut.End2;
        return (unknown % PerNode) switch
        {
            0 or 2 => end.Arm == 0,
            1 => double.IsInfinity(end.InPlaneSpring),
            3 => double.IsInfinity(end.OutOfPlaneSpring),
            4 => true,
            _ => false,
        };
    }
}
