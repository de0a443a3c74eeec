namespace StrutLessons.Plates;

/// <summary>How fine a mesh is. Two meshes of one fineness are nested, the coarse one with elements of twice the size.</summary>
/// <param name="Fineness">Parts of the fine mesh per reach, next to a singular point.</param>
/// <param name="IsFine">Which of the two meshes.</param>
internal readonly record struct MeshDensity(int Fineness, bool IsFine);
