using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace StrutLessons.Plates;

/// <summary>
/// Symmetric matrix inside a skyline, cut into 4×4 tiles. Row J of tiles holds the tiles from <c>First[J]</c> to the diagonal.
/// Inside a tile four values of one column lie side by side, so that one vector instruction works on four rows at once.
/// </summary>
internal sealed class TiledSkyline
{
    /// <summary>Rows and columns of a tile.</summary>
    internal const int Side = 4;

    /// <summary>Numbers in a tile.</summary>
    internal const int Area = Side * Side;

    private TiledSkyline(int[] first, int[] start, double[] values)
    {
        First = first;
        Start = start;
        Values = values;
    }

    /// <summary>A zero matrix whose tile row J begins at tile column <paramref name="first"/>[J].</summary>
    internal TiledSkyline(int[] first)
    {
        First = first;
        Start = new int[first.Length + 1];
        for (int row = 0; row < first.Length; row++)
        {
            Start[row + 1] = Start[row] + (row - first[row] + 1) * Area;
        }

        Values = new double[Start[^1]];
    }

    /// <summary>First tile column of every tile row.</summary>
    internal int[] First { get; }

    /// <summary>Position in <see cref="Values"/> where every tile row begins.</summary>
    internal int[] Start { get; }

    /// <summary>The tiles, row by row.</summary>
    internal double[] Values { get; }

    /// <summary>Number of tile rows.</summary>
    internal int TileRows => First.Length;

    /// <summary>Number of equations, padding included.</summary>
    internal int Size => First.Length * Side;

    /// <summary>Adds to the entry (row, column) of the lower triangle.</summary>
    internal void Add(int row, int column, double value)
    {
        int tileRow = row >> 2;
        int tile = Start[tileRow] + ((column >> 2) - First[tileRow]) * Area;
        Values[tile + (column & 3) * Side + (row & 3)] += value;
    }

    /// <summary>This matrix minus <paramref name="factor"/> times a matrix of the same skyline.</summary>
    internal TiledSkyline Minus(double factor, TiledSkyline other)
    {
        var values = new double[Values.Length];
        var mine = MemoryMarshal.Cast<double, Vector256<double>>(Values);
        var its = MemoryMarshal.Cast<double, Vector256<double>>(other.Values);
        var sum = MemoryMarshal.Cast<double, Vector256<double>>(values.AsSpan());
        var scale = Vector256.Create(-factor);
        for (int k = 0; k < sum.Length; k++)
        {
            sum[k] = Vector256.FusedMultiplyAdd(scale, its[k], mine[k]);
        }

        return new TiledSkyline(First, Start, values);
    }

    /// <summary>A copy that may be overwritten.</summary>
    internal TiledSkyline Copy() => new(First, Start, (double[])Values.Clone());

    /// <summary>Writes the product of this matrix and <paramref name="x"/> to <paramref name="y"/>.</summary>
    internal void Multiply(ReadOnlySpan<double> x, Span<double> y)
    {
        y.Clear();
        var source = MemoryMarshal.Cast<double, Vector256<double>>(x);
        var target = MemoryMarshal.Cast<double, Vector256<double>>(y);
        for (int row = 0; row < TileRows; row++)
        {
            var tiles = MemoryMarshal.Cast<double, Vector256<double>>(Values.AsSpan(Start[row], Start[row + 1] - Start[row]));
            var mine = source[row];
            var sum = Vector256<double>.Zero;
            int k = 0;
            for (int column = First[row] * Side; column < row * Side; column++, k++)
            {
                sum = Vector256.FusedMultiplyAdd(tiles[k], Vector256.Create(x[column]), sum);
                y[column] += Vector256.Dot(tiles[k], mine);
            }

            target[row] += sum;
            MultiplyDiagonal(Values.AsSpan(Start[row + 1] - Area, Area), x.Slice(row * Side, Side), y.Slice(row * Side, Side));
        }
    }

    private static void MultiplyDiagonal(ReadOnlySpan<double> tile, ReadOnlySpan<double> x, Span<double> y)
    {
        for (int column = 0; column < Side; column++)
        {
            y[column] += tile[column * Side + column] * x[column];
            for (int row = column + 1; row < Side; row++)
            {
                double entry = tile[column * Side + row];
                y[row] += entry * x[column];
                y[column] += entry * x[row];
            }
        }
    }
}
