namespace StrutLessons.Nonlinear;

/// <summary>
/// Follows the load path by arc length on a fixed plane. The predictor extrapolates converged states: at an accepted state all flowing fibres sit
/// exactly on the yield limit, the tangent taken there is elastic, and steps along it would shrink to nothing below the peak.
/// </summary>
internal sealed class PathFollower
{
    private const double Tolerance = 2e-6;
    private const int MostIterations = 12;
    private readonly RodModel model;
    private readonly PathMetric metric;
    private readonly double[] correction, tangent, normal;
    private readonly PathState now, low, high;
    private double normalLoad;

    internal PathFollower(RodModel model)
    {
        this.model = model;
        metric = new PathMetric(model);
        (correction, tangent, normal) = (new double[model.Size], new double[model.Size], new double[model.Size]);
        (now, low, high) = (new PathState(model.Size), new PathState(model.Size), new PathState(model.Size));
        (Last, Before, BeforeThat) = (new PathState(model.Size), new PathState(model.Size), new PathState(model.Size));
    }

    /// <summary>Factorised tangents so far.</summary>
    internal int Iterations { get; private set; }

    /// <summary>Iterations of the last step.</summary>
    internal int StepIterations { get; private set; }

    /// <summary>The last accepted state.</summary>
    internal PathState Last { get; private set; }

    private PathState Before { get; set; }

    private PathState BeforeThat { get; set; }

    private int Accepted { get; set; }

    /// <summary>Tries one step of the given length; true if equilibrium was found. The state is not accepted yet.</summary>
    internal bool TryStep(double step)
    {
        StepIterations = 0;
        if (!Predict(step))
        {
            return false;
        }
        SetNormal();
        return Correct() && now.Load > 0;
    }

    /// <summary>The state just found, not accepted yet.</summary>
    internal PathState Found => now;

    /// <summary>The load that counts as 1 in the path length, N.</summary>
    internal double ReferenceLoad => metric.ReferenceLoad;

    /// <summary>True if the state just found lies behind a maximum of the load.</summary>
    internal bool BehindPeak => now.Slope < 0;

    /// <summary>Accepts the state just found.</summary>
    internal void Accept()
    {
        model.Commit();
        (BeforeThat, Before, Last) = (Before, Last, BeforeThat);
        now.Length = Before.Length + metric.Norm(Difference(now, Before), now.Load - Before.Load);
        Last.CopyFrom(now);
        Accepted++;
    }

    /// <summary>
    /// The step just found passed the peak: finds the point between where dN vanishes, by false position on the slope with halving of the stuck end.
    /// Every trial starts from the last accepted state.
    /// </summary>
    internal bool FindPeak()
    {
        low.CopyFrom(Last);
        high.CopyFrom(now);
        double lowSlope = Math.Max(low.Slope, -0.1 * high.Slope), highSlope = high.Slope;
        double lowPlace = 0, highPlace = PlaceOf(high);
        int pivots = Last.NegativePivots;
        for (int trial = 0; trial < 25; trial++)
        {
            double share = Math.Clamp(lowSlope / (lowSlope - highSlope), 0.05, 0.95);
            Interpolate(share);
            if (!Correct())
            {
                return false;
            }
            double place = PlaceOf(now), curvature = (lowSlope - highSlope) / (highPlace - lowPlace);
            // What the parabola through both slopes could still add to the load.
            bool close = 0.5 * now.Slope * now.Slope / curvature < 1e-6 * now.Load;
            if (close || highPlace - lowPlace < 1e-5)
            {
                now.NegativePivots = pivots;
                return true;
            }
            if (now.Slope > 0)
            {
                low.CopyFrom(now);
                (lowSlope, lowPlace) = (now.Slope, place);
                highSlope *= trial > 0 ? 0.5 : 1;
            }
            else
            {
                high.CopyFrom(now);
                (highSlope, highPlace) = (now.Slope, place);
                lowSlope *= trial > 0 ? 0.5 : 1;
            }
        }
        return false;
    }

    /// <summary>Equilibrium at a given load near the last accepted state; true if found. The state is not accepted yet.</summary>
    internal bool TryLoad(double load)
    {
        StepIterations = 0;
        Extrapolate(Accepted < 1 ? 0 : (load - Last.Load) / (Last.Load - Before.Load), 0);
        now.Load = load;
        Array.Clear(normal);
        normalLoad = metric.ReferenceLoad;
        return Correct() && now.NegativePivots == 0;
    }

    /// <summary>The unstable mode of the state just found that the load does not drive.</summary>
    internal double[] UnstableMode() => Nonlinear.UnstableMode.Of(model, metric);

    /// <summary>Side loads for N = 1 in the shape of a mode, see <see cref="PathMetric.SideLoads"/>.</summary>
    internal double[] SideLoads(double[] mode, double amplitude) => metric.SideLoads(mode, amplitude);

    private double PlaceOf(PathState state) => metric.Product(normal, normalLoad, Difference(state, Last), state.Load - Last.Load);

    private double[] Difference(PathState a, PathState b)
    {
        for (int i = 0; i < correction.Length; i++)
        {
            correction[i] = a.D[i] - b.D[i];
        }
        return correction;
    }

    private bool Predict(double step)
    {
        if (Accepted == 0)
        {
            Array.Clear(now.D);
            model.Evaluate(now.D, 0);
            model.Load.AsSpan().CopyTo(tangent);
            model.ApplyHolds(tangent, correction);
            Iterations++;
            if (!model.Matrix.Factorise())
            {
                return false;
            }
            model.Matrix.Solve(tangent);
            double scale = step / metric.Norm(tangent, 1);
            for (int i = 0; i < tangent.Length; i++)
            {
                now.D[i] = scale * tangent[i];
            }
            now.Load = scale;
            return true;
        }
        double ratio = step / (Last.Length - Before.Length);
        // Parabola through the last three states where they exist (Newton's divided differences).
        double second = Accepted < 2 ? 0 : step * (step + Last.Length - Before.Length) / (Last.Length - BeforeThat.Length);
        Extrapolate(ratio, second);
        return true;
    }

    private void Extrapolate(double ratio, double second)
    {
        double near = second == 0 ? 0 : second / (Last.Length - Before.Length), far = second == 0 ? 0 : second / (Before.Length - BeforeThat.Length);
        for (int i = 0; i < now.D.Length; i++)
        {
            double last = Last.D[i] - Before.D[i];
            now.D[i] = Last.D[i] + ratio * last + near * last - far * (Before.D[i] - BeforeThat.D[i]);
        }
        double lastLoad = Last.Load - Before.Load;
        now.Load = Last.Load + ratio * lastLoad + near * lastLoad - far * (Before.Load - BeforeThat.Load);
    }

    private void Interpolate(double share)
    {
        for (int i = 0; i < now.D.Length; i++)
        {
            now.D[i] = low.D[i] + share * (high.D[i] - low.D[i]);
        }
        now.Load = low.Load + share * (high.Load - low.Load);
    }

    private void SetNormal()
    {
        Difference(now, Last).AsSpan().CopyTo(normal);
        normalLoad = now.Load - Last.Load;
        double length = metric.Norm(normal, normalLoad);
        for (int i = 0; i < normal.Length; i++)
        {
            normal[i] /= length;
        }
        normalLoad /= length;
    }

    /// <summary>Newton's method on the plane through the predicted state.</summary>
    private bool Correct()
    {
        double first = 0;
        for (int iteration = 1; iteration <= MostIterations; iteration++)
        {
            StepIterations++;
            Iterations++;
            model.Evaluate(now.D, now.Load);
            for (int i = 0; i < correction.Length; i++)
            {
                correction[i] = now.Load * model.Load[i] - model.Forces[i];
            }
            model.Load.AsSpan().CopyTo(tangent);
            model.ApplyHolds(correction, tangent);
            if (!model.Matrix.Factorise())
            {
                return false;
            }
            model.Matrix.Solve(correction);
            model.Matrix.Solve(tangent);
            double along = metric.Product(normal, normalLoad, tangent, 1);
            double change = -metric.Product(normal, normalLoad, correction, 0) / along;
            for (int i = 0; i < correction.Length; i++)
            {
                correction[i] += change * tangent[i];
                now.D[i] += correction[i];
            }
            now.Load += change;
            double size = metric.Norm(correction, change);
            if (size < Tolerance)
            {
                now.Slope = 1 / along;
                now.NegativePivots = model.Matrix.NegativePivots;
                return true;
            }
            first = iteration == 1 ? size : first;
            if (!double.IsFinite(size) || size > 100 * first + 10)
            {
                return false;
            }
        }
        return false;
    }
}
