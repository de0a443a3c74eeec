namespace StrutLessons.Plates;

/// <summary>
/// A gusset in the axes of the strut: s runs along the strut away from the support, n across it. The gauge line n = 0 meets the
/// support line s = n·cot α at the origin. The connected leg and its bolts hold a rigid patch of the plate.
/// </summary>
/// <param name="Thickness">Plate thickness t, mm.</param>
/// <param name="Left">Distance from the gauge line to the side edge away from the support, mm.</param>
/// <param name="Right">Distance from the gauge line to the side edge that comes closer to the support when α is below 90°, mm.</param>
/// <param name="PatchWidth">Width w of the rigid patch, half on either side of the gauge line, mm.</param>
/// <param name="FreeLength">Free length g from the support to the first bolt on the gauge line, mm.</param>
/// <param name="GroupLength">Length L_b of the bolt group, first to last bolt, mm; 0 for a single bolt.</param>
/// <param name="EndDistance">Plate beyond the last bolt, mm.</param>
/// <param name="Angle">Angle α between strut and support line, rad.</param>
/// <param name="Taper">How far each side opens outwards per mm of free length towards the support; 0 for parallel sides.</param>
public sealed record GussetPlate(
    double Thickness, double Left, double Right, double PatchWidth, double FreeLength, double GroupLength, double EndDistance,
    double Angle = Math.PI / 2, double Taper = 0)
{
    /// <summary>Cotangent of the angle; exactly 0 for a right angle.</summary>
    internal double Cotangent => Math.Abs(Angle - Math.PI / 2) < 1e-12 ? 0 : 1 / Math.Tan(Angle);

    /// <summary>Distance from the origin to the end edge.</summary>
    internal double End => FreeLength + GroupLength + EndDistance;

    /// <summary>Length along the support line, mm.</summary>
    internal double FootLength => (LeftFoot + RightFoot) / Math.Sin(Angle);

    /// <summary>Distance across the strut from the gauge line to the left end of the foot.</summary>
    internal double LeftFoot => (Left + Taper * FreeLength) / (1 - Taper * Cotangent);

    /// <summary>Distance across the strut from the gauge line to the right end of the foot.</summary>
    internal double RightFoot =>
        Right * Cotangent >= FreeLength ? Right : (Right + Taper * FreeLength) / (1 + Taper * Cotangent);

    /// <summary>This gusset, if a plate of its dimensions can exist.</summary>
    /// <exception cref="InputException">A value out of range; the message says which and why.</exception>
    internal GussetPlate Checked()
    {
        Guard.Positive(Thickness, "gusset thickness", "mm", "Give the plate thickness.");
        Guard.Positive(PatchWidth, "patch width", "mm", "Give the width of the connected leg.");
        Guard.Positive(FreeLength, "free length", "mm", "Give the distance from the support to the first bolt.");
        Guard.NotNegative(GroupLength, "bolt group length", "mm", "Give the distance from the first to the last bolt; 0 for one bolt.");
        Guard.NotNegative(EndDistance, "end distance", "mm", "Give the length of plate beyond the last bolt.");
        Guard.NotNegative(Taper, "taper", "", "Give the widening per mm of free length; 0 for parallel sides.");
        Guard.Within(Angle, SmallestAngle, Math.PI / 2, "strut angle", "rad", "Measure the acute angle between strut and support.");
        const string aside = "The leg must lie on the plate: widen the plate or narrow the patch.";
        Guard.Within(Left, PatchWidth / 2, double.MaxValue, "left plate width", "mm", aside);
        Guard.Within(Right, PatchWidth / 2, double.MaxValue, "right plate width", "mm", aside);
        if (GroupLength == 0 && EndDistance == 0)
        {
            throw Guard.Fail(EndDistance, "end distance", "mm", "greater than 0 for a single bolt", "The plate must go on beyond the bolt.");
        }

        Guard.Within(Taper * Cotangent, 0, 0.9, "taper times cotangent of the angle", "", "The far side edge must meet the support: use less taper.");
        double needed = PatchWidth / 2 * Cotangent;
        if (FreeLength <= 1.02 * needed)
        {
            throw Guard.Fail(
                FreeLength, "free length", "mm", $"greater than {Guard.Text(1.02 * needed)} mm",
                "The corner of the leg would run into the inclined support: use a longer free length.");
        }

        if (Right * Cotangent >= 0.98 * End)
        {
            throw Guard.Fail(
                Right, "right plate width", "mm", $"less than {Guard.Text(0.98 * End / Cotangent)} mm",
                "The inclined support would cut off the near side edge: use a narrower or longer plate.");
        }

        return this;
    }

    /// <summary>
    /// The same gusset without strips beside or beyond the patch that are narrower than a thousandth of it: they carry nothing, and
    /// elements so thin would spoil the accuracy.
    /// </summary>
    internal GussetPlate WithoutSlivers()
    {
        double half = PatchWidth / 2, sliver = 1e-3 * PatchWidth;
        return this with
        {
            Left = Left - half < sliver ? half : Left,
            Right = Right - half < sliver ? half : Right,
            GroupLength = GroupLength < sliver ? 0 : GroupLength,
            EndDistance = EndDistance < sliver ? 0 : EndDistance,
        };
    }

    // Below 15° the plate is more strip than gusset and its near corner too sharp for the mesh.
    private const double SmallestAngle = Math.PI / 12;
}
