namespace StrutLessons.Nonlinear;

/// <summary>The rod at one place.</summary>
/// <param name="X">Distance from end 1 along the unloaded strut, mm.</param>
/// <param name="Strain">Strain measures, initial values taken off.</param>
/// <param name="ShearCentre">Displacement of the shear centre from the bowed shape, mm.</param>
/// <param name="Centroid">Displacement of the centroid from the bowed shape, mm.</param>
/// <param name="Roll">Roll, rad, positive from y towards z.</param>
internal readonly record struct RodPlace(double X, StrainMeasures Strain, Planar ShearCentre, Planar Centroid, double Roll);
