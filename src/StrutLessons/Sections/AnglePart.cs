namespace StrutLessons.Sections;

/// <summary>
/// One piece of an angle for a calculation by hand: two rectangles, the root fillet, and the two rounded toes (negative areas).
/// Together they are exactly the rolled shape. Distances from the heel; mm, mm², mm⁴.
/// </summary>
/// <param name="Name">What the piece is.</param>
/// <param name="Area">Area; negative where something is cut away.</param>
/// <param name="Y">Its centroid from the heel along the connected leg.</param>
/// <param name="Z">Its centroid from the outer face of the connected leg.</param>
/// <param name="OwnY">Own second moment about the axis through its centroid parallel to the connected leg.</param>
/// <param name="OwnZ">Own second moment about the axis through its centroid perpendicular to the connected leg.</param>
/// <param name="OwnYZ">Own product of inertia in the directions of Y and Z.</param>
public readonly record struct AnglePart(string Name, double Area, double Y, double Z, double OwnY, double OwnZ, double OwnYZ)
{
    /// <summary>The five pieces of a section.</summary>
    public static IReadOnlyList<AnglePart> Of(AngleSection section)
    {
        ArgumentNullException.ThrowIfNull(section);
        double bc = section.ConnectedLength, rest = section.OutstandingLength - section.Thickness, t = section.Thickness;
        double r1 = section.Angle.RootRadius, r2 = section.Angle.ToeRadius;
        return
        [
            Rectangle("connected leg", bc, t, bc / 2, t / 2),
            Rectangle("outstanding leg", t, rest, t / 2, t + rest / 2),
            Fillet("root fillet", 1, r1, t + RootFillet.Centroid * r1, t + RootFillet.Centroid * r1),
            Fillet("toe of the connected leg, rounded off", -1, r2, bc - RootFillet.Centroid * r2, t - RootFillet.Centroid * r2),
            Fillet("toe of the outstanding leg, rounded off", -1, r2, t - RootFillet.Centroid * r2, section.OutstandingLength - RootFillet.Centroid * r2),
        ];
    }

    private static AnglePart Rectangle(string name, double width, double height, double y, double z) =>
        new(name, width * height, y, z, width * Math.Pow(height, 3) / 12, height * Math.Pow(width, 3) / 12, 0);

    private static AnglePart Fillet(string name, int sign, double r, double y, double z)
    {
        double r4 = Math.Pow(r, 4);
        return new(name, sign * RootFillet.Area * r * r, y, z, sign * RootFillet.OwnMoment * r4, sign * RootFillet.OwnMoment * r4, sign * RootFillet.OwnProduct * r4);
    }
}
