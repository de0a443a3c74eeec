namespace StrutLessons.Member;

/// <summary>
/// How much a compression takes from the moment that the first bolt's rotation calls up: by the gusset as a real strip, by the rigid arm of the
/// hinge model, and by both together. Shows that the arm already makes the softening. Immutable.
/// </summary>
/// <remarks>
/// No force across the gusset. Strip: M/θ = c x cot x ≈ c − N g/3. Hinge at g/2 with a rigid arm: the bolt moves by θ g/2, so
/// M/θ = c − N g/2: at least the strip's own softening, on the safe side. Reducing c as well takes c − (1/3 + 1/2) N g.
/// </remarks>
/// <param name="Gusset">The gusset as a strip.</param>
/// <param name="Load">Compression N, N.</param>
public sealed record GussetSoftening(GussetSegment Gusset, double Load) : IWorked
{
    /// <summary>The gusset under a compression below its own buckling load.</summary>
    /// <param name="gusset">The gusset as a strip.</param>
    /// <param name="load">N, N.</param>
    /// <exception cref="InputException">Negative, or beyond the buckling load of the gusset alone.</exception>
    public static GussetSoftening Of(GussetSegment gusset, double load)
    {
        ArgumentNullException.ThrowIfNull(gusset);
        _ = gusset.StiffnessUnder(load);
        return new(gusset, load);
    }

    /// <summary>M/θ at the first bolt of the strip with its compression, c x cot x, N mm/rad.</summary>
    public double Strip => Gusset.Softened(Load);

    /// <summary>M/θ at the first bolt of a constant spring behind a rigid arm of half the free length, c − N g/2, N mm/rad.</summary>
    public double ByArm => Gusset.SpringStiffness - Load * Gusset.Length / 2;

    /// <summary>The same arm with a spring that is reduced as well, c x cot x − N g/2, N mm/rad: the effect counted twice.</summary>
    public double CountedTwice => Strip - Load * Gusset.Length / 2;

    /// <summary>Without load, the three of them, and what each takes away.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string strip = "cantilever column with a moment at its free end (Timoshenko and Gere, Theory of Elastic Stability, ch. 1, from memory)", arm = "equilibrium of the rigid arm";
        string c = Tex.Number(Gusset.SpringStiffness * 1e-6), n = Tex.Number(Load * 1e-3), g = Tex.Number(Gusset.Length);
        double x = Gusset.Length * Math.Sqrt(Load / Gusset.BendingStiffness);
        return
        [
            new("Spring of the strip without compression", "c", @"\frac{E I}{g}", $@"\frac{{{Tex.Number(Gusset.BendingStiffness * 1e-9)}}}{{{g}}} \cdot 10^3",
                Gusset.SpringStiffness * 1e-6, "kNm/rad", "strip, one end clamped"),
            new("Compression in terms of the strip", "x", @"g \sqrt{\frac{N}{E I}}", $@"{g} \sqrt{{\frac{{{n}}}{{{Tex.Number(Gusset.BendingStiffness * 1e-9)}}}}} \cdot 10^{{-3}}", x, "rad", "definition"),
            new("The strip's own softening", @"c_{strip}", @"c\, x \cot x", "", Strip * 1e-6, "kNm/rad", strip),
            new("The rigid arm alone, constant spring", @"c_{arm}", @"c - N \tfrac{g}{2}", $@"{c} - {n} \cdot \tfrac{{{g}}}{{2}} \cdot 10^{{-3}}", ByArm * 1e-6, "kNm/rad", arm),
            new("Arm and reduced spring: counted twice", @"c_{twice}", @"c\, x \cot x - N \tfrac{g}{2}",
                $@"{Tex.Bracketed(Strip * 1e-6)} - {n} \cdot \tfrac{{{g}}}{{2}} \cdot 10^{{-3}}", CountedTwice * 1e-6, "kNm/rad", arm),
        ];
    }
}
