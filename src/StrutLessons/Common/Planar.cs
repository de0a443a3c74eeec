namespace StrutLessons;

/// <summary>
/// A vector in the plane of the section: y along the connected leg from heel to toe, z towards the gusset.
/// Used for positions (mm), displacements (mm), slopes (rad) and first moments of stress (N mm); never for rotation vectors.
/// </summary>
/// <param name="Y">Component along the connected leg.</param>
/// <param name="Z">Component towards the gusset.</param>
public readonly record struct Planar(double Y, double Z)
{
    /// <summary>The zero vector.</summary>
    public static Planar Zero => default;

    /// <summary>Length of the vector.</summary>
    public double Length => Math.Sqrt(Y * Y + Z * Z);

    /// <summary>Scalar product.</summary>
    public double Dot(Planar other) => Y * other.Y + Z * other.Z;

    /// <summary>Sum.</summary>
    public static Planar operator +(Planar a, Planar b) => new(a.Y + b.Y, a.Z + b.Z);

    /// <summary>Difference.</summary>
    public static Planar operator -(Planar a, Planar b) => new(a.Y - b.Y, a.Z - b.Z);

    /// <summary>Opposite vector.</summary>
    public static Planar operator -(Planar a) => new(-a.Y, -a.Z);

    /// <summary>Multiple.</summary>
    public static Planar operator *(double factor, Planar a) => new(factor * a.Y, factor * a.Z);
}
