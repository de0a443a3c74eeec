using System.Globalization;
using System.Text;

namespace StrutLessons.Sections;

/// <summary>Reads trade designations the way people write them.</summary>
internal static class Designation
{
    /// <summary>
    /// The designation in one spelling: no spaces, lower case, x for every multiplication sign, a point for a decimal comma,
    /// and without the letters in <paramref name="prefix"/> in front.
    /// </summary>
    internal static string Normalise(string designation, string prefix = "")
    {
        var text = new StringBuilder(designation.Length);
        foreach (char c in designation)
        {
            if (char.IsWhiteSpace(c) || c == '_' || c == '-')
            {
                continue;
            }

            text.Append(c switch
            {
                '×' or '*' or '✕' or '⨯' or '·' or '/' or 'х' or 'Х' => 'x', // the last two are Cyrillic letters
                ',' => '.',
                _ => char.ToLowerInvariant(c),
            });
        }

        string result = text.ToString();
        return prefix.Length > 0 && result.StartsWith(prefix, StringComparison.Ordinal) ? result[prefix.Length..] : result;
    }

    /// <summary>The numbers between the multiplication signs, or null if there is anything else.</summary>
    internal static double[]? Numbers(string normalised)
    {
        string[] parts = normalised.Split('x');
        var numbers = new double[parts.Length];
        for (int i = 0; i < parts.Length; i++)
        {
            if (!double.TryParse(parts[i], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out numbers[i]))
            {
                return null;
            }
        }

        return numbers;
    }

    /// <summary>Number of letters to change, insert or leave out to get from one text to the other (Levenshtein distance).</summary>
    internal static int Edits(string a, string b)
    {
        int[] row = [.. Enumerable.Range(0, b.Length + 1)];
        for (int i = 1; i <= a.Length; i++)
        {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= b.Length; j++)
            {
                int change = diagonal + (a[i - 1] == b[j - 1] ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.Min(change, Math.Min(row[j], row[j - 1]) + 1);
            }
        }

        return row[b.Length];
    }
}
