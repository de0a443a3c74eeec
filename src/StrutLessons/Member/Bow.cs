using StrutLessons.Sections;

namespace StrutLessons.Member;

/// <summary>
/// A stress-free initial bow d₀(x) = e₀ sin(πx/L) n between the bolts, with the unit vector n in the plane of the section.
/// </summary>
/// <remarks>A bow along u is bending about v–v; its positive sign moves the middle of the strut to the heel side.</remarks>
public sealed record Bow
{
    private Bow(string name, double amplitude, Planar direction)
    {
        Name = name;
        Amplitude = amplitude;
        Direction = direction;
    }

    /// <summary>Name for reports, for example <c>u+</c>.</summary>
    public string Name { get; }

    /// <summary>e₀ at mid-length, mm, 0 or more.</summary>
    public double Amplitude { get; }

    /// <summary>Unit vector n of the bow, sign included.</summary>
    public Planar Direction { get; }

    /// <summary>A straight strut.</summary>
    public static Bow None { get; } = new("straight", 0, new Planar(1, 0));

    /// <summary>Bow along the major axis u–u: bending about the minor axis v–v.</summary>
    /// <param name="section">The section whose axes are meant.</param>
    /// <param name="amplitude">e₀ in mm, with a sign: positive to the heel side.</param>
    /// <exception cref="InputException">NaN or infinite.</exception>
    public static Bow AlongU(AngleSection section, double amplitude) => Along("u", section.AxisU, amplitude);

    /// <summary>Bow along the minor axis v–v: bending about the major axis u–u.</summary>
    /// <param name="section">The section whose axes are meant.</param>
    /// <param name="amplitude">e₀ in mm, with a sign: positive to the toe of the connected leg.</param>
    /// <exception cref="InputException">NaN or infinite.</exception>
    public static Bow AlongV(AngleSection section, double amplitude) => Along("v", section.AxisV, amplitude);

    /// <summary>Bow in any direction.</summary>
    /// <param name="angleDegrees">Direction from +y towards +z, degrees: 0 in the plane of the gusset, 90 towards the gusset.</param>
    /// <param name="amplitude">e₀ in mm, with a sign.</param>
    /// <exception cref="InputException">NaN or infinite.</exception>
    public static Bow AtAngle(double angleDegrees, double amplitude)
    {
        Guard.Finite(angleDegrees, "bow direction", "degrees", "Give the angle from +y towards +z.");
        double quarters = angleDegrees / 90;
        // Multiples of a right angle are exact, so that a bow in the plane of the gusset has no component out of it.
        Planar direction = quarters == Math.Floor(quarters)
            ? (((int)(quarters % 4) + 4) % 4) switch { 0 => new(1, 0), 1 => new(0, 1), 2 => new(-1, 0), _ => new(0, -1) }
            : new(Math.Cos(angleDegrees * Math.PI / 180), Math.Sin(angleDegrees * Math.PI / 180));
        return Along($"{Guard.Text(angleDegrees)}°", direction, amplitude);
    }

    /// <summary>The same bow with its amplitude multiplied.</summary>
    internal Bow Scaled(double factor) => new(Name, factor * Amplitude, Direction);

    private static Bow Along(string axis, Planar unit, double amplitude)
    {
        Guard.Finite(amplitude, "bow amplitude e0", "mm", "Give the amplitude at mid-length, for example the length divided by 300.");
        return amplitude < 0
            ? new Bow(axis + "−", -amplitude, -unit)
            : new Bow(axis + "+", amplitude, unit);
    }
}

/// <summary>Which bows a capacity is computed for; the lowest capacity governs.</summary>
public enum BowSearch
{
    /// <summary>Along u in both signs: the default. Nearly always within 1 % of the worst direction.</summary>
    BothSigns,

    /// <summary>Along u and along v, in both signs.</summary>
    FourPrincipal,
}
