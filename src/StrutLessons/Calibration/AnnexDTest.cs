namespace StrutLessons.Calibration;

/// <summary>One test beside the resistance model, both in the same unit. A numerical reference can stand in for a test.</summary>
/// <param name="Measured">r_e, the resistance found in the test.</param>
/// <param name="Calculated">r_t, the resistance of the model with the measured properties of the specimen.</param>
/// <exception cref="InputException">A resistance is not positive.</exception>
public readonly record struct AnnexDTest(double Measured, double Calculated)
{
    /// <summary>r_e.</summary>
    public double Measured { get; } = Guard.Positive(Measured, "measured resistance r_e", "", "Give the resistance found in the test; leave failed tests out.");

    /// <summary>r_t.</summary>
    public double Calculated { get; } = Guard.Positive(Calculated, "calculated resistance r_t", "", "Give the model's resistance in the same unit.");
}

/// <summary>One basic variable of the resistance model.</summary>
/// <param name="Name">What varies, for example the yield strength.</param>
/// <param name="Variation">V_X, its coefficient of variation from prior knowledge.</param>
/// <exception cref="InputException">No name, or the variation lies outside 0 to 1.</exception>
public sealed record BasicVariable(string Name, double Variation)
{
    /// <summary>What varies.</summary>
    public string Name { get; } = string.IsNullOrWhiteSpace(Name)
        ? throw new InputException("name of the basic variable", "''", "a few words", "Say what varies, for example 'yield strength'.")
        : Name;

    /// <summary>V_X.</summary>
    public double Variation { get; } =
        Guard.Within(Variation, 0, 1, "coefficient of variation V_X", "", "It is the standard deviation over the mean: 7 % is 0.07.");
}
