namespace StrutLessons.Plates;

/// <summary>
/// Three stretches in a row, before, over and after the rigid patch. The curvature of the plate is singular at the corners of the
/// patch, so the parts grow with the distance x from its edges: size = (λ/fineness)·(1 + x/λ), λ half the shortest free strip or half the patch width.
/// </summary>
internal sealed class Division
{
    private readonly Stretch _before, _patch, _after;

    private Division(double start, double before, double patch, double after, GussetPlate plate, MeshDensity density, Finer first, Finer last)
    {
        // Next to an inclined support the strip below the corner of the patch is the shortest, and the stiffest.
        double corner = (plate.FreeLength - plate.PatchWidth / 2 * plate.Cotangent) * Math.Sin(plate.Angle);
        double reach = 0.5 * Math.Min(corner, plate.PatchWidth);
        Start = start;
        _before = new(before, reach, density, first);
        _patch = new(patch, reach, density, Finer.Both);
        _after = new(after, reach, density, last);
    }

    private double Start { get; }

    /// <summary>Number of parts.</summary>
    internal int Count => _before.Parts + _patch.Parts + _after.Parts;

    /// <summary>Line where the patch begins.</summary>
    internal int PatchFrom => _before.Parts;

    /// <summary>Line where the patch ends.</summary>
    internal int PatchTo => _before.Parts + _patch.Parts;

    /// <summary>Position of a line.</summary>
    internal double this[int line]
    {
        get
        {
            double a = Start, b = a + _before.Length, c = b + _patch.Length;
            var (from, to, part) = Locate(line, a, b, c, c + _after.Length);
            return from + (to - from) * part;
        }
    }

    /// <summary>Columns across the strut; the edge that comes close to an inclined support is refined like a patch edge.</summary>
    internal static Division Across(GussetPlate plate, MeshDensity density)
    {
        double half = plate.PatchWidth / 2;
        var nearEdge = plate.Cotangent > 0 ? Finer.Both : Finer.AtStart;
        return new(-plate.Left, plate.Left - half, plate.PatchWidth, plate.Right - half, plate, density, Finer.AtEnd, nearEdge);
    }

    /// <summary>Rows along the strut; the support is refined like a patch edge.</summary>
    internal static Division Along(GussetPlate plate, MeshDensity density) =>
        new(0, plate.FreeLength, plate.GroupLength, plate.EndDistance, plate, density, Finer.Both, Finer.AtStart);

    /// <summary>True for a part that belongs to the patch.</summary>
    internal bool InPatch(int part) => part >= PatchFrom && part < PatchTo;

    /// <summary>The stretch of a line when the stretches end at the given positions, and its place within the stretch.</summary>
    internal (double From, double To, double Part) Locate(int line, double a, double b, double c, double d) =>
        line < PatchFrom ? (a, b, _before[line])
        : line < PatchTo ? (b, c, _patch[line - PatchFrom])
        : (c, d, _after[line - PatchTo]);
}
