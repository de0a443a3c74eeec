using StrutLessons.Capacity;
using StrutLessons.Member;
using StrutLessons.Nonlinear;

namespace StrutLessons.Calibration;

/// <summary>Which elastic model is compared with the reference.</summary>
public enum ElasticModel
{
    /// <summary>First yield with the roll held at zero (<see cref="StrutCapacity"/>).</summary>
    Plane,

    /// <summary>First yield with roll (<see cref="RollAnalysis"/>).</summary>
    WithRoll,
}

/// <summary>One strut of a grid: the reference and both elastic models. Each is the lowest over its bows.</summary>
/// <param name="Index">Place of the strut in the list given.</param>
/// <param name="Strut">The strut with the bows of the elastic models.</param>
/// <param name="CriticalLoad">N_cr without roll, with the springs, N.</param>
/// <param name="Reference">N_u, peak of the reference, N; where a branch lowers it, the lower peak.</param>
/// <param name="Plane">N_R of the plane model, N.</param>
/// <param name="WithRoll">N_R of the model with roll, N.</param>
/// <param name="RollAtPeak">Largest roll of the governing reference at its peak, rad.</param>
/// <param name="StableToPeak">
/// False if a branch leaves the reference's path before its peak and takes more than 1 % off it; see <see cref="Nonlinear.PathBranch"/>.
/// </param>
public sealed record RatioCase(
    int Index, Strut Strut, double CriticalLoad, double Reference, double Plane, double WithRoll, double RollAtPeak, bool StableToPeak)
{
    /// <summary>λ̄_v on the system length.</summary>
    public double Slenderness => Strut.RelativeSlendernessV;

    /// <summary>Capacity of an elastic model, N.</summary>
    /// <exception cref="InputException">A model without a name.</exception>
    public double Capacity(ElasticModel model) => Guard.Named(model, "elastic model") == ElasticModel.Plane ? Plane : WithRoll;

    /// <summary>Reference over elastic model; below 1 the model is unsafe.</summary>
    /// <exception cref="InputException">A model without a name.</exception>
    public double Ratio(ElasticModel model) => Reference / Capacity(model);

    /// <summary>x = N_R/N_cr of an elastic model.</summary>
    /// <exception cref="InputException">A model without a name.</exception>
    public double LoadRatio(ElasticModel model) => Capacity(model) / CriticalLoad;
}

/// <summary>A strut of a grid for which no ratio exists.</summary>
/// <param name="Index">Place of the strut in the list given.</param>
/// <param name="Strut">The strut.</param>
/// <param name="Reason">Why, in words.</param>
public sealed record RatioFailure(int Index, Strut Strut, string Reason);
