namespace StrutLessons.Member;

/// <summary>The elastic critical load of a strut: springs and arms included; eccentricity and bow play no part.</summary>
public static class CriticalLoad
{
    /// <summary>
    /// N_cr, the smallest load with a second equilibrium state beside the straight one, N. The lowest one for certain: the
    /// number of critical loads below it is counted (Wittrick and Williams, 1971).
    /// </summary>
    public static double Of(Strut strut)
    {
        ArgumentNullException.ThrowIfNull(strut);
        return CriticalLoadSolver.Solve(StrutNumbers.Straight(strut));
    }

    /// <summary>Number of critical loads below a load, for 0 &lt; N &lt; 4 π² E I_v/L² of the bar between the bolts.</summary>
    /// <exception cref="InputException">The load is outside that range.</exception>
    public static int CountBelow(Strut strut, double load)
    {
        ArgumentNullException.ThrowIfNull(strut);
        var numbers = StrutNumbers.Straight(strut);
        return load > 0 && load < numbers.ClampedLoad
            ? CriticalLoadSolver.CountBelow(numbers, load)
            : throw Guard.Fail(load, "load N", "N", $"between 0 and {Guard.Text(numbers.ClampedLoad)} N",
                "The count holds up to the buckling load of the bar with clamped ends.");
    }

    /// <summary>Critical load in terms of the hinged bar of the same system length, N_cr/N_Ev: between 1 and 4 without arms.</summary>
    public static double RatioToEuler(Strut strut) => Of(strut) / strut.EulerLoadV;
}
