using StrutLessons.Materials;
using StrutLessons.Sections;

namespace StrutLessons.Standards;

/// <summary>
/// A strut as the rules of design standards see it: a single angle, loaded through the same leg at both ends, without loads between
/// the ends. No rule asks for the gusset. Immutable.
/// </summary>
public sealed record StandardStrut
{
    /// <summary>A strut with properties from the geometry.</summary>
    /// <param name="section">The angle with its connected leg.</param>
    /// <param name="steel">The steel; each rule takes the yield strength from it and uses an elastic modulus of its own.</param>
    /// <param name="length">System length between the working points at the two ends, mm; the same for all axes.</param>
    /// <param name="boltsPerEnd">Bolts at each end in the line of force; 0 for a welded end.</param>
    /// <exception cref="InputException">A length shorter than the leg or longer than 100 m, or an impossible number of bolts.</exception>
    public StandardStrut(AngleSection section, Steel steel, double length, int boltsPerEnd = 2)
        : this(StandardSection.Of(section), steel, length, boltsPerEnd)
    {
    }

    /// <summary>A strut with properties chosen by the caller, for example from a printed table.</summary>
    /// <param name="section">The section's properties.</param>
    /// <param name="steel">The steel.</param>
    /// <param name="length">System length, mm.</param>
    /// <param name="boltsPerEnd">Bolts at each end in the line of force; 0 for a welded end.</param>
    /// <exception cref="InputException">As the other constructor.</exception>
    public StandardStrut(StandardSection section, Steel steel, double length, int boltsPerEnd = 2)
    {
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(steel);
        Section = section;
        Steel = steel;
        Length = Guard.Within(length, section.LongLeg, 100_000, "system length", "mm",
            "Give the length between the working points in mm; it is longer than the leg is wide.");
        BoltsPerEnd = Guard.Within(boltsPerEnd, 0, 20, "bolts per end", "Count the bolts of one end; give 0 for a weld.");
    }

    /// <summary>The section.</summary>
    public StandardSection Section { get; }

    /// <summary>The steel.</summary>
    public Steel Steel { get; }

    /// <summary>System length, mm.</summary>
    public double Length { get; }

    /// <summary>Bolts at each end; 0 for a weld.</summary>
    public int BoltsPerEnd { get; }

    /// <summary>True if a single bolt holds each end.</summary>
    public bool OneBolt => BoltsPerEnd == 1;

    /// <summary>Yield strength f_y, MPa.</summary>
    public double YieldStrength => Steel.YieldStrength;

    /// <summary>A f_y, N.</summary>
    public double SquashLoad => Section.Area * Steel.YieldStrength;

    internal string Fasteners => BoltsPerEnd switch { 0 => "a weld", 1 => "one bolt", _ => $"{BoltsPerEnd} bolts" };

    /// <summary>The same strut at another length.</summary>
    /// <exception cref="InputException">The length is out of range.</exception>
    public StandardStrut WithLength(double length) => new(Section, Steel, length, BoltsPerEnd);
}
