namespace StrutLessons.Joints;

/// <summary>
/// One part of a joint in series with the others: how far it lets the strut turn, and about which point. Immutable.
/// </summary>
public sealed record JointContribution
{
    /// <summary>A part of a joint.</summary>
    /// <param name="name">What turns, for example <c>gusset</c>.</param>
    /// <param name="compliance">Rotation of the strut's end per moment, f, rad/(N mm); 0 for a rigid part.</param>
    /// <param name="hingeDistance">From the first bolt back to the point about which this part turns, d, mm.</param>
    /// <param name="source">Formula or analysis it comes from.</param>
    /// <param name="transverseCompliance">
    /// Deflection across the gusset at that point per force across it, mm/N, beyond what the rotation makes; 0 if not known.
    /// </param>
    /// <exception cref="InputException">A negative, NaN or infinite number, or no name.</exception>
    public JointContribution(string name, double compliance, double hingeDistance, string source, double transverseCompliance = 0)
    {
        if (string.IsNullOrWhiteSpace(name))
        {
            throw new InputException("name", "''", "a name", "Name the part of the joint, for example 'gusset'.");
        }

        Name = name;
        Compliance = Guard.NotNegative(compliance, "compliance f", "rad/(N mm)", "Give rotation per moment, the inverse of a stiffness; 0 for a rigid part.");
        HingeDistance = Guard.NotNegative(hingeDistance, "hinge distance d", "mm", "Measure from the first bolt back towards the support.");
        TransverseCompliance = Guard.NotNegative(transverseCompliance, "transverse compliance", "mm/N", "Give 0 if it is not known.");
        Source = source;
    }

    /// <summary>What turns.</summary>
    public string Name { get; }

    /// <summary>f, rad/(N mm).</summary>
    public double Compliance { get; }

    /// <summary>d, mm from the first bolt.</summary>
    public double HingeDistance { get; }

    /// <summary>Formula or analysis it comes from.</summary>
    public string Source { get; }

    /// <summary>Deflection at the hinge per force across the gusset, mm/N.</summary>
    public double TransverseCompliance { get; }
}
