namespace StrutLessons.Plates;

/// <summary>
/// The last four equations after all others are eliminated: a small dense system for the movements of a rigid body.
/// Movements may be held here without a new factorisation of the plate.
/// </summary>
internal sealed class KeptSystem
{
    private const int Side = TiledSkyline.Side;

    // Inverse of the stiffness of the free movements; rows and columns of held ones are zero.
    private readonly double[] _flexibility = new double[Side * Side];

    private KeptSystem(TiledFactor factor, int bodies, ReadOnlySpan<int> held)
    {
        Span<int> free = stackalloc int[Side];
        int count = 0;
        for (int body = 0; body < bodies; body++)
        {
            if (!held.Contains(body))
            {
                free[count++] = body;
            }
        }

        Invert(factor, free[..count]);
    }

    /// <summary>Negative pivots among the free movements.</summary>
    internal int NegativePivots { get; private set; }

    /// <summary>The system of a factored matrix with the given movements held.</summary>
    internal static KeptSystem Of(TiledFactor factor, int bodies, params ReadOnlySpan<int> held) => new(factor, bodies, held);

    /// <summary>Movement <paramref name="row"/> under a unit force on movement <paramref name="column"/>.</summary>
    internal double Flexibility(int row, int column) => _flexibility[row * Side + column];

    /// <summary>Turns the four loads into movements.</summary>
    internal void Solve(Span<double> kept)
    {
        Span<double> load = stackalloc double[Side];
        kept.CopyTo(load);
        for (int row = 0; row < Side; row++)
        {
            kept[row] = 0;
            for (int column = 0; column < Side; column++)
            {
                kept[row] += Flexibility(row, column) * load[column];
            }
        }
    }

    /// <summary>Symmetric Gauss–Jordan exchange: after all pivots the matrix is its negative inverse.</summary>
    private void Invert(TiledFactor factor, ReadOnlySpan<int> free)
    {
        int n = free.Length;
        Span<double> a = stackalloc double[Side * Side];
        for (int row = 0; row < n; row++)
        {
            for (int column = 0; column < n; column++)
            {
                a[row * n + column] = factor.Kept(Math.Max(free[row], free[column]), Math.Min(free[row], free[column]));
            }
        }

        for (int pivot = 0; pivot < n; pivot++)
        {
            double inverse = 1 / a[pivot * n + pivot];
            NegativePivots += inverse < 0 ? 1 : 0;
            for (int row = 0; row < n; row++)
            {
                for (int column = 0; column < n; column++)
                {
                    if (row != pivot && column != pivot)
                    {
                        a[row * n + column] -= a[row * n + pivot] * inverse * a[pivot * n + column];
                    }
                }
            }

            for (int k = 0; k < n; k++)
            {
                if (k != pivot)
                {
                    a[k * n + pivot] *= inverse;
                    a[pivot * n + k] *= inverse;
                }
            }

            a[pivot * n + pivot] = -inverse;
        }

        for (int row = 0; row < n; row++)
        {
            for (int column = 0; column < n; column++)
            {
                _flexibility[free[row] * Side + free[column]] = -a[row * n + column];
            }
        }
    }
}
