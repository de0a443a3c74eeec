namespace StrutLessons.Eccentricity;

/// <summary>One line of bolts along the connected leg. Immutable; lengths in mm.</summary>
public sealed record BoltLine
{
    /// <summary>A line of bolts.</summary>
    /// <param name="gauge">Distance g of the bolt line from the heel along the connected leg, mm. Gauges differ between countries: state it.</param>
    /// <param name="count">Number of bolts, 1 to 12.</param>
    /// <param name="diameter">Bolt diameter d, mm, between 6 and 64: 20 for M20.</param>
    /// <param name="pitch">Distance p₁ between neighbouring bolts, mm; at least 2.2 d₀. Without meaning for one bolt.</param>
    /// <param name="endDistance">Distance e₁ from the end of the angle to the first hole's centre, mm; at least 1.2 d₀.</param>
    /// <exception cref="InputException">
    /// A number outside its range. The least distances are those of EN 1993-1-8:2005 Table 3.3 (from memory).
    /// </exception>
    public BoltLine(double gauge, int count, double diameter, double pitch, double endDistance)
    {
        Gauge = Guard.Positive(gauge, "gauge", "mm", "Measure it from the heel along the connected leg to the bolt line.");
        Count = Guard.Within(count, 1, 12, "number of bolts", "Give the bolts of one end, in one line.");
        Diameter = Guard.Within(diameter, 6, 64, "bolt diameter d", "mm", "Give the shank in mm, for example 20 for M20.");
        if (count > 1 && !(double.IsFinite(pitch) && pitch >= 2.2 * HoleDiameter))
        {
            throw Guard.Fail(pitch, "pitch p1", "mm",
                $"at least 2.2 d0 = {Guard.Text(2.2 * HoleDiameter)} mm (EN 1993-1-8:2005 Table 3.3, from memory)",
                "Move the bolts apart or take smaller ones.");
        }

        if (!(double.IsFinite(endDistance) && endDistance >= 1.2 * HoleDiameter))
        {
            throw Guard.Fail(endDistance, "end distance e1", "mm",
                $"at least 1.2 d0 = {Guard.Text(1.2 * HoleDiameter)} mm (EN 1993-1-8:2005 Table 3.3, from memory)",
                "Let the angle run further past the hole or take smaller bolts.");
        }

        Pitch = count > 1 ? pitch : 0;
        EndDistance = endDistance;
    }

    /// <summary>Distance of the bolt line from the heel, mm.</summary>
    public double Gauge { get; }

    /// <summary>Number of bolts n.</summary>
    public int Count { get; }

    /// <summary>Bolt diameter d, mm.</summary>
    public double Diameter { get; }

    /// <summary>Pitch p₁, mm; 0 for one bolt.</summary>
    public double Pitch { get; }

    /// <summary>End distance e₁ of the angle, mm.</summary>
    public double EndDistance { get; }

    /// <summary>
    /// Hole diameter d₀, mm: d + 1 up to M14, d + 2 up to M24, d + 3 beyond. Source: normal round holes of EN 1090-2, Table 11 (from memory).
    /// </summary>
    public double HoleDiameter => Diameter + Diameter switch { <= 14 => 1, <= 24 => 2, _ => 3 };

    /// <summary>Length of the bolt group L_b = (n − 1) p₁, mm: 0 for one bolt.</summary>
    public double BoltGroupLength => (Count - 1) * Pitch;

    /// <summary>For example <c>2 M20, gauge 45, pitch 60</c>.</summary>
    public override string ToString() =>
        $"{Count} M{Guard.Text(Diameter)}, gauge {Guard.Text(Gauge)}" + (Count > 1 ? $", pitch {Guard.Text(Pitch)}" : "");
}
