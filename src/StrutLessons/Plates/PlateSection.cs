namespace StrutLessons.Plates;

/// <summary>What an element needs to know of its plate.</summary>
/// <param name="Rigidity">D = E t³/[12(1−ν²)], N mm.</param>
/// <param name="Poisson">Poisson's ratio ν.</param>
/// <param name="Stretch">E·t, N/mm.</param>
internal readonly record struct PlateSection(double Rigidity, double Poisson, double Stretch)
{
    /// <summary>The section of a plate of the given thickness.</summary>
    internal static PlateSection Of(PlateMaterial material, double thickness) =>
        new(material.Rigidity(thickness), material.PoissonRatio, material.YoungsModulus * thickness);
}
