namespace StrutLessons.Nonlinear;

/// <summary>Unknowns and load of one state on the path, with the path length up to it.</summary>
internal sealed class PathState(int size)
{
    internal double[] D { get; } = new double[size];

    internal double Load { get; set; }

    internal double Length { get; set; }

    /// <summary>dN along the normal of the step, without sign change before the peak.</summary>
    internal double Slope { get; set; }

    internal int NegativePivots { get; set; }

    internal void CopyFrom(PathState other)
    {
        other.D.AsSpan().CopyTo(D);
        (Load, Length, Slope, NegativePivots) = (other.Load, other.Length, other.Slope, other.NegativePivots);
    }
}
