namespace StrutLessons.Plates;

/// <summary>A girder between two fork supports: the ends cannot move sideways or twist but are free to warp.</summary>
/// <param name="Length">Distance between the forks, mm.</param>
/// <param name="Position">Distance of the joint from one fork, mm.</param>
public sealed record GirderSpan(double Length, double Position)
{
    /// <summary>This span, if a foot from <paramref name="from"/> to <paramref name="to"/>, measured from the joint, lies on it.</summary>
    /// <exception cref="InputException">A value out of range; the message says which and why.</exception>
    internal GirderSpan Checked(double from, double to)
    {
        Guard.Positive(Length, "girder length", "mm", "Give the distance between the forks.");
        Guard.Within(Position, 0, Length, "load position", "mm", "The joint must lie on the girder.");
        Guard.Within(Position, -from, Length - to, "load position", "mm", "The whole foot must lie between the forks: move the joint or shorten the foot.");
        return this;
    }
}
