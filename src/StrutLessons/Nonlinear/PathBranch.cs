namespace StrutLessons.Nonlinear;

/// <summary>
/// A branch before the peak: an unstable mode that the load does not drive. An end section that turns plastic while its spring still takes load makes
/// one, mostly on coarse meshes, because flowing fibres have no stiffness at all; the peak hardly changes. A thin angle held in both planes makes one
/// that counts: it can roll, and nothing in the perfect strut tells it to. Only a run with a disturbance tells the two apart.
/// </summary>
/// <param name="Load">N at which the unstable mode appears, N.</param>
/// <param name="PeakLoad">
/// Peak load with a small disturbance, N: side loads in the shape of the mode like those from a bow of L/10000, to either side; the lower peak counts.
/// </param>
public sealed record PathBranch(double Load, double PeakLoad)
{
    /// <summary>Amplitude of the disturbance as a part of the length: a tenth of the usual bow.</summary>
    public const double Disturbance = ReferenceStrut.UsualBowRatio / 10;

    /// <summary>
    /// A branch counts if the disturbance takes more than this share off the peak. Side loads of that size take off up to 0.2 % where there is no branch;
    /// on 840 paths plastic ends came to 0.6 % (two to 1.1 %), thin angles held in both planes to 1.3 to 8 %.
    /// </summary>
    public const double Limit = 0.01;
}
