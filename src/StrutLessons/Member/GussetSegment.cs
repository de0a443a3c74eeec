using StrutLessons.Joints;

namespace StrutLessons.Member;

/// <summary>
/// A gusset as a real flexible segment between its support and the first bolt: a strip of length g and bending stiffness EI, clamped at
/// the weld. The check model for the spring that stands for it. Immutable.
/// </summary>
public sealed record GussetSegment
{
    /// <summary>A segment.</summary>
    /// <param name="length">Free length g from the support to the first bolt, mm.</param>
    /// <param name="bendingStiffness">E I out of the plane of the gusset, N mm²; D b_eff for a plate.</param>
    /// <exception cref="InputException">Not positive.</exception>
    public GussetSegment(double length, double bendingStiffness)
    {
        Length = Guard.Positive(length, "free length g", "mm", "Measure along the strut from the support to the first bolt.");
        BendingStiffness = Guard.Positive(bendingStiffness, "bending stiffness of the gusset", "N mm²", "Give D times the effective width, the spring stiffness times the length.");
    }

    /// <summary>g, mm.</summary>
    public double Length { get; }

    /// <summary>E I, N mm².</summary>
    public double BendingStiffness { get; }

    /// <summary>c = E I/g: moment over rotation of the first bolt under a pure moment, N mm/rad.</summary>
    public double SpringStiffness => BendingStiffness / Length;

    /// <summary>Load at which the segment alone buckles with its end free, π² E I/(4 g²), N.</summary>
    public double FreeBucklingLoad => Math.PI * Math.PI * BendingStiffness / (4 * Length * Length);

    /// <summary>The spring that stands for the segment: c = E I/g at half the length, 1/k_t = g³/(12 E I).</summary>
    public JointHinge Hinge => JointHinge.InSeries(
        [new("gusset", 1 / SpringStiffness, Length / 2, "strip, one end clamped", Math.Pow(Length, 3) / (12 * BendingStiffness))], 2);

    /// <summary>The strip whose pure-moment stiffness is that of the hand formula; an inclined gusset counts with the length g sin α.</summary>
    /// <param name="gusset">The gusset by hand formula.</param>
    public static GussetSegment Of(GussetFormula gusset)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        double length = gusset.Gusset.FreeLength * (gusset.Gusset.IsSquare ? 1 : Math.Sin(gusset.Gusset.Inclination));
        return new(length, gusset.Stiffness * length);
    }

    /// <summary>
    /// What is left of the spring under a compression, the end free to move: c(N) = c x cot x with x = g √(N/EI). For show only, see
    /// <see cref="GussetSoftening"/>.
    /// </summary>
    /// <param name="load">N, N, 0 up to the buckling load of the segment alone.</param>
    /// <exception cref="InputException">Outside that range.</exception>
    public double StiffnessUnder(double load) =>
        Softened(Guard.Within(load, 0, FreeBucklingLoad, "compression N", "N", "The gusset alone buckles at the upper limit."));

    /// <summary>As <see cref="StiffnessUnder"/>, beyond the buckling load too, where it is negative.</summary>
    internal double Softened(double load)
    {
        double x = Length * Math.Sqrt(load / BendingStiffness);
        return SpringStiffness * (x < 1e-3 ? 1 - x * x / 3 : x / Math.Tan(x));
    }
}
