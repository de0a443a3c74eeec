using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Plates;

/// <summary>
/// L·D·Lᵀ factors of a <see cref="TiledSkyline"/>, without exchange of rows. The last tile row is not factored: it holds the
/// stiffness that the rest of the structure offers to the last four unknowns (Schur complement).
/// The number of negative pivots is the number of eigenvalues below zero (Sylvester's law of inertia).
/// </summary>
internal sealed class TiledFactor
{
    private const int Side = TiledSkyline.Side;
    private const int Area = TiledSkyline.Area;
    private readonly TiledSkyline _matrix;
    private readonly double[] _inversePivots;

    private TiledFactor(TiledSkyline matrix)
    {
        _matrix = matrix;
        _inversePivots = new double[matrix.Size];
        for (int row = 0; row < matrix.TileRows; row++)
        {
            ReduceRow(row);
            ScaleRow(row);
            if (row < matrix.TileRows - 1)
            {
                FactorDiagonal(row);
            }
        }
    }

    /// <summary>Negative pivots among all unknowns but the last four.</summary>
    internal int NegativePivots { get; private set; }

    /// <summary>Factors the matrix and overwrites it.</summary>
    internal static TiledFactor Of(TiledSkyline matrix) => new(matrix);

    /// <summary>Stiffness left for the last four unknowns: entry (row, column) of the lower triangle, 0 to 3.</summary>
    internal double Kept(int row, int column) => _matrix.Values[_matrix.Values.Length - Area + column * Side + row];

    /// <summary>First half of a solution: takes the loads on all but the last four unknowns to the last four.</summary>
    private void Forward(Span<double> load)
    {
        var blocks = MemoryMarshal.Cast<double, Vector256<double>>(load);
        for (int row = 0; row < _matrix.TileRows; row++)
        {
            var tiles = Row(row);
            var sum = blocks[row];
            int k = 0;
            for (int column = _matrix.First[row] * Side; column < row * Side; column++, k++)
            {
                sum = Vector256.FusedMultiplyAdd(-tiles[k], Vector256.Create(load[column]), sum);
            }

            blocks[row] = sum;
            if (row == _matrix.TileRows - 1)
            {
                return;
            }

            var own = load.Slice(row * Side, Side);
            var diagonal = _matrix.Values.AsSpan(_matrix.Start[row + 1] - Area, Area);
            for (int c = 0; c < Side; c++)
            {
                for (int r = c + 1; r < Side; r++)
                {
                    own[r] -= diagonal[c * Side + r] * own[c];
                }
            }
        }
    }

    /// <summary>Second half: the last four entries hold displacements, the others what <see cref="Forward"/> left.</summary>
    private void Backward(Span<double> vector)
    {
        int kept = _matrix.Size - Side;
        var blocks = MemoryMarshal.Cast<double, Vector256<double>>(vector);
        var inverse = MemoryMarshal.Cast<double, Vector256<double>>(_inversePivots);
        for (int block = 0; block < kept / Side; block++)
        {
            blocks[block] *= inverse[block];
        }

        for (int row = _matrix.TileRows - 1; row >= 0; row--)
        {
            var own = vector.Slice(row * Side, Side);
            if (row < _matrix.TileRows - 1)
            {
                var diagonal = _matrix.Values.AsSpan(_matrix.Start[row + 1] - Area, Area);
                for (int c = Side - 1; c >= 0; c--)
                {
                    for (int r = c + 1; r < Side; r++)
                    {
                        own[c] -= diagonal[c * Side + r] * own[r];
                    }
                }
            }

            var tiles = Row(row);
            var mine = blocks[row];
            int k = 0;
            for (int column = _matrix.First[row] * Side; column < row * Side; column++, k++)
            {
                vector[column] -= Vector256.Dot(tiles[k], mine);
            }
        }
    }

    /// <summary>Solves in place: the load becomes the displacement.</summary>
    internal void Solve(Span<double> load, KeptSystem kept)
    {
        Forward(load);
        kept.Solve(load[^Side..]);
        Backward(load);
    }

    private Span<Vector256<double>> Row(int row) =>
        MemoryMarshal.Cast<double, Vector256<double>>(_matrix.Values.AsSpan(_matrix.Start[row], _matrix.Start[row + 1] - _matrix.Start[row]));

    /// <summary>Subtracts what the rows above contribute: afterwards the tiles hold L·D.</summary>
    private void ReduceRow(int row)
    {
        int first = _matrix.First[row];
        var tiles = Row(row);
        for (int column = first; column < row; column++)
        {
            int from = Math.Max(first, _matrix.First[column]);
            int count = (column - from) * Side;
            var left = tiles.Slice((from - first) * Side, count);
            int above = _matrix.Start[column] + (from - _matrix.First[column]) * Area;
            var upper = _matrix.Values.AsSpan(above, count * Side);
            var target = tiles.Slice((column - first) * Side, Side);
            SubtractProduct(left, upper, target);
            var diagonal = _matrix.Values.AsSpan(_matrix.Start[column + 1] - Area, Area);
            for (int c = 1; c < Side; c++)
            {
                for (int k = 0; k < c; k++)
                {
                    target[c] = Vector256.FusedMultiplyAdd(target[k], Vector256.Create(-diagonal[k * Side + c]), target[c]);
                }
            }
        }
    }

    /// <summary>The inner loop of the whole analysis: target -= left · upperᵀ, four columns at a time.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void SubtractProduct(ReadOnlySpan<Vector256<double>> left, ReadOnlySpan<double> upper, Span<Vector256<double>> target)
    {
        Vector256<double> a = Vector256<double>.Zero, b = a, c = a, d = a;
        ref double coefficient = ref MemoryMarshal.GetReference(upper);
        ref var column = ref MemoryMarshal.GetReference(left);
        for (int k = 0; k < left.Length; k++)
        {
            var value = Unsafe.Add(ref column, k);
            a = Vector256.FusedMultiplyAdd(value, Vector256.Create(coefficient), a);
            b = Vector256.FusedMultiplyAdd(value, Vector256.Create(Unsafe.Add(ref coefficient, 1)), b);
            c = Vector256.FusedMultiplyAdd(value, Vector256.Create(Unsafe.Add(ref coefficient, 2)), c);
            d = Vector256.FusedMultiplyAdd(value, Vector256.Create(Unsafe.Add(ref coefficient, 3)), d);
            coefficient = ref Unsafe.Add(ref coefficient, Side);
        }

        target[0] -= a;
        target[1] -= b;
        target[2] -= c;
        target[3] -= d;
    }

    /// <summary>Turns L·D into L and takes L·D·Lᵀ of this row from its diagonal tile.</summary>
    private void ScaleRow(int row)
    {
        var tiles = Row(row);
        int count = tiles.Length - Side;
        int column = _matrix.First[row] * Side;
        var target = tiles.Slice(count, Side);
        Vector256<double> a = target[0], b = target[1], c = target[2], d = target[3];
        for (int k = 0; k < count; k++)
        {
            var whole = -tiles[k];
            var scaled = tiles[k] * Vector256.Create(_inversePivots[column + k]);
            tiles[k] = scaled;
            a = Vector256.FusedMultiplyAdd(whole, Vector256.Create(scaled[0]), a);
            b = Vector256.FusedMultiplyAdd(whole, Vector256.Create(scaled[1]), b);
            c = Vector256.FusedMultiplyAdd(whole, Vector256.Create(scaled[2]), c);
            d = Vector256.FusedMultiplyAdd(whole, Vector256.Create(scaled[3]), d);
        }

        target[0] = a;
        target[1] = b;
        target[2] = c;
        target[3] = d;
    }

    private void FactorDiagonal(int row)
    {
        var tile = _matrix.Values.AsSpan(_matrix.Start[row + 1] - Area, Area);
        for (int c = 0; c < Side; c++)
        {
            double pivot = tile[c * Side + c];
            if (pivot == 0)
            {
                throw new InvalidOperationException("The plate model has no stiffness against one of its movements.");
            }

            NegativePivots += pivot < 0 ? 1 : 0;
            double inverse = 1 / pivot;
            _inversePivots[row * Side + c] = inverse;
            for (int k = c + 1; k < Side; k++)
            {
                double whole = tile[c * Side + k];
                for (int r = k; r < Side; r++)
                {
                    tile[k * Side + r] -= whole * inverse * tile[c * Side + r];
                }
            }

            for (int r = c + 1; r < Side; r++)
            {
                tile[c * Side + r] *= inverse;
            }
        }
    }
}
