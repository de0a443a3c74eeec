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

    /// <summary>True if no state before the peak has an unstable mode. If false, a branch leaves the path before its peak, and a real strut would follow it.</summary>
    public bool StableToPeak => PeakIndex >= 0 && Points.Take(PeakIndex + 1).All(p => p.UnstableModes == 0);
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
