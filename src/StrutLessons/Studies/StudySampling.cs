namespace StrutLessons.Studies;

/// <summary>How the cases of a study are chosen.</summary>
public enum StudySampling
{
    /// <summary>Every combination of all values.</summary>
    Grid,

    /// <summary>Independent random draws.</summary>
    Random,

    /// <summary>A low-discrepancy sequence: spreads evenly, so that fewer cases tell as much.</summary>
    LowDiscrepancy,
}

/// <summary>
/// Numbers between 0 and 1 that depend on nothing but key, case and variable: any case can be drawn on its own, on any machine, in any order.
/// </summary>
/// <remarks>
/// Random: the SplitMix64 finaliser of a counter (Steele, Lea and Flood, Fast splittable pseudorandom number generators, 2014; constants from
/// memory). Low discrepancy: Halton's sequence (Halton, 1960), its digits permuted anew for each base and digit by the key, after Owen, A
/// randomized Halton algorithm in R, 2017 (from memory).
/// </remarks>
internal static class StudyDraw
{
    private static readonly int[] Primes = [2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37, 41, 43, 47, 53, 59, 61, 67, 71, 73, 79, 83, 89, 97, 101, 103, 107, 109, 113];

    internal static double Random(ulong key, long index, int variable) =>
        (Mix(Mix(key + 0x9E3779B97F4A7C15UL * (ulong)(variable + 1)) + 0x9E3779B97F4A7C15UL * (ulong)(index + 1)) >> 11) * (1.0 / (1UL << 53));

    internal static double Halton(ulong key, long index, int variable)
    {
        int b = Primes[variable];
        double share = 0, weight = 1.0 / b;
        // Beyond a double's resolution further digits change nothing.
        for (int digit = 0; weight > 1e-16; digit++, weight /= b, index /= b)
        {
            share += weight * Permuted(key, b, digit, (int)(index % b));
        }

        return Math.Min(share, Math.BitDecrement(1.0));
    }

    /// <summary>Where a random permutation of 0 … b − 1 sends a digit (Fisher and Yates' shuffle, keyed).</summary>
    private static int Permuted(ulong key, int b, int digit, int value)
    {
        Span<int> order = stackalloc int[b];
        for (int i = 0; i < b; i++)
        {
            order[i] = i;
        }

        ulong seed = Mix(key ^ Mix((ulong)(1000 * b + digit)));
        for (int i = b - 1; i > 0; i--)
        {
            seed = Mix(seed + 0x9E3779B97F4A7C15UL);
            int j = (int)(seed % (ulong)(i + 1));
            (order[i], order[j]) = (order[j], order[i]);
        }

        return order[value];
    }

    private static ulong Mix(ulong z)
    {
        z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
        return z ^ (z >> 31);
    }
}
