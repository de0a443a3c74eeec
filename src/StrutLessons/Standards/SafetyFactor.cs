namespace StrutLessons.Standards;

/// <summary>A factor between nominal and design resistance.</summary>
/// <param name="Name">What the standard calls it, in words.</param>
/// <param name="Symbol">TeX symbol.</param>
/// <param name="Value">Its value.</param>
/// <param name="Divides">True if the nominal resistance is divided by it, false if multiplied.</param>
/// <param name="ResultSymbol">TeX symbol of the design resistance.</param>
/// <param name="Source">Clause.</param>
public sealed record SafetyFactor(string Name, string Symbol, double Value, bool Divides, string ResultSymbol, string Source)
{
    internal double Apply(double nominal) => Divides ? nominal / Value : nominal * Value;
}

/// <summary>A design resistance and the factor that made it.</summary>
/// <param name="Factor">The factor.</param>
/// <param name="Resistance">N.</param>
public sealed record DesignValue(SafetyFactor Factor, double Resistance);
