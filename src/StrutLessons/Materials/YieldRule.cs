namespace StrutLessons.Materials;

/// <summary>Which table gives the yield strength of a grade for a thickness.</summary>
public enum YieldRule
{
    /// <summary>EN 10025-2, minimum yield strength R_eH by thickness: the value falls in steps from 16 mm on (from memory).</summary>
    En10025Part2,

    /// <summary>EN 1993-1-1:2005 Table 3.1: one value up to 40 mm, one up to 80 mm (from memory).</summary>
    En1993Table3Point1,
}
