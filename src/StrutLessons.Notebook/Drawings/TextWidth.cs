namespace StrutLessons.Notebook.Drawings;

/// <summary>Estimates how wide a text runs, on the wide side: advance widths of a broad sans serif face in thousandths of the size.</summary>
internal static class TextWidth
{
    /// <summary>Height of a line of text above its base line and depth below it, as parts of the size.</summary>
    internal const double Ascent = 0.78, Descent = 0.24;

    internal static double Of(string text, double size)
    {
        double sum = 0;
        foreach (char c in text)
        {
            sum += Advance(c);
        }

        return sum * size / 1000;
    }

    private static int Advance(char c) => c switch
    {
        >= '0' and <= '9' => 636,
        'i' or 'j' or 'l' or '\'' => 278,
        ' ' or '.' or ',' or '·' or '\u00A0' => 318,
        'I' or 'J' => 295,
        '/' or ':' or ';' or '|' or '\\' => 337,
        'f' or 't' or '-' or '(' or ')' or '[' or ']' or '!' or 'r' => 400,
        's' or 'z' or 'c' or 'v' or 'x' or 'y' or 'k' or '°' or '–' => 585,
        'w' or '+' or '−' or '=' or '<' or '>' or '×' or '±' or '≤' or '≥' or '≈' or '→' or 'ω' or '∞' => 838,
        'm' or 'W' or '—' or '…' or '%' or '@' => 990,
        'M' => 863,
        >= 'A' and <= 'Z' => 740,
        '²' or '³' or '⁴' or '″' or '′' => 400,
        '\u2009' => 200,
        '\u0304' or '\u0302' or '\u0303' => 0,
        _ => 640,
    };
}
