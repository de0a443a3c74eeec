namespace StrutLessons.Nonlinear;

/// <summary>How a load path is followed.</summary>
public sealed record PathSettings
{
    private readonly double largestStep = 0.1, fall = 0.05;
    private readonly int mostSteps = 400;

    /// <summary>Follows to the peak and 5 % down behind it, with every effect switched on.</summary>
    public static PathSettings Default { get; } = new();

    /// <summary>Stops at the peak: the quickest way to the peak load.</summary>
    public static PathSettings PeakOnly { get; } = new() { Fall = 0 };

    /// <summary>False holds the roll at zero everywhere.</summary>
    public bool Twist { get; init; } = true;

    /// <summary>False leaves the Wagner term out: fibres away from the axis then do not lengthen when the bar twists.</summary>
    public bool Wagner { get; init; } = true;

    /// <summary>
    /// Largest step along the path. 1 is a load of the reference size (the smaller of the squash load and twice the Euler load of the hinged bar),
    /// or a mean displacement of L/150.
    /// </summary>
    /// <exception cref="InputException">Outside 0.001 to 1.</exception>
    public double LargestStep
    {
        get => largestStep;
        init => largestStep = Guard.Within(value, 0.001, 1, "largest step", "", "0.1 is quick, 0.02 gives a smooth animation.");
    }

    /// <summary>Share of the peak load by which the load falls before the run stops; 0 stops at the peak.</summary>
    /// <exception cref="InputException">Outside 0 to 0.9.</exception>
    public double Fall
    {
        get => fall;
        init => fall = Guard.Within(value, 0, 0.9, "fall behind the peak", "", "0.05 shows the falling branch.");
    }

    /// <summary>The run stops after this many steps.</summary>
    /// <exception cref="InputException">Outside 1 to 100000.</exception>
    public int MostSteps
    {
        get => mostSteps;
        init => mostSteps = Guard.Within(value, 1, 100_000, "most steps", "A path needs about 15 to 40 steps.");
    }

    /// <summary>True keeps the plastic strains of every point of the path (for an animation), not of the peak alone.</summary>
    public bool KeepYielding { get; init; }
}
