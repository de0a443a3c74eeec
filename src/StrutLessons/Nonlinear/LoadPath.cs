namespace StrutLessons.Nonlinear;

/// <summary>
/// Result of the reference analysis. A teaching aid: it is not a design check; local codes and licensed practice decide.
/// </summary>
/// <param name="Strut">The strut.</param>
/// <param name="Mesh">Mesh in use.</param>
/// <param name="Settings">Settings in use.</param>
/// <param name="Reason">Why the run ended.</param>
/// <param name="Points">States of equilibrium in order, from no load on; the peak is among them.</param>
/// <param name="PeakIndex">Place of the peak among the points; −1 if no peak was found.</param>
/// <param name="Iterations">Factorised tangents, a measure of the work.</param>
public sealed partial record LoadPath(
    ReferenceStrut Strut, RodMesh Mesh, PathSettings Settings, StopReason Reason, IReadOnlyList<PathPoint> Points, int PeakIndex, int Iterations)
{
    /// <summary>The state at the first maximum of the load; null if the run ended before one.</summary>
    public PathPoint? Peak => PeakIndex < 0 ? null : Points[PeakIndex];

    /// <summary>N_u, the first maximum of the load, N.</summary>
    /// <exception cref="InvalidOperationException">The run ended before a peak; <see cref="Reason"/> says why.</exception>
    public double PeakLoad => Peak?.Load ?? throw new InvalidOperationException($"No peak was found: {Reason}.");

    /// <summary>The first branch before the peak, tried with a small disturbance; null if no state before the peak has an unstable mode, or without a peak.</summary>
    public PathBranch? Branch { get; init; }

    /// <summary>
    /// True if nothing turns the strut off its path before the peak: no state has an unstable mode, or a small disturbance in that mode does not lower the
    /// peak by more than 1 %. If false, a real strut would turn off, and <see cref="LowestPeakLoad"/> counts.
    /// </summary>
    public bool StableToPeak => PeakIndex >= 0 && (Branch is null || Branch.PeakLoad >= (1 - PathBranch.Limit) * PeakLoad);

    /// <summary>The peak load, or the lower one of the disturbed strut if the path is not stable to its peak, N.</summary>
    /// <exception cref="InvalidOperationException">The run ended before a peak; <see cref="Reason"/> says why.</exception>
    public double LowestPeakLoad => Branch is null || StableToPeak ? PeakLoad : Branch.PeakLoad;
}

/// <summary>Discretisation error of a peak load, estimated from two meshes.</summary>
/// <param name="PeakLoad">Peak load on the given mesh, N.</param>
/// <param name="FinerPeakLoad">Peak load on the finer mesh with half the step, N.</param>
/// <param name="FinerMesh">The finer mesh.</param>
public sealed record PeakLoadError(double PeakLoad, double FinerPeakLoad, RodMesh FinerMesh)
{
    /// <summary>|N − N_finer| / N_finer.</summary>
    public double Relative => Math.Abs(PeakLoad / FinerPeakLoad - 1);
}
