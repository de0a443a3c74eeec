using MathNet.Numerics.LinearAlgebra;

namespace StrutLessons.Torsion;

/// <summary>
/// The same girder by finite elements along its length: twist and twist rate at every node, cubic between them.
/// A second way to the closed form of <see cref="PointTorque"/>, independent of hyperbolic functions.
/// </summary>
public static class TorsionElements
{
    /// <summary>Twist at the nodes under a torque at one of them.</summary>
    /// <param name="bar">The bar.</param>
    /// <param name="torque">T, N mm.</param>
    /// <param name="position">a from end 1, mm; a node is put there.</param>
    /// <param name="elements">Elements in all, 2 to 400, shared between both sides of the torque by length.</param>
    /// <returns>Position (mm) and twist (rad) of every node from end 1 to end 2.</returns>
    /// <exception cref="InputException">A position outside the bar or a number of elements out of range.</exception>
    public static IReadOnlyList<(double X, double Twist)> Solve(TorsionBar bar, double torque, double position, int elements = 64)
    {
        ArgumentNullException.ThrowIfNull(bar);
        PointTorque check = bar.Under(torque, position);
        Guard.Within(elements, 2, 400, "number of elements", "More than a few dozen add rounding errors, not digits.");
        double[] nodes = Nodes(bar.Length, check.Position, elements, out int loaded);
        int size = 2 * nodes.Length;
        Matrix<double> stiffness = Matrix<double>.Build.Dense(size, size);
        for (int e = 0; e + 1 < nodes.Length; e++)
        {
            AddElement(stiffness, 2 * e, bar, nodes[e + 1] - nodes[e]);
        }

        Vector<double> load = Vector<double>.Build.Dense(size);
        load[2 * loaded] = torque;
        Hold(stiffness, load, 0);
        Hold(stiffness, load, size - 2);
        if (bar.End1 == WarpingEnd.WarpingFixed)
        {
            Hold(stiffness, load, 1);
        }

        if (bar.End2 == WarpingEnd.WarpingFixed)
        {
            Hold(stiffness, load, size - 1);
        }

        Vector<double> solution = stiffness.Solve(load);
        return [.. nodes.Select((x, i) => (x, solution[2 * i]))];
    }

    /// <summary>Even nodes on both sides of the torque.</summary>
    private static double[] Nodes(double length, double position, int elements, out int loaded)
    {
        int left = Math.Clamp((int)Math.Round(elements * position / length), 1, elements - 1), split = left;
        loaded = left;
        return [.. Enumerable.Range(0, elements + 1).Select(i => i <= split
            ? position * i / split
            : length - (length - position) * (elements - i) / (elements - split))];
    }

    /// <summary>Bending part with E I_w, string part with G I_t, of a cubic element of length h (any finite element book).</summary>
    private static void AddElement(Matrix<double> k, int at, TorsionBar bar, double h)
    {
        double w = bar.Warping / (h * h * h), s = bar.StVenant / (30 * h);
        double[,] e =
        {
            { 12 * w + 36 * s, (6 * w + 3 * s) * h, -12 * w - 36 * s, (6 * w + 3 * s) * h },
            { 0, (4 * w + 4 * s) * h * h, -(6 * w + 3 * s) * h, (2 * w - s) * h * h },
            { 0, 0, 12 * w + 36 * s, -(6 * w + 3 * s) * h },
            { 0, 0, 0, (4 * w + 4 * s) * h * h },
        };
        for (int i = 0; i < 4; i++)
        {
            for (int j = 0; j < 4; j++)
            {
                k[at + i, at + j] += e[Math.Min(i, j), Math.Max(i, j)];
            }
        }
    }

    private static void Hold(Matrix<double> k, Vector<double> load, int freedom)
    {
        k.ClearRow(freedom);
        k.ClearColumn(freedom);
        k[freedom, freedom] = 1;
        load[freedom] = 0;
    }
}
