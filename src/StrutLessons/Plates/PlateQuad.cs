namespace StrutLessons.Plates;

/// <summary>Four corner numbers of a quadrilateral, counter-clockwise.</summary>
/// <param name="A">First corner.</param>
/// <param name="B">Second corner.</param>
/// <param name="C">Third corner.</param>
/// <param name="D">Fourth corner.</param>
public readonly record struct PlateQuad(int A, int B, int C, int D);
