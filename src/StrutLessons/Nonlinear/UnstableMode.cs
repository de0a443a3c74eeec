namespace StrutLessons.Nonlinear;

/// <summary>
/// The mode into which a path of equilibrium can turn off. At a branch the mode does no work with the load, φᵀ f = 0; at a peak it does. So the mode is
/// sought among the displacements on which the load does no work: a peak nearby is no mode of these.
/// </summary>
internal static class UnstableMode
{
    private const int Iterations = 8;

    /// <summary>Inverse iteration on the tangent that the last evaluation has left behind, factorised, under the condition fᵀ φ = 0.</summary>
    internal static double[] Of(RodModel model, PathMetric metric)
    {
        double[] mode = metric.SmoothShape(), path = [.. model.Load];
        SolveFree(model, path);
        double compliance = Work(model, path);
        for (int iteration = 0; iteration < Iterations; iteration++)
        {
            metric.Weigh(mode);
            SolveFree(model, mode);
            double share = Work(model, mode) / compliance;
            for (int i = 0; i < mode.Length; i++)
            {
                mode[i] -= share * path[i];
            }
            double norm = metric.Norm(mode, 0);
            for (int i = 0; i < mode.Length; i++)
            {
                mode[i] /= norm;
            }
        }
        return mode;
    }

    private static double Work(RodModel model, double[] displacements)
    {
        double sum = 0;
        for (int i = 0; i < displacements.Length; i++)
        {
            sum += model.Load[i] * displacements[i];
        }
        return sum;
    }

    private static void SolveFree(RodModel model, double[] x)
    {
        foreach (int i in model.Held)
        {
            x[i] = 0;
        }
        model.Matrix.Solve(x);
    }
}
