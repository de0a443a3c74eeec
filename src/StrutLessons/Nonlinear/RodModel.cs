using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Nonlinear;

/// <summary>
/// The strut as a finite-element rod: forces, consistent tangent and plastic strains at a given set of unknowns.
/// Eight unknowns per node: u, u', v, v', w, w', φ, φ'. All memory is taken once, in the constructor.
/// </summary>
internal sealed class RodModel
{
    internal const int PerNode = 8;
    private const int BandWidth = 16;
    private readonly HermiteElement element;
    private readonly FibreSection section;
    private readonly bool twist;
    private readonly int elements, stations;
    private readonly Vector256<double>[] bowFirst, bowSecond;
    private readonly StrainMeasures[] initial;
    private readonly double[] committed, trial;
    private readonly RodEnd end1, end2;
    private readonly Vector256<double>[] blocks = new Vector256<double>[12], elementMatrix = new Vector256<double>[64];
    private readonly int[] scatter = new int[256];

    internal RodModel(ReferenceStrut strut, RodMesh mesh, bool twist, bool wagner)
    {
        Strut = strut;
        this.twist = twist;
        Wagner = wagner;
        (elements, stations) = (mesh.Elements, mesh.Stations);
        element = new HermiteElement(strut.Length / elements, stations);
        section = new FibreSection(strut, mesh, wagner);
        Size = PerNode * (elements + 1);
        Matrix = new BandedLdl(Size, BandWidth);
        Forces = new double[Size];
        Load = new double[Size];
        int count = elements * stations;
        (bowFirst, bowSecond, initial) = (new Vector256<double>[count], new Vector256<double>[count], new StrainMeasures[count]);
        (committed, trial) = (new double[count * section.Padded], new double[count * section.Padded]);
        for (int i = 0; i < count; i++)
        {
            (bowFirst[i], bowSecond[i]) = Bow(StationPlace(i));
            RodKinematics.Evaluate(bowFirst[i], bowSecond[i], out RodKinematics k);
            initial[i] = k.Strain;
        }
        end1 = new RodEnd(strut, strut.End1, true, BowSlope(0));
        end2 = new RodEnd(strut, strut.End2, false, BowSlope(strut.Length));
        Held = FindHeld();
        BuildScatter();
    }

    internal ReferenceStrut Strut { get; }

    internal bool Wagner { get; }

    internal FibreSection Section => section;

    internal int Elements => elements;

    /// <summary>Gauss sections of the whole rod.</summary>
    internal int StationCount => elements * stations;

    /// <summary>Distance of a Gauss section from end 1, mm.</summary>
    internal double StationPlace(int station) => (station / stations + element.Places[station % stations]) * element.Length;

    /// <summary>Length that a Gauss section stands for, mm.</summary>
    internal double StationWeight(int station) => element.Weights[station % stations];

    internal int Size { get; }

    /// <summary>Consistent tangent of the last evaluation; factorised in place by the solver.</summary>
    internal BandedLdl Matrix { get; }

    /// <summary>Internal forces plus springs, before the load is taken off.</summary>
    internal double[] Forces { get; }

    /// <summary>Derivative of the shortening with respect to the unknowns: the load vector for N = 1.</summary>
    internal double[] Load { get; }

    /// <summary>Side loads that grow with the load, for N = 1; null if there are none. They are part of <see cref="Load"/>.</summary>
    internal double[]? SideLoads { get; init; }

    /// <summary>Numbers of the unknowns that are zero.</summary>
    internal int[] Held { get; }

    /// <summary>Plastic strains of the last accepted state, section by section.</summary>
    internal double[] Committed => committed;

    /// <summary>Plastic strains of the last evaluation.</summary>
    internal double[] Trial => trial;

    /// <summary>Makes the plastic strains of the last evaluation the accepted ones.</summary>
    internal void Commit() => trial.AsSpan().CopyTo(committed);

    /// <summary>Forces, load vector and tangent at the given unknowns under the load N. The tangent needs N because the load arms turn.</summary>
    internal void Evaluate(double[] d, double load)
    {
        Matrix.Clear();
        Array.Clear(Forces);
        Array.Clear(Load);
        Span<Vector256<double>> forces = stackalloc Vector256<double>[4];
        for (int e = 0; e < elements; e++)
        {
            forces.Clear();
            Array.Clear(elementMatrix);
            AddStations(e, d, forces);
            ScatterElement(e, forces);
        }
        AddEnd(end1, 0, d, load);
        AddEnd(end2, Size - PerNode, d, load);
        for (int i = 0; i < SideLoads?.Length; i++)
        {
            Load[i] += SideLoads[i];
        }
    }

    /// <summary>Puts x_i = 0 for all held unknowns into matrix and right-hand sides.</summary>
    internal void ApplyHolds(double[] a, double[] b)
    {
        foreach (int i in Held)
        {
            Matrix.Fix(i);
            a[i] = 0;
            b[i] = 0;
        }
    }

    /// <summary>Shortening s between the two load points, mm.</summary>
    internal double Shortening(double[] d) => EndShortening(d) - EndShortening(null);

    /// <summary>Strains at a fraction s of an element, initial values taken off, and the rod's position there.</summary>
    internal RodPlace Place(int e, double s, double[] d)
    {
        double l = element.Length, x = (e + s) * l;
        (Vector256<double> f, Vector256<double> b) = Bow(x);
        RodKinematics.Evaluate(f, b, out RodKinematics start);
        Vector256<double> value = HermiteElement.ValueAt(s, l), first = HermiteElement.FirstAt(s, l), second = HermiteElement.SecondAt(s, l);
        Gather(e, d, out Vector256<double> u, out Vector256<double> v, out Vector256<double> w, out Vector256<double> phi);
        Vector256<double> a = f + Vector256.Create(Vector256.Dot(first, u), Vector256.Dot(first, v), Vector256.Dot(first, w), Vector256.Dot(first, phi));
        double roll = Vector256.Dot(value, phi);
        b += Vector256.Create(Vector256.Dot(second, u), Vector256.Dot(second, v), Vector256.Dot(second, w), roll);
        RodKinematics.Evaluate(a, b, out RodKinematics now);
        var axis = new Planar(Vector256.Dot(value, v), Vector256.Dot(value, w));
        Planar arm = Strut.Section.Centroid - Strut.Section.ShearCentre;
        Planar centroid = axis + Carried(arm, a, roll) - Carried(arm, f, 0);
        return new RodPlace(x, now.Strain - start.Strain, axis, centroid, roll);
    }

    /// <summary>Where a point of the section goes, seen from the axis, in the y-z plane.</summary>
    private static Planar Carried(Planar point, Vector256<double> q, double roll)
    {
        double length = Math.Sqrt(q[0] * q[0] + q[1] * q[1] + q[2] * q[2]);
        double tx = q[0] / length, ty = q[1] / length, tz = q[2] / length;
        (double s, double c) = Math.SinCos(roll);
        // Coordinates along m1 and m2 after the roll.
        double along1 = c * point.Y - s * point.Z, along2 = s * point.Y + c * point.Z;
        return new Planar(
            along1 * (1 - ty * ty / (1 + tx)) - along2 * ty * tz / (1 + tx),
            along2 * (1 - tz * tz / (1 + tx)) - along1 * ty * tz / (1 + tx));
    }

    private void AddStations(int e, double[] d, Span<Vector256<double>> forces)
    {
        Gather(e, d, out Vector256<double> u, out Vector256<double> v, out Vector256<double> w, out Vector256<double> phi);
        ref Vector256<double> block = ref MemoryMarshal.GetArrayDataReference(blocks);
        ref Vector256<double> ke = ref MemoryMarshal.GetArrayDataReference(elementMatrix);
        for (int g = 0; g < stations; g++)
        {
            int station = e * stations + g;
            Vector256<double> value = element.Value[g], first = element.First[g], second = element.Second[g];
            Vector256<double> a = bowFirst[station]
                + Vector256.Create(Vector256.Dot(first, u), Vector256.Dot(first, v), Vector256.Dot(first, w), Vector256.Dot(first, phi));
            Vector256<double> b = bowSecond[station]
                + Vector256.Create(Vector256.Dot(second, u), Vector256.Dot(second, v), Vector256.Dot(second, w), Vector256.Dot(value, phi));
            RodKinematics.Evaluate(a, b, out RodKinematics k);
            int offset = station * section.Padded;
            SectionState s = section.Respond(
                k.Strain - initial[station], committed.AsSpan(offset, section.Padded), trial.AsSpan(offset, section.Padded));
            double weight = element.Weights[g];
            Vector256<double> forceA = weight * (s.S0 * k.EA + s.S1 * k.K1A + s.S2 * k.K2A + s.S3 * k.TA);
            Vector256<double> forceB = weight * (s.S1 * k.K1B + s.S2 * k.K2B + s.S3 * k.TB);
            for (int i = 0; i < 4; i++)
            {
                forces[i] += forceA[i] * first + forceB[i] * (i == 3 ? value : second);
            }
            AddMaterial(k, s, ref block);
            k.AddCurvature(s, ref block);
            Spread(weight, first, second, value, ref block, ref ke);
        }
    }

    /// <summary>Σ B_iᵀ D_ij B_j in the three blocks AA, AB and BB.</summary>
    private static void AddMaterial(in RodKinematics k, in SectionState s, ref Vector256<double> block)
    {
        // Rows of D·B.
        Vector256<double> eA = s.D00 * k.EA + s.D01 * k.K1A + s.D02 * k.K2A + s.D03 * k.TA;
        Vector256<double> c1A = s.D01 * k.EA + s.D11 * k.K1A + s.D12 * k.K2A + s.D13 * k.TA;
        Vector256<double> c2A = s.D02 * k.EA + s.D12 * k.K1A + s.D22 * k.K2A + s.D23 * k.TA;
        Vector256<double> tA = s.D03 * k.EA + s.D13 * k.K1A + s.D23 * k.K2A + s.D33 * k.TA;
        Vector256<double> eB = s.D01 * k.K1B + s.D02 * k.K2B + s.D03 * k.TB;
        Vector256<double> c1B = s.D11 * k.K1B + s.D12 * k.K2B + s.D13 * k.TB;
        Vector256<double> c2B = s.D12 * k.K1B + s.D22 * k.K2B + s.D23 * k.TB;
        Vector256<double> tB = s.D13 * k.K1B + s.D23 * k.K2B + s.D33 * k.TB;
        for (int i = 0; i < 4; i++)
        {
            Unsafe.Add(ref block, i) = k.EA[i] * eA + k.K1A[i] * c1A + k.K2A[i] * c2A + k.TA[i] * tA;
            Unsafe.Add(ref block, 4 + i) = k.EA[i] * eB + k.K1A[i] * c1B + k.K2A[i] * c2B + k.TA[i] * tB;
            Unsafe.Add(ref block, 8 + i) = k.K1B[i] * c1B + k.K2B[i] * c2B + k.TB[i] * tB;
        }
    }

    /// <summary>From the eight local variables to the sixteen element unknowns, upper blocks only. Row a·4 + i, block column b.</summary>
    private static void Spread(
        double weight, Vector256<double> first, Vector256<double> second, Vector256<double> value,
        ref Vector256<double> block, ref Vector256<double> ke)
    {
        for (int a = 0; a < 4; a++)
        {
            Vector256<double> shapeB = a == 3 ? value : second;
            for (int b = a; b < 4; b++)
            {
                Vector256<double> other = b == 3 ? value : second;
                Vector256<double> onFirst = (weight * Unsafe.Add(ref block, a)[b]) * first + (weight * Unsafe.Add(ref block, 4 + a)[b]) * other;
                Vector256<double> onSecond = (weight * Unsafe.Add(ref block, 4 + b)[a]) * first + (weight * Unsafe.Add(ref block, 8 + a)[b]) * other;
                ref Vector256<double> row = ref Unsafe.Add(ref ke, a * 16 + b);
                row += first[0] * onFirst + shapeB[0] * onSecond;
                Unsafe.Add(ref row, 4) += first[1] * onFirst + shapeB[1] * onSecond;
                Unsafe.Add(ref row, 8) += first[2] * onFirst + shapeB[2] * onSecond;
                Unsafe.Add(ref row, 12) += first[3] * onFirst + shapeB[3] * onSecond;
            }
        }
    }

    private void ScatterElement(int e, ReadOnlySpan<Vector256<double>> forces)
    {
        ref double ke = ref Unsafe.As<Vector256<double>, double>(ref MemoryMarshal.GetArrayDataReference(elementMatrix));
        int start = e * PerNode;
        double[] band = Matrix.Band;
        int origin = start * Matrix.Width;
        for (int i = 0; i < 256; i++)
        {
            int target = scatter[i];
            if (target >= 0)
            {
                band[origin + target] += Unsafe.Add(ref ke, i);
            }
        }
        for (int field = 0; field < 4; field++)
        {
            for (int i = 0; i < 4; i++)
            {
                Forces[start + Local(field, i)] += forces[field][i];
            }
        }
    }

    private void BuildScatter()
    {
        for (int row = 0; row < 16; row++)
        {
            for (int column = 0; column < 16; column++)
            {
                int a = row / 4, b = column / 4, i = Local(a, row % 4), k = Local(b, column % 4);
                bool once = a < b || (a == b && i <= k);
                scatter[16 * row + column] = once ? Math.Min(i, k) * Matrix.Width + Math.Abs(i - k) : -1;
            }
        }
    }

    /// <summary>Unknown of an element: field 0–3, value 0–3 (value and slope left, value and slope right).</summary>
    private static int Local(int field, int i) => (i / 2 * PerNode) + (2 * field) + (i % 2);

    private static void Gather(int e, double[] d, out Vector256<double> u, out Vector256<double> v, out Vector256<double> w, out Vector256<double> phi)
    {
        ReadOnlySpan<double> x = d.AsSpan(e * PerNode, 2 * PerNode);
        u = Vector256.Create(x[0], x[1], x[8], x[9]);
        v = Vector256.Create(x[2], x[3], x[10], x[11]);
        w = Vector256.Create(x[4], x[5], x[12], x[13]);
        phi = Vector256.Create(x[6], x[7], x[14], x[15]);
    }

    private void AddEnd(RodEnd end, int node, double[] d, double load)
    {
        Span<double> state = stackalloc double[6];
        EndState(node, d, state);
        end.Evaluate(state);
        ReadOnlySpan<int> place = [node + 1, node + 3, node + 5, node, node + 2, node + 4];
        for (int i = 0; i < 6; i++)
        {
            Forces[place[i]] += end.Force[i];
            Load[place[i]] += end.ShorteningForce[i];
            for (int k = 0; k < 6; k++)
            {
                double entry = end.Stiffness[6 * i + k] - (i < 3 && k < 3 ? load * end.ShorteningCurvature[3 * i + k] : 0);
                if (entry != 0 && place[i] <= place[k])
                {
                    Matrix.Add(place[i], place[k], entry);
                }
            }
        }
    }

    private double EndShortening(double[]? d)
    {
        Span<double> state = stackalloc double[6];
        EndState(0, d, state);
        double sum = end1.Shortening(state);
        EndState(Size - PerNode, d, state);
        return sum + end2.Shortening(state);
    }

    private void EndState(int node, double[]? d, Span<double> state)
    {
        Planar slope = BowSlope(node == 0 ? 0 : Strut.Length);
        (state[0], state[1], state[2]) = (1, slope.Y, slope.Z);
        state[3..].Clear();
        if (d is not null)
        {
            (state[0], state[1], state[2]) = (1 + d[node + 1], slope.Y + d[node + 3], slope.Z + d[node + 5]);
            (state[3], state[4], state[5]) = (d[node], d[node + 2], d[node + 4]);
        }
    }

    private int[] FindHeld()
    {
        var held = new SortedSet<int> { 0 };
        for (int node = 0; node < Size; node += PerNode)
        {
            bool last = node == Size - PerNode;
            if (node == 0 || last)
            {
                held.Add(node + 6);
                if ((last ? end2 : end1).HeldDirectly)
                {
                    held.Add(node + 2);
                    held.Add(node + 4);
                }
            }
            if (!twist)
            {
                held.Add(node + 6);
                held.Add(node + 7);
            }
        }
        return [.. held];
    }

    private Planar BowSlope(double x) => Math.PI / Strut.Length * Math.Cos(Math.PI * x / Strut.Length) * Strut.Bow;

    private (Vector256<double> First, Vector256<double> Second) Bow(double x)
    {
        double omega = Math.PI / Strut.Length;
        Planar first = BowSlope(x), second = -(omega * omega * Math.Sin(omega * x) * Strut.Bow);
        return (Vector256.Create(1, first.Y, first.Z, 0), Vector256.Create(0, second.Y, second.Z, 0));
    }
}
