namespace StrutLessons.Nonlinear;

/// <summary>
/// The reference analysis of one strut: large displacements, twist, yielding, residual stress and bow, fibre by fibre.
/// A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
public static class ReferenceAnalysis
{
    private const double FirstStep = 0.15, SmallestStep = 1e-5, BranchStep = 0.003;

    /// <summary>Follows the load path from no load to the peak and, if asked, down behind it.</summary>
    /// <param name="strut">The strut.</param>
    /// <param name="mesh">Mesh; <see cref="RodMesh.Standard"/> if left out.</param>
    /// <param name="settings">Settings; <see cref="PathSettings.Default"/> if left out.</param>
    /// <param name="progress">Receives every point of the path.</param>
    /// <param name="cancellationToken">Stops the run between two steps.</param>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static LoadPath Follow(
        ReferenceStrut strut, RodMesh? mesh = null, PathSettings? settings = null,
        IProgress<PathPoint>? progress = null, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(strut);
        (mesh, settings) = (mesh ?? RodMesh.Standard, settings ?? PathSettings.Default);
        (LoadPath path, double[]? sideLoads, double branch) = Run(strut, mesh, settings, null, progress, cancellationToken);
        if (path.Peak is null || sideLoads is null)
        {
            return path;
        }
        double lowest = double.PositiveInfinity;
        foreach (double[] side in (double[][])[sideLoads, [.. sideLoads.Select(f => -f)]])
        {
            // Without a peak the highest load that was reached is on the safe side.
            LoadPath disturbed = Run(strut, mesh, settings with { Fall = 0, KeepYielding = false }, side, null, cancellationToken).Path;
            lowest = Math.Min(lowest, disturbed.Points.Max(p => p.Load));
        }
        return path with { Branch = new PathBranch(branch, lowest) };
    }

    /// <summary>One path, with side loads for N = 1 if given. Also the side loads that push the strut onto the first branch before the peak, and N there.</summary>
    private static (LoadPath Path, double[]? SideLoads, double BranchLoad) Run(
        ReferenceStrut strut, RodMesh mesh, PathSettings settings, double[]? sideLoads, IProgress<PathPoint>? progress, CancellationToken cancellationToken)
    {
        var model = new RodModel(strut, mesh, settings.Twist, settings.Wagner) { SideLoads = sideLoads };
        var follower = new PathFollower(model);
        List<PathPoint> points = [PathReader.Read(model, follower.Last, settings.KeepYielding)];
        int peak = -1;
        double step = FirstStep, longest = settings.LargestStep;
        double[]? towardsBranch = null;
        double branchLoad = 0;
        (LoadPath, double[]?, double) End(StopReason reason) => (new(strut, mesh, settings, reason, points, peak, follower.Iterations), towardsBranch, branchLoad);
        for (int count = 0; count < settings.MostSteps; count++)
        {
            cancellationToken.ThrowIfCancellationRequested();
            step = Math.Min(step, longest);
            bool found = follower.TryStep(step), passes = found && peak < 0 && follower.BehindPeak;
            bool branches = found && peak < 0 && !passes && follower.Found.NegativePivots > follower.Last.NegativePivots;
            if (branches && step > BranchStep)
            {
                // An unstable mode without a falling load: either two branches cross here, or a long step jumped over a peak to another branch.
                step = longest = Math.Max(step / 3, BranchStep);
                continue;
            }
            if (passes && longest > settings.LargestStep / 2)
            {
                // Come closer in shorter steps first: the last step from an accepted state to the peak should not skip yielding and unloading.
                step = longest = step / 3;
                continue;
            }
            if (!found || (passes && !follower.FindPeak()))
            {
                step *= 0.4;
                if (step < SmallestStep)
                {
                    return End(StopReason.NotConverged);
                }
                continue;
            }
            if (branches && towardsBranch is null)
            {
                (towardsBranch, branchLoad) = (follower.SideLoads(follower.UnstableMode(), PathBranch.Disturbance * strut.Length), follower.Found.Load);
            }
            longest = passes || branches ? settings.LargestStep : longest;
            follower.Accept();
            peak = passes ? points.Count : peak;
            points.Add(PathReader.Read(model, follower.Last, settings.KeepYielding || passes));
            progress?.Report(points[^1]);
            if (peak >= 0 && follower.Last.Load <= (1 - settings.Fall) * points[peak].Load)
            {
                return End(StopReason.PeakPassed);
            }
            if (points[^1].ShearCentreMid.Length > strut.Length / 10)
            {
                return End(StopReason.DisplacementLimit);
            }
            step *= passes ? 0.7 : follower.StepIterations <= 3 ? 1.7 : follower.StepIterations <= 5 ? 1.1 : 0.6;
        }
        return End(StopReason.StepLimit);
    }

    /// <summary>Peak load on the mesh and on a finer one with half the steps: an estimate of the discretisation error.</summary>
    /// <param name="path">A path with a peak.</param>
    /// <param name="cancellationToken">Stops the run between two steps.</param>
    /// <exception cref="InvalidOperationException">One of the two paths has no peak.</exception>
    /// <exception cref="OperationCanceledException">The run was cancelled.</exception>
    public static PeakLoadError EstimateError(LoadPath path, CancellationToken cancellationToken = default)
    {
        ArgumentNullException.ThrowIfNull(path);
        RodMesh finer = path.Mesh.Finer();
        PathSettings settings = path.Settings with { Fall = 0, LargestStep = Math.Max(path.Settings.LargestStep / 2, 0.001) };
        LoadPath second = Follow(path.Strut, finer, settings, null, cancellationToken);
        return new PeakLoadError(path.PeakLoad, second.PeakLoad, finer);
    }
}
