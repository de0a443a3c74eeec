namespace StrutLessons.Nonlinear;

/// <summary>Why a load path ended.</summary>
public enum StopReason
{
    /// <summary>The peak was found, and the load fell behind it as far as asked.</summary>
    PeakPassed,

    /// <summary>No peak: the displacement reached a tenth of the length. An elastic strut ends like this.</summary>
    DisplacementLimit,

    /// <summary>The allowed number of steps was used up.</summary>
    StepLimit,

    /// <summary>Equilibrium was not found even with the smallest step.</summary>
    NotConverged,
}
