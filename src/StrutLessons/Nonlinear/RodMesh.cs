namespace StrutLessons.Nonlinear;

/// <summary>How finely the rod is divided. Every cell of the section holds 2 × 2 Gauss points (fibres).</summary>
/// <param name="Elements">Elements along the strut; even, so that mid-length is a node.</param>
/// <param name="Stations">Gauss sections per element. Two leave motions without energy, so three is the least.</param>
/// <param name="CellsAlong">Cells along each leg (the longer side of a rectangle).</param>
/// <param name="CellsThrough">Cells through the thickness (the shorter side of a rectangle).</param>
/// <exception cref="InputException">A count is outside its range.</exception>
public sealed record RodMesh(int Elements, int Stations, int CellsAlong, int CellsThrough)
{
    /// <summary>8 elements, 12 × 1 cells: peak load within about 0.1 % (typically 0.02 %), for grids of many struts.</summary>
    public static RodMesh Fast { get; } = new(8, 4, 12, 1);

    /// <summary>16 elements, 12 × 2 cells: peak load within about 0.03 % (typically 0.005 %).</summary>
    public static RodMesh Standard { get; } = new(16, 4, 12, 2);

    /// <summary>Elements along the strut.</summary>
    public int Elements { get; } = Elements % 2 == 0
        ? Guard.Within(Elements, 2, 400, "elements", "8 to 64 are enough.")
        : throw new InputException("elements", $"{Elements}", "even", "Mid-length must be a node.");

    /// <summary>Gauss sections per element.</summary>
    public int Stations { get; } = Guard.Within(Stations, 3, 8, "stations per element", "4 is the usual choice.");

    /// <summary>Cells along each leg.</summary>
    public int CellsAlong { get; } = Guard.Within(CellsAlong, 1, 400, "cells along the leg", "8 to 32 are enough.");

    /// <summary>Cells through the thickness.</summary>
    public int CellsThrough { get; } = Guard.Within(CellsThrough, 1, 100, "cells through the thickness", "1 to 4 are enough.");

    /// <summary>The next finer mesh for an error estimate: twice the elements, half as many cells again along the leg, one more through it.</summary>
    internal RodMesh Finer() => new(Math.Min(2 * Elements, 400), Stations, Math.Min(CellsAlong * 3 / 2 + 1, 400), Math.Min(CellsThrough + 1, 100));
}
