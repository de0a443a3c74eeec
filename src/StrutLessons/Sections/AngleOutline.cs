namespace StrutLessons.Sections;

/// <summary>The exact boundary of an angle: six straight lines of the legs, two toe arcs and the root fillet.</summary>
internal static class AngleOutline
{
    /// <summary>Moments about the heel axes: Y along the connected leg, Z along the outstanding leg.</summary>
    internal static AreaMoments Moments(AngleSection section)
    {
        AreaMoments sum = default;
        foreach (OutlinePiece piece in Pieces(section))
        {
            sum += piece.Moments();
        }

        return sum;
    }

    /// <summary>The pieces counter-clockwise from the heel.</summary>
    internal static IEnumerable<OutlinePiece> Pieces(AngleSection section)
    {
        double bc = section.ConnectedLength, bo = section.OutstandingLength;
        double t = section.Angle.Thickness, r1 = section.Angle.RootRadius, r2 = section.Angle.ToeRadius;
        yield return new LinePiece(0, 0, bc, 0);
        yield return new LinePiece(bc, 0, bc, t - r2);
        yield return new ArcPiece(bc - r2, t - r2, r2, 0, Math.PI / 2);
        yield return new LinePiece(bc - r2, t, t + r1, t);
        yield return new ArcPiece(t + r1, t + r1, r1, -Math.PI / 2, -Math.PI);
        yield return new LinePiece(t, t + r1, t, bo - r2);
        yield return new ArcPiece(t - r2, bo - r2, r2, 0, Math.PI / 2);
        yield return new LinePiece(t - r2, bo, 0, bo);
        yield return new LinePiece(0, bo, 0, 0);
    }
}
