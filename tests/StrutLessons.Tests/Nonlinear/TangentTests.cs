using StrutLessons.Nonlinear;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

public class TangentTests
{
    [Theory]
    [InlineData(355.0, 0.0, true, true)]
    [InlineData(355.0, 2000.0, true, true)]
    [InlineData(355.0, 0.0, true, false)]
    [InlineData(1e9, 0.0, true, true)]
    [InlineData(355.0, 0.0, false, true)]
    public void The_tangent_is_the_derivative_of_the_forces(double yield, double hardening, bool twist, bool wagner)
    {
        // Large random displacements, springs, arms to hinges, an unequal angle, yielding fibres: every term is in play.
        var end1 = new ReferenceEnd(new Planar(20, 25), 2e8, 5e7, 60);
        var end2 = new ReferenceEnd(new Planar(-15, 20), double.PositiveInfinity, 0, 0);
        var strut = new ReferenceStrut(
            ReferenceSection.Angle(100, 65, 8), new ReferenceSteel(210000, 80769, yield, hardening), 1500, new Planar(4, -3), 58.75, end1, end2);
        var model = new RodModel(strut, new RodMesh(2, 4, 6, 1), twist, wagner);
        var random = new Random(7);
        double[] d = Displaced(model, random), direction = Displaced(model, random);
        const double Load = 2e5, Step = 1e-5;
        model.Evaluate(d, Load);
        if (yield < 1e6)
        {
            Assert.InRange(model.Trial.Count(p => p != 0), model.Trial.Length / 10, 9 * model.Trial.Length / 10);
        }
        double[] product = Multiply(model, direction);
        double[] forward = Residual(model, d, direction, Step, Load), backward = Residual(model, d, direction, -Step, Load);
        double scale = product.Max(Math.Abs);
        for (int i = 0; i < product.Length; i++)
        {
            double difference = (forward[i] - backward[i]) / (2 * Step);
            Assert.True(Math.Abs(difference - product[i]) < 2e-6 * scale, $"unknown {i}: {difference} against {product[i]}");
        }
    }

    [Fact]
    public void The_load_vector_is_the_derivative_of_the_shortening()
    {
        ReferenceStrut strut = NonlinearCase.Get("P34").Strut;
        strut = new ReferenceStrut(strut.Section, strut.Steel, strut.Length, strut.Bow, 0,
            new ReferenceEnd(new Planar(20, 30), 0, 0, 80), new ReferenceEnd(new Planar(10, 25), 0, 0, 40));
        var model = new RodModel(strut, new RodMesh(2, 4, 4, 1), true, true);
        var random = new Random(3);
        double[] d = Displaced(model, random), direction = Displaced(model, random);
        model.Evaluate(d, 0);
        double expected = 0;
        for (int i = 0; i < d.Length; i++)
        {
            expected += model.Load[i] * direction[i];
        }
        double ahead = model.Shortening(Shifted(d, direction, 1e-5)), behind = model.Shortening(Shifted(d, direction, -1e-5));
        Closeness.Relative(expected, (ahead - behind) / 2e-5, 1e-7, "derivative");
        Assert.Equal(0, model.Shortening(new double[model.Size]), 12);
    }

    [Fact]
    public void Iterations_take_no_memory()
    {
        var model = new RodModel(NonlinearCase.Get("P16").Strut, RodMesh.Fast, true, true);
        var follower = new PathFollower(model);
        for (int i = 0; i < 3; i++)
        {
            Assert.True(follower.TryStep(0.1));
            follower.Accept();
        }
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int i = 0; i < 5; i++)
        {
            follower.TryStep(0.05);
            follower.Accept();
        }
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    private static double[] Displaced(RodModel model, Random random)
    {
        double[] d = new double[model.Size];
        for (int i = 0; i < d.Length; i++)
        {
            // u', v', w' of some hundredths, roll of a tenth: far outside small displacements.
            d[i] = (i % 2 == 0 ? i % 8 == 6 ? 0.1 : i % 8 == 0 ? 0.5 : 8 : i % 8 == 7 ? 2e-4 : i % 8 == 1 ? 1e-3 : 0.02) * (2 * random.NextDouble() - 1);
        }
        foreach (int i in model.Held)
        {
            d[i] = 0;
        }
        return d;
    }

    private static double[] Shifted(double[] d, double[] direction, double step) => [.. d.Zip(direction, (a, b) => a + step * b)];

    private static double[] Residual(RodModel model, double[] d, double[] direction, double step, double load)
    {
        model.Evaluate(Shifted(d, direction, step), load);
        return [.. model.Forces.Zip(model.Load, (f, g) => f - load * g)];
    }

    private static double[] Multiply(RodModel model, double[] x)
    {
        double[] y = new double[x.Length];
        for (int i = 0; i < x.Length; i++)
        {
            for (int k = 0; k < model.Matrix.Width && i + k < x.Length; k++)
            {
                double entry = model.Matrix.Band[i * model.Matrix.Width + k];
                y[i] += entry * x[i + k];
                y[i + k] += k > 0 ? entry * x[i] : 0;
            }
        }
        return y;
    }
}
