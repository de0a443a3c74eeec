namespace StrutLessons.Plates;

/// <summary>Lowest load factor λ at which (K − λG)φ = 0, with its mode.</summary>
/// <param name="Factor">The load factor.</param>
/// <param name="Mode">The mode on the equations, largest entry of any size.</param>
/// <param name="Iterations">Steps taken.</param>
internal sealed record BucklingMode(double Factor, double[] Mode, int Iterations);
