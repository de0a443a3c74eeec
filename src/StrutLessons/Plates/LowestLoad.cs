namespace StrutLessons.Plates;

/// <summary>
/// Inverse iteration in a growing subspace (Lanczos, J. Res. Nat. Bur. Standards 45, 1950): each step solves K y = G x and keeps
/// all directions so far. The lowest positive load factor is found even where a reversed load would buckle the plate earlier.
/// A count of negative pivots just below the result proves that no lower load factor was missed (Sturm sequence property).
/// </summary>
internal static class LowestLoad
{
    private const int MaxSteps = 60;

    // Residual relative to the value; the value's own error is of its square.
    private const double Tolerance = 1e-6;

    // The count is taken this far below the result: wide enough for the rounding in a mesh with very thin elements.
    private const double Margin = 1e-4;

    /// <summary>Finds the lowest positive load factor.</summary>
    /// <param name="stiffness">K.</param>
    /// <param name="factor">Factors of K.</param>
    /// <param name="geometric">G, the softening of a unit load.</param>
    /// <param name="bodies">Movements of rigid bodies.</param>
    /// <param name="held">Movements held at zero.</param>
    /// <exception cref="InvalidOperationException">The load buckles nothing, or the proof of completeness failed.</exception>
    internal static BucklingMode Find(
        TiledSkyline stiffness, TiledFactor factor, TiledSkyline geometric, int bodies, params ReadOnlySpan<int> held)
    {
        var kept = KeptSystem.Of(factor, bodies, held);
        var (basis, ritz, value, steps) = Iterate(factor, geometric, kept);
        double load = 1 / value;
        var shifted = TiledFactor.Of(stiffness.Minus(load * (1 - Margin), geometric));
        if (shifted.NegativePivots + KeptSystem.Of(shifted, bodies, held).NegativePivots > 0)
        {
            throw new InvalidOperationException("A lower buckling load exists than the one found.");
        }

        var mode = new double[geometric.Size];
        for (int k = 0; k < ritz.Length; k++)
        {
            for (int i = 0; i < mode.Length; i++)
            {
                mode[i] += ritz[k] * basis[k][i];
            }
        }

        return new(load, mode, steps);
    }

    private static (List<double[]> Basis, double[] Ritz, double Value, int Steps) Iterate(
        TiledFactor factor, TiledSkyline geometric, KeptSystem kept)
    {
        int size = geometric.Size;
        var basis = new List<double[]>();
        var forces = new List<double[]>();
        var diagonal = new List<double>();
        var beside = new List<double>();
        var (next, force) = Start(size, factor, kept);
        for (int step = 1; step <= MaxSteps; step++)
        {
            basis.Add(next);
            forces.Add(force);
            force = new double[size];
            geometric.Multiply(next, force);
            next = (double[])force.Clone();
            factor.Solve(next, kept);
            double own = Orthogonalise(next, force, basis, forces);
            diagonal.Add(own);
            double value = Tridiagonal.Largest(diagonal, beside);
            double norm = Math.Sqrt(Math.Max(0, Dot(next, force)));
            var ritz = Tridiagonal.Vector(diagonal, beside, value);
            if (value > 0 && norm * Math.Abs(ritz[^1]) < Tolerance * value)
            {
                return (basis, ritz, value, step);
            }

            beside.Add(norm);
            Scale(next, 1 / norm);
            Scale(force, 1 / norm);
        }

        throw new InvalidOperationException("The load does not buckle the plate.");
    }

    private static (double[] Direction, double[] Force) Start(int size, TiledFactor factor, KeptSystem kept)
    {
        // Any direction that is orthogonal to no mode; a fixed sequence makes every run the same.
        var force = new double[size];
        uint state = 2463534242;
        for (int i = 0; i < size; i++)
        {
            state ^= state << 13;
            state ^= state >> 17;
            state ^= state << 5;
            force[i] = state / (double)uint.MaxValue - 0.5;
        }

        var direction = (double[])force.Clone();
        factor.Solve(direction, kept);
        double scale = 1 / Math.Sqrt(Dot(direction, force));
        Scale(direction, scale);
        Scale(force, scale);
        return (direction, force);
    }

    /// <summary>Removes all earlier directions, twice for accuracy; returns the part along the latest one.</summary>
    private static double Orthogonalise(double[] next, double[] force, List<double[]> basis, List<double[]> forces)
    {
        double own = 0;
        for (int pass = 0; pass < 2; pass++)
        {
            for (int k = basis.Count - 1; k >= 0; k--)
            {
                double part = Dot(basis[k], force);
                own += k == basis.Count - 1 ? part : 0;
                Subtract(next, part, basis[k]);
                Subtract(force, part, forces[k]);
            }
        }

        return own;
    }

    private static double Dot(ReadOnlySpan<double> a, ReadOnlySpan<double> b)
    {
        double sum = 0;
        for (int i = 0; i < a.Length; i++)
        {
            sum += a[i] * b[i];
        }

        return sum;
    }

    private static void Subtract(Span<double> target, double factor, ReadOnlySpan<double> other)
    {
        for (int i = 0; i < target.Length; i++)
        {
            target[i] -= factor * other[i];
        }
    }

    private static void Scale(Span<double> vector, double factor)
    {
        for (int i = 0; i < vector.Length; i++)
        {
            vector[i] *= factor;
        }
    }
}
