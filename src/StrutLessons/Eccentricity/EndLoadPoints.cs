namespace StrutLessons.Eccentricity;

/// <summary>The load points of the two ends of a strut.</summary>
/// <param name="End1">At x = 0.</param>
/// <param name="End2">At x = L.</param>
public sealed record EndLoadPoints(LoadPoint End1, LoadPoint End2);
