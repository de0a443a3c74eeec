namespace StrutLessons.Joints;

/// <summary>One way in which a pair of flanges turns: a torsion bar K on a foundation k.</summary>
/// <param name="Foundation">k, N mm per rad and mm of length.</param>
/// <param name="Torsion">K, N mm².</param>
public readonly record struct FlangeMode(double Foundation, double Torsion)
{
    /// <summary>λ = √(K/k), mm: the rotation falls by the factor e over this length.</summary>
    public double Reach => Math.Sqrt(Torsion / Foundation);

    /// <summary>Rotation per moment of a rigid foot, 1/[k (b + 2λ)], rad/(N mm).</summary>
    public double RigidFoot(double footLength) => 1 / (Foundation * (footLength + 2 * Reach));

    /// <summary>Mean rotation per moment spread evenly over the foot, (1/k b) [1 − (λ/b)(1 − e^(−b/λ))], rad/(N mm).</summary>
    public double UniformMoment(double footLength)
    {
        double ratio = footLength / Reach;
        return (1 + double.ExpM1(-ratio) / ratio) / (Foundation * footLength);
    }
}
