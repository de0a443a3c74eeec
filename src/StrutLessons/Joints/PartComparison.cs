namespace StrutLessons.Joints;

/// <summary>One part of a joint by hand and by plate analysis.</summary>
/// <param name="Name">The part.</param>
/// <param name="Hand">By hand.</param>
/// <param name="Plate">By plate analysis.</param>
public sealed record PartComparison(string Name, JointContribution Hand, JointContribution Plate)
{
    /// <summary>Stiffness by hand over stiffness by plates, f_plate/f_hand: above 1 the hand formula is too stiff.</summary>
    public double StiffnessRatio => Plate.Compliance / Hand.Compliance;
}
