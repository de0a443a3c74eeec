namespace StrutLessons.Calibration;

/// <summary>Whether the coefficient of variation is known beforehand.</summary>
public enum VariationKnowledge
{
    /// <summary>V known: from prior experience.</summary>
    Known,

    /// <summary>V unknown: estimated from the tests alone.</summary>
    Unknown,
}

/// <summary>
/// Fractile factors of EN 1990:2002, Annex D, Table D.1 (k_n) and Table D.2 (k_d,n) (from memory; finite n checked against Student's t).
/// The printed numbers are used, never one formula: the finite rows of Table D.2 approach about 3.08, but the column for many tests
/// holds 3.04 = 0.8 · 3.8. Between printed numbers of tests the factor is linear in 1/n; beyond 30 tests the next column is n = ∞.
/// </summary>
public static class AnnexDTable
{
    private static readonly int[] Counts = [1, 2, 3, 4, 5, 6, 8, 10, 20, 30];
    private static readonly double[] CharacteristicKnown = [2.31, 2.01, 1.89, 1.83, 1.80, 1.77, 1.74, 1.72, 1.68, 1.67, CharacteristicMany];
    private static readonly double[] CharacteristicUnknown = [3.37, 2.63, 2.33, 2.18, 2.00, 1.92, 1.76, 1.73, CharacteristicMany];
    private static readonly double[] DesignKnown = [4.36, 3.77, 3.56, 3.44, 3.37, 3.33, 3.27, 3.23, 3.16, 3.13, DesignMany];
    private static readonly double[] DesignUnknown = [11.40, 7.85, 6.36, 5.07, 4.51, 3.64, 3.44, DesignMany];

    /// <summary>k_∞ = 1.64 (5 % fractile).</summary>
    public const double CharacteristicMany = 1.64;

    /// <summary>k_d,∞ = 3.04.</summary>
    public const double DesignMany = 3.04;

    /// <summary>k_n for the characteristic value (5 % fractile), Table D.1.</summary>
    /// <param name="count">n, number of tests.</param>
    /// <param name="knowledge">Row of the table.</param>
    /// <exception cref="InputException">The table has no value: fewer than 1 test (V known) or 3 tests (V unknown).</exception>
    public static double Characteristic(int count, VariationKnowledge knowledge) =>
        Read(count, Guard.Named(knowledge, "knowledge of the variation") == VariationKnowledge.Known ? CharacteristicKnown : CharacteristicUnknown);

    /// <summary>k_d,n for the design value, Table D.2.</summary>
    /// <param name="count">n, number of tests.</param>
    /// <param name="knowledge">Row of the table.</param>
    /// <exception cref="InputException">The table has no value: fewer than 1 test (V known) or 4 tests (V unknown).</exception>
    public static double Design(int count, VariationKnowledge knowledge) =>
        Read(count, Guard.Named(knowledge, "knowledge of the variation") == VariationKnowledge.Known ? DesignKnown : DesignUnknown);

    /// <summary>A row ends at n = ∞ and may begin later than n = 1.</summary>
    private static double Read(int count, double[] row)
    {
        int skipped = Counts.Length + 1 - row.Length, least = Counts[skipped];
        if (count < least)
        {
            throw Guard.Fail(count, "number of tests n", "", $"{least} or more", "The table has no value for fewer tests: test more, or show that V is known.");
        }

        int i = Array.FindLastIndex(Counts, c => c <= count);
        double low = row[i - skipped], high = row[i + 1 - skipped], from = 1.0 / Counts[i], to = i + 1 < Counts.Length ? 1.0 / Counts[i + 1] : 0;
        return low + (high - low) * ((from - 1.0 / count) / (from - to));
    }
}
