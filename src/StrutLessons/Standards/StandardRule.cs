namespace StrutLessons.Standards;

/// <summary>Which rule of which standard.</summary>
/// <param name="Name">Short name for tables and charts.</param>
/// <param name="Standard">The standard.</param>
/// <param name="Edition">Its edition.</param>
/// <param name="Clause">Clause, annex or table.</param>
/// <param name="ElasticModulus">The standard's own E, MPa.</param>
/// <param name="NominalSymbol">TeX symbol of the nominal resistance.</param>
/// <param name="FromMemory">True if neither the text nor a digest of it was at hand: to be shown with that mark, never to be relied on.</param>
public sealed record StandardRule(
    string Name, string Standard, string Edition, string Clause, double ElasticModulus, string NominalSymbol, bool FromMemory = false)
{
    /// <summary>Standard, edition and clause in one line, with the mark "from memory" where it applies.</summary>
    public string Citation => $"{Standard}:{Edition}, {Clause}{(FromMemory ? " (from memory)" : "")}";
}
