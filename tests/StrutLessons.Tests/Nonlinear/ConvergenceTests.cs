using StrutLessons.Nonlinear;
using StrutLessons.Tests.Cases;

namespace StrutLessons.Tests.Nonlinear;

public class ConvergenceTests
{
    private static readonly string[] Samples = ["P10", "P16", "P28"];

    [Fact]
    public void More_elements_bring_the_peak_load_closer_until_yielding_sets_the_limit()
    {
        // Limits: the independent rod behind the reference cases shows 1.8e-2, 3.5e-3, 2.7e-4 and 5e-5.
        double[] errors = [.. new[] { 2, 4, 8, 16 }.Select(n => Worst(new RodMesh(n, 4, 16, 2), 0.05, new RodMesh(48, 4, 16, 2), 0.05))];
        Assert.InRange(errors[0], 1e-3, 1.8e-2);
        Assert.InRange(errors[1], 0, 3.5e-3);
        Assert.InRange(errors[2], 0, 2.7e-4);
        Assert.InRange(errors[3], 0, 5e-5);
        Assert.True(errors[0] > 4 * errors[1] && errors[1] > 2 * errors[2] && errors[2] > 2 * errors[3], string.Join(' ', errors));
    }

    [Fact]
    public void The_elastic_rod_converges_with_the_fourth_order_of_its_elements()
    {
        foreach (TwistLadder ladder in TwistLadder.All.Where(t => t.Id is "E3" or "E4" or "E5" or "E6"))
        {
            double[] twist = [.. new[] { 8, 16, 32, 64 }.Select(n => ElasticRod.StatesAt(ladder.Strut, [ladder.Loads[3]], n)[0].TwistMid)];
            double first = (twist[0] - twist[1]) / (twist[1] - twist[2]), second = (twist[1] - twist[2]) / (twist[2] - twist[3]);
            Assert.InRange(Math.Log2(first), 3.6, 4.4);
            Assert.InRange(Math.Log2(second), 3.8, 4.3);
        }
    }

    [Fact]
    public void More_fibres_bring_the_peak_load_closer()
    {
        var fine = new RodMesh(8, 4, 48, 4);
        double[] errors = [.. new[] { (4, 1), (8, 1), (12, 2), (24, 3) }.Select(c => Worst(new RodMesh(8, 4, c.Item1, c.Item2), 0.05, fine, 0.05))];
        // The independent rod behind the reference cases shows 1.6e-3 for 4 × 1 cells, 5e-4 for 8 × 1, 1e-4 for 12 × 2, each against its finest grid.
        Assert.InRange(errors[0], 5e-4, 2.5e-3);
        Assert.InRange(errors[1], 0, 5e-4);
        Assert.InRange(errors[2], 0, 1e-4);
        Assert.InRange(errors[3], 0, 5e-5);
    }

    [Fact]
    public void Shorter_steps_change_the_peak_load_little()
    {
        RodMesh mesh = RodMesh.Fast;
        Assert.InRange(Worst(mesh, 0.2, mesh, 0.01), 0, 3e-4);
        Assert.InRange(Worst(mesh, 0.1, mesh, 0.01), 0, 1e-4);
        Assert.InRange(Worst(mesh, 0.03, mesh, 0.01), 0, 3e-5);
    }

    [Fact]
    public void The_error_estimate_covers_the_true_error_of_the_fast_mesh()
    {
        foreach (string id in Samples)
        {
            NonlinearCase c = NonlinearCase.Get(id);
            LoadPath path = ReferenceAnalysis.Follow(c.Strut, RodMesh.Fast, PathSettings.PeakOnly);
            PeakLoadError error = ReferenceAnalysis.EstimateError(path);
            Assert.InRange(error.Relative, 0, 1e-3);
            Closeness.Relative(c.PeakLoad, error.FinerPeakLoad, 3e-4, "finer peak load");
            Assert.True(Math.Abs(path.PeakLoad / c.PeakLoad - 1) < 2 * error.Relative + 1e-4);
        }
    }

    private static double Worst(RodMesh mesh, double step, RodMesh reference, double referenceStep) =>
        Samples.Max(id => Math.Abs(Peak(id, mesh, step) / Peak(id, reference, referenceStep) - 1));

    private static double Peak(string id, RodMesh mesh, double step) =>
        ReferenceAnalysis.Follow(NonlinearCase.Get(id).Strut, mesh, PathSettings.PeakOnly with { LargestStep = step }).PeakLoad;
}
