namespace StrutLessons.Nonlinear;

/// <summary>Unsymmetric banded matrix with an LU factorisation in place and without row exchanges (the strut's matrices are nearly symmetric and positive).</summary>
internal sealed class BandedLu(int size, int half)
{
    private readonly int stride = 2 * half + 1;
    private readonly double[] band = new double[size * (2 * half + 1)];

    internal void Clear() => Array.Clear(band);

    internal void Add(int i, int j, double value) => band[i * stride + j - i + half] += value;

    /// <summary>Replaces equation i by x_i = 0.</summary>
    internal void Fix(int i)
    {
        Array.Clear(band, i * stride, stride);
        band[i * stride + half] = 1;
    }

    /// <summary>Factorises in place and solves; false if a pivot is not positive, that is beyond the critical load.</summary>
    internal bool Solve(double[] x)
    {
        for (int i = 0; i < size; i++)
        {
            double pivot = band[i * stride + half];
            if (!(pivot > 0))
            {
                return false;
            }
            int last = Math.Min(half, size - 1 - i);
            ReadOnlySpan<double> upper = band.AsSpan(i * stride + half + 1, last);
            for (int k = 1; k <= last; k++)
            {
                double factor = band[(i + k) * stride + half - k] / pivot;
                if (factor == 0)
                {
                    continue;
                }
                Span<double> row = band.AsSpan((i + k) * stride + half - k + 1, last);
                for (int m = 0; m < last; m++)
                {
                    row[m] -= factor * upper[m];
                }
                x[i + k] -= factor * x[i];
            }
        }
        for (int i = size - 1; i >= 0; i--)
        {
            int last = Math.Min(half, size - 1 - i);
            double sum = x[i];
            for (int k = 1; k <= last; k++)
            {
                sum -= band[i * stride + half + k] * x[i + k];
            }
            x[i] = sum / band[i * stride + half];
        }
        return true;
    }
}
