using StrutLessons.Nonlinear;

namespace StrutLessons.Calibration;

/// <summary>How the reference of a grid is calculated.</summary>
public sealed record RatioSettings
{
    private readonly double bowRatio = ReferenceStrut.UsualBowRatio;
    private readonly double residualPeak = ReferenceStrut.UsualResidualPeak;
    private readonly int? workers;

    /// <summary>Bow L/1000 to either side along u, usual residual stress, fast mesh, all cores.</summary>
    public static RatioSettings Default { get; } = new();

    /// <summary>Bow of the reference as a part of the system length; both signs along u are tried, the lower peak counts.</summary>
    /// <exception cref="InputException">Outside 0 to 1/50.</exception>
    public double BowRatio
    {
        get => bowRatio;
        init => bowRatio = Guard.Within(value, 0, 0.02, "bow ratio of the reference", "", "Give the bow over the length: 0.001 is L/1000.");
    }

    /// <summary>Peak of the residual stress, MPa.</summary>
    /// <exception cref="InputException">Outside 0 to 300 MPa.</exception>
    public double ResidualPeak
    {
        get => residualPeak;
        init => residualPeak = Guard.Within(value, 0, 300, "residual stress", "MPa", "A quarter of 235 MPa is common practice for rolled angles.");
    }

    /// <summary>Mesh of the reference.</summary>
    public RodMesh Mesh { get; init; } = RodMesh.Fast;

    /// <summary>Struts at work at the same time; left out it is the number of cores.</summary>
    /// <exception cref="InputException">Outside 1 to 1024.</exception>
    public int? Workers
    {
        get => workers;
        init => workers = value is int n ? Guard.Within(n, 1, 1024, "workers", "Leave it out to use all cores.") : null;
    }
}
