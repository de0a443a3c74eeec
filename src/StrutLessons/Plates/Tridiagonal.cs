namespace StrutLessons.Plates;

/// <summary>Largest eigenvalue of a small symmetric tridiagonal matrix, and its vector.</summary>
internal static class Tridiagonal
{
    /// <summary>The largest eigenvalue, by halving the Gershgorin interval with a Sturm count.</summary>
    internal static double Largest(List<double> diagonal, List<double> beside)
    {
        double low = double.MaxValue, high = double.MinValue;
        for (int k = 0; k < diagonal.Count; k++)
        {
            double reach = (k > 0 ? beside[k - 1] : 0) + (k < diagonal.Count - 1 ? beside[k] : 0);
            low = Math.Min(low, diagonal[k] - reach);
            high = Math.Max(high, diagonal[k] + reach);
        }

        double margin = 1e-15 * Math.Max(Math.Abs(low), Math.Abs(high));
        while (high - low > margin)
        {
            double middle = 0.5 * (low + high);
            if (middle <= low || middle >= high)
            {
                break;
            }

            if (AllBelow(middle, diagonal, beside))
            {
                high = middle;
            }
            else
            {
                low = middle;
            }
        }

        return 0.5 * (low + high);
    }

    /// <summary>The unit vector of an eigenvalue, from the last row upwards: stable for the largest one, whose vector decays downwards.</summary>
    internal static double[] Vector(List<double> diagonal, List<double> beside, double value)
    {
        int n = diagonal.Count;
        var vector = new double[n];
        vector[n - 1] = 1;
        for (int row = n - 1; row > 0; row--)
        {
            double below = row < n - 1 ? beside[row] * vector[row + 1] : 0;
            vector[row - 1] = ((value - diagonal[row]) * vector[row] - below) / beside[row - 1];
        }

        double length = Math.Sqrt(vector.Sum(entry => entry * entry));
        for (int row = 0; row < n; row++)
        {
            vector[row] /= length;
        }

        return vector;
    }

    private static bool AllBelow(double value, List<double> diagonal, List<double> beside)
    {
        double pivot = 0;
        for (int k = 0; k < diagonal.Count; k++)
        {
            double coupling = k > 0 ? beside[k - 1] * beside[k - 1] / pivot : 0;
            pivot = value - diagonal[k] - coupling;
            if (pivot <= 0)
            {
                return false;
            }
        }

        return true;
    }
}
