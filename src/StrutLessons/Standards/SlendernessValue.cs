namespace StrutLessons.Standards;

/// <summary>A slenderness that a rule uses.</summary>
/// <param name="Name">Which one, in words.</param>
/// <param name="Symbol">TeX symbol of the standard.</param>
/// <param name="Value">A ratio L/r or a relative slenderness, as the standard has it.</param>
public sealed record SlendernessValue(string Name, string Symbol, double Value);
