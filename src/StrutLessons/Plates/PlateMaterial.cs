namespace StrutLessons.Plates;

/// <summary>Isotropic elastic plate material.</summary>
/// <param name="YoungsModulus">Modulus of elasticity E, MPa.</param>
/// <param name="PoissonRatio">Poisson's ratio ν in elastic range.</param>
public sealed record PlateMaterial(double YoungsModulus, double PoissonRatio)
{
    /// <summary>Structural steel: E = 210 000 MPa, ν = 0.3 (EN 1993-1-1, clause 3.2.6).</summary>
    public static PlateMaterial Steel { get; } = new(210_000, 0.3);

    /// <summary>Shear modulus G = E/[2(1+ν)], MPa.</summary>
    public double ShearModulus => YoungsModulus / (2 * (1 + PoissonRatio));

    /// <summary>Plate stiffness per unit width D = E t³/[12(1−ν²)], N mm, for thickness <paramref name="thickness"/> in mm.</summary>
    public double Rigidity(double thickness) =>
        YoungsModulus * thickness * thickness * thickness / (12 * (1 - PoissonRatio * PoissonRatio));

    /// <summary>This material, if its values can be those of a solid.</summary>
    internal PlateMaterial Checked()
    {
        Guard.Positive(YoungsModulus, "Young's modulus", "MPa", "Structural steel has 210000 MPa.");
        Guard.Within(PoissonRatio, 0, 0.49, "Poisson's ratio", "", "Structural steel has 0.3.");
        return this;
    }
}
