namespace StrutLessons.Tests;

/// <summary>The one place for comparing numbers in tests.</summary>
internal static class Closeness
{
    /// <summary>Fails unless |actual − expected| ≤ tolerance · scale; the scale is |expected| unless given.</summary>
    internal static void Relative(double expected, double actual, double tolerance, string what, double? scale = null)
    {
        double allowed = tolerance * (scale ?? Math.Abs(expected));
        Assert.True(Math.Abs(actual - expected) <= allowed,
            $"{what}: expected {expected:G12}, got {actual:G12}, off by {Math.Abs(actual - expected):G3}, allowed {allowed:G3}");
    }
}
