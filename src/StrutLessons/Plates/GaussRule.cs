namespace StrutLessons.Plates;

/// <summary>The 2×2 Gauss rule; all weights are 1.</summary>
internal static class GaussRule
{
    /// <summary>Number of points.</summary>
    internal const int Points = 4;

    private const double At = 0.57735026918962576;

    /// <summary>Local coordinates of a point.</summary>
    internal static (double Xi, double Eta) Point(int index) =>
        ((index & 1) == 0 ? -At : At, (index & 2) == 0 ? -At : At);
}
