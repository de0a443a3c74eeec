using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Double;
using StrutLessons.Member;
using StrutLessons.Sections;

namespace StrutLessons.Benchmarks;

/// <summary>
/// The same strut by general means: cubic beam elements in both principal planes, geometric stiffness, a dense solver, an
/// eigenvalue solver for the critical load and a general root finder for first yield. Only here to be compared with.
/// </summary>
internal sealed class FiniteElementRoute
{
    private const int Elements = 16;

    private readonly Strut strut;
    private readonly Matrix<double> stiffness, geometric;
    private readonly Vector<double> perLoad;
    private readonly double size;

    internal FiniteElementRoute(Strut strut)
    {
        this.strut = strut;
        size = strut.SystemLength / Elements;
        AngleSection section = strut.Section;
        double e = strut.Steel.ElasticModulus;
        // Freedoms: u, u', v, v' at each node.
        int n = 4 * (Elements + 1);
        stiffness = new DenseMatrix(n);
        geometric = new DenseMatrix(n);
        perLoad = new DenseVector(n);
        for (int i = 0; i < Elements; i++)
        {
            for (int plane = 0; plane < 2; plane++)
            {
                double ei = e * (plane == 0 ? section.SecondMomentV : section.SecondMomentU);
                int[] at = [4 * i + 2 * plane, 4 * i + 2 * plane + 1, 4 * i + 4 + 2 * plane, 4 * i + 5 + 2 * plane];
                for (int r = 0; r < 4; r++)
                {
                    for (int c = 0; c < 4; c++)
                    {
                        stiffness[at[r], at[c]] += Bending(r, c, size) * ei / (size * size * size);
                        geometric[at[r], at[c]] += Geometric(r, c, size) / (30 * size);
                    }
                }
            }
        }

        AddEnd(strut.End1, 0, 1);
        AddEnd(strut.End2, 4 * Elements, -1);
        AddBow();
        foreach (int held in new[] { 0, 2, 4 * Elements, 4 * Elements + 2 })
        {
            stiffness.ClearRow(held);
            stiffness.ClearColumn(held);
            geometric.ClearRow(held);
            geometric.ClearColumn(held);
            stiffness[held, held] = 1;
            perLoad[held] = 0;
        }
    }

    internal double Critical()
    {
        Matrix<double> inverse = stiffness.Solve(geometric);
        return 1 / inverse.Evd().EigenValues.Real().Maximum();
    }

    internal double Capacity()
    {
        double critical = Critical(), top = Math.Min(critical * (1 - 1e-6), strut.SquashLoad);
        double Excess(double load) => Largest(load) - strut.Steel.YieldStrength;

        // A scan against a missed first crossing, then Brent.
        double low = 1e-3 * top;
        for (int i = 1; i <= 24; i++)
        {
            double high = top * i / 24;
            if (Excess(high) >= 0)
            {
                return FindRoots.OfFunction(Excess, low, high, 1e-6);
            }

            low = high;
        }

        return critical;
    }

    private double Largest(double load)
    {
        Vector<double> d = (stiffness - load * geometric).Solve(load * perLoad);
        AngleSection section = strut.Section;
        double most = 0;
        for (int i = 0; i < Elements; i++)
        {
            for (int end = 0; end < 2; end++)
            {
                double bendU = Curvature(d, i, 0, end), bendV = Curvature(d, i, 2, end);
                foreach (StressPoint corner in section.Corners)
                {
                    double stress = load / section.Area + strut.Steel.ElasticModulus
                        * (bendU * section.AlongU(corner.Position) + bendV * section.AlongV(corner.Position));
                    most = Math.Max(most, Math.Abs(stress));
                }
            }
        }

        return most;
    }

    private double Curvature(Vector<double> d, int element, int plane, int end)
    {
        int a = 4 * element + plane, b = a + 4;
        double delta = (d[b] - d[a]) / size;
        return end == 0 ? (6 * delta - 4 * d[a + 1] - 2 * d[b + 1]) / size : (2 * d[a + 1] + 4 * d[b + 1] - 6 * delta) / size;
    }

    private void AddEnd(StrutEnd end, int node, double sense)
    {
        AngleSection section = strut.Section;
        double y = Math.Min(end.Spring.InPlane, 1e15), z = Math.Min(end.Spring.OutOfPlane, 1e15);
        Planar u = section.AxisU, v = section.AxisV;
        stiffness[node + 1, node + 1] += y * u.Y * u.Y + z * u.Z * u.Z;
        stiffness[node + 3, node + 3] += y * v.Y * v.Y + z * v.Z * v.Z;
        stiffness[node + 1, node + 3] += y * u.Y * v.Y + z * u.Z * v.Z;
        stiffness[node + 3, node + 1] += y * u.Y * v.Y + z * u.Z * v.Z;
        perLoad[node + 1] -= sense * section.AlongU(end.Eccentricity);
        perLoad[node + 3] -= sense * section.AlongV(end.Eccentricity);
    }

    /// <summary>The bow as nodal values of its own shape: the load is the geometric stiffness times the bow.</summary>
    private void AddBow()
    {
        Bow bow = strut.Bows[0];
        AngleSection section = strut.Section;
        var shape = new DenseVector(perLoad.Count);
        for (int i = 0; i <= Elements; i++)
        {
            double angle = Math.PI * i / Elements, slope = Math.PI / strut.SystemLength * Math.Cos(angle);
            (double u, double v) = (bow.Amplitude * section.AlongU(bow.Direction), bow.Amplitude * section.AlongV(bow.Direction));
            shape[4 * i] = u * Math.Sin(angle);
            shape[4 * i + 1] = u * slope;
            shape[4 * i + 2] = v * Math.Sin(angle);
            shape[4 * i + 3] = v * slope;
        }

        geometric.Multiply(shape).CopyTo(shape);
        perLoad.Add(shape, perLoad);
    }

    private static double Bending(int r, int c, double l) => (r, c) switch
    {
        (0, 0) or (2, 2) => 12,
        (0, 2) or (2, 0) => -12,
        (0, 1) or (1, 0) or (0, 3) or (3, 0) => 6 * l,
        (1, 2) or (2, 1) or (2, 3) or (3, 2) => -6 * l,
        (1, 1) or (3, 3) => 4 * l * l,
        _ => 2 * l * l,
    };

    private static double Geometric(int r, int c, double l) => (r, c) switch
    {
        (0, 0) or (2, 2) => 36,
        (0, 2) or (2, 0) => -36,
        (0, 1) or (1, 0) or (0, 3) or (3, 0) => 3 * l,
        (1, 2) or (2, 1) or (2, 3) or (3, 2) => -3 * l,
        (1, 1) or (3, 3) => 4 * l * l,
        _ => -l * l,
    };
}
