using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace StrutLessons.Nonlinear;

/// <summary>
/// Symmetric banded matrix with an LDLᵀ factorisation in place. Without row exchanges the signs of the pivots
/// count the negative eigenvalues (Sylvester's law of inertia): that is the number of unstable modes.
/// </summary>
internal sealed class BandedLdl
{
    private readonly double[] band;

    /// <param name="size">Number of unknowns.</param>
    /// <param name="width">Diagonal and upper band of one row; rounded up so that rows fill whole vectors.</param>
    internal BandedLdl(int size, int width)
    {
        Size = size;
        int lanes = Vector<double>.Count;
        Width = (width + lanes - 1) / lanes * lanes;
        // One spare row lets the vector loop read past the last entry.
        band = new double[(size + 1) * Width];
    }

    internal int Size { get; }

    /// <summary>Stored entries of one row: A(i, i), A(i, i+1), …</summary>
    internal int Width { get; }

    /// <summary>Entry (i, i+k) is at i·Width + k.</summary>
    internal double[] Band => band;

    internal int NegativePivots { get; private set; }

    internal void Clear() => Array.Clear(band);

    /// <summary>Adds to entry (i, j) of the symmetric matrix.</summary>
    internal void Add(int i, int j, double value) => band[i <= j ? i * Width + j - i : j * Width + i - j] += value;

    /// <summary>Replaces equation i by x_i = 0.</summary>
    internal void Fix(int i)
    {
        Array.Clear(band, i * Width, Width);
        band[i * Width] = 1;
        for (int k = 1; k < Width && k <= i; k++)
        {
            band[(i - k) * Width + k] = 0;
        }
    }

    /// <summary>Factorises in place; false if a pivot vanishes.</summary>
    internal bool Factorise()
    {
        NegativePivots = 0;
        ref double a = ref MemoryMarshal.GetArrayDataReference(band);
        int lanes = Vector<double>.Count;
        for (int i = 0; i < Size; i++)
        {
            ref double row = ref Unsafe.Add(ref a, i * Width);
            double pivot = row;
            if (pivot == 0 || !double.IsFinite(pivot))
            {
                return false;
            }
            NegativePivots += pivot < 0 ? 1 : 0;
            int last = Math.Min(Width - 1, Size - 1 - i);
            for (int k = 1; k <= last; k++)
            {
                double entry = Unsafe.Add(ref row, k);
                if (entry == 0)
                {
                    continue;
                }
                double factor = entry / pivot;
                ref double target = ref Unsafe.Add(ref a, (i + k) * Width);
                var f = new Vector<double>(factor);
                for (int m = 0; m < Width - k; m += lanes)
                {
                    // Lanes beyond the band read the next row's entries; they must not change this row.
                    Vector<double> source = Vector.LoadUnsafe(ref row, (nuint)(k + m));
                    if (k + m + lanes > Width)
                    {
                        source = Vector.ConditionalSelect(Vector.LessThan(LaneIndex, new Vector<double>(Width - k - m)), source, Vector<double>.Zero);
                    }
                    (Vector.LoadUnsafe(ref target, (nuint)m) - f * source).StoreUnsafe(ref target, (nuint)m);
                }
            }
            for (int k = 1; k <= last; k++)
            {
                Unsafe.Add(ref row, k) /= pivot;
            }
        }
        return true;
    }

    /// <summary>Solves in place with the factors.</summary>
    internal void Solve(double[] x)
    {
        for (int i = 0; i < Size; i++)
        {
            int row = i * Width, last = Math.Min(Width - 1, Size - 1 - i);
            double xi = x[i];
            for (int k = 1; k <= last; k++)
            {
                x[i + k] -= band[row + k] * xi;
            }
        }
        for (int i = Size - 1; i >= 0; i--)
        {
            int row = i * Width, last = Math.Min(Width - 1, Size - 1 - i);
            double sum = x[i] / band[row];
            for (int k = 1; k <= last; k++)
            {
                sum -= band[row + k] * x[i + k];
            }
            x[i] = sum;
        }
    }

    private static readonly Vector<double> LaneIndex = CreateLaneIndex();

    private static Vector<double> CreateLaneIndex()
    {
        double[] index = new double[Vector<double>.Count];
        for (int i = 0; i < index.Length; i++)
        {
            index[i] = i;
        }
        return new Vector<double>(index);
    }
}
