using CsCheck;
using MathNet.Numerics.LinearAlgebra;
using StrutLessons.Plates;

namespace StrutLessons.Tests.Plates;

/// <summary>The tiled solver against MathNet.Numerics on random matrices.</summary>
public class SolverTests
{
    private static readonly Gen<(int Tiles, int Seed)> Sizes = Gen.Select(Gen.Int[2, 9], Gen.Int[0, 10_000]);

    [Fact]
    public void The_tiled_solver_agrees_with_a_dense_one() => Sizes.Sample(s =>
    {
        var (dense, tiled) = Random(s.Tiles, s.Seed, shift: 8);
        var load = Vector<double>.Build.Random(dense.RowCount, s.Seed);
        var expected = dense.Solve(load);
        var actual = load.ToArray();
        var factor = TiledFactor.Of(tiled);
        factor.Solve(actual, KeptSystem.Of(factor, 4));
        Assert.True((expected - Vector<double>.Build.Dense(actual)).L2Norm() < 1e-9 * expected.L2Norm());
    });

    [Fact]
    public void Negative_pivots_count_the_negative_eigenvalues() => Sizes.Sample(s =>
    {
        var (dense, tiled) = Random(s.Tiles, s.Seed, shift: 0.3);
        int negative = dense.Evd(Symmetricity.Symmetric).EigenValues.Count(value => value.Real < 0);
        var factor = TiledFactor.Of(tiled);
        Assert.Equal(negative, factor.NegativePivots + KeptSystem.Of(factor, 4).NegativePivots);
    });

    [Fact]
    public void A_product_agrees_with_a_dense_one() => Sizes.Sample(s =>
    {
        var (dense, tiled) = Random(s.Tiles, s.Seed, shift: 1);
        var vector = Vector<double>.Build.Random(dense.RowCount, s.Seed);
        var actual = new double[dense.RowCount];
        tiled.Multiply(vector.ToArray(), actual);
        Assert.True((dense * vector - Vector<double>.Build.Dense(actual)).L2Norm() < 1e-10);
    });

    // A positive definite K and an indefinite G: the lowest positive λ of Kφ = λGφ from a dense eigenvalue solution.
    [Fact]
    public void The_lowest_positive_load_factor_is_found_even_if_a_reversed_load_is_lower() => Sizes.Sample(s =>
    {
        var (denseK, tiledK) = Random(s.Tiles, s.Seed, shift: 9);
        var (denseG, tiledG) = Random(s.Tiles, s.Seed + 1, shift: -1);
        var root = denseK.Cholesky().Factor.Inverse();
        double largest = (root * denseG * root.Transpose()).Evd(Symmetricity.Symmetric).EigenValues.Max(value => value.Real);
        if (largest < 1e-3)
        {
            return;
        }

        var mode = LowestLoad.Find(tiledK, TiledFactor.Of(tiledK.Copy()), tiledG, 4);
        Assert.Equal(1, mode.Factor * largest, 1e-6);
    });

    [Fact]
    public void Held_movements_act_as_if_their_rows_were_struck_out()
    {
        var (dense, tiled) = Random(5, 3, shift: 8);
        int held = dense.RowCount - 2;
        var expected = dense.RemoveRow(held).RemoveColumn(held).Inverse();
        var kept = KeptSystem.Of(TiledFactor.Of(tiled), 4, 2);
        Assert.Equal(expected[held - 1, held - 1], kept.Flexibility(1, 1), 1e-12);
        Assert.Equal(expected[held, held - 2], kept.Flexibility(3, 0), 1e-12);
        Assert.Equal(0, kept.Flexibility(2, 1));
    }

    private static (Matrix<double> Dense, TiledSkyline Tiled) Random(int tiles, int seed, double shift)
    {
        var random = new Random(seed);
        int size = 4 * tiles;
        // The same skyline for every matrix of a size, so that two of them may be combined.
        var first = Enumerable.Range(0, tiles).Select(row => row == tiles - 1 ? 0 : Math.Max(0, row - 1 - row % 3)).ToArray();
        var dense = Matrix<double>.Build.Dense(size, size);
        var tiled = new TiledSkyline(first);
        for (int row = 0; row < size; row++)
        {
            for (int column = 4 * first[row / 4]; column <= row; column++)
            {
                double value = random.NextDouble() - 0.5 + (row == column ? shift : 0);
                dense[row, column] = dense[column, row] = value;
                tiled.Add(row, column, value);
            }
        }

        return (dense, tiled);
    }
}
