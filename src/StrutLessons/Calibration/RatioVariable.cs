namespace StrutLessons.Calibration;

/// <summary>Something that differs between the cases of a grid and may move the ratio. Immutable.</summary>
public sealed record RatioVariable
{
    private RatioVariable(string name, Func<RatioCase, double>? number, Func<RatioCase, string>? words)
    {
        Name = string.IsNullOrWhiteSpace(name) ? throw new InputException("name of the variable", "''", "a few words with the unit", "Say what varies.") : name;
        (Number, Words) = (number, words);
    }

    /// <summary>What varies, with its unit in brackets.</summary>
    public string Name { get; }

    internal Func<RatioCase, double>? Number { get; }

    internal Func<RatioCase, string>? Words { get; }

    /// <summary>Angle and connected leg.</summary>
    public static RatioVariable Section { get; } = new("section", null, c => c.Strut.Section.ToString());

    /// <summary>λ̄_v on the system length.</summary>
    public static RatioVariable Slenderness { get; } = new("relative slenderness (–)", c => c.Slenderness, null);

    /// <summary>Spring of end 1 in the plane of the gusset as a multiple of E I_z/L.</summary>
    public static RatioVariable InPlaneSpring { get; } = new("in-plane spring (EI/L)",
        c => c.Strut.End1.Spring.InPlane * c.Strut.SystemLength / (c.Strut.Steel.ElasticModulus * c.Strut.Section.SecondMomentZ), null);

    /// <summary>Spring of end 1 out of the plane of the gusset as a multiple of E I_y/L.</summary>
    public static RatioVariable OutOfPlaneSpring { get; } = new("out-of-plane spring (EI/L)",
        c => c.Strut.End1.Spring.OutOfPlane * c.Strut.SystemLength / (c.Strut.Steel.ElasticModulus * c.Strut.Section.SecondMomentY), null);

    /// <summary>Load point of end 1 along the connected leg over that leg.</summary>
    public static RatioVariable EccentricityAlongLeg { get; } = new("eccentricity along the leg (–)",
        c => c.Strut.End1.Eccentricity.Y / c.Strut.Section.ConnectedLength, null);

    /// <summary>Load point of end 1 square to the connected leg over that leg: thicker gussets give more.</summary>
    public static RatioVariable EccentricityAcross { get; } = new("eccentricity across (–)",
        c => c.Strut.End1.Eccentricity.Z / c.Strut.Section.ConnectedLength, null);

    /// <summary>Yield strength.</summary>
    public static RatioVariable YieldStrength { get; } = new("yield strength (MPa)", c => c.Strut.Steel.YieldStrength, null);

    /// <summary>Leg over thickness, the longer one.</summary>
    public static RatioVariable LegOverThickness { get; } = new("leg over thickness (–)",
        c => Math.Max(c.Strut.Section.ConnectedLength, c.Strut.Section.OutstandingLength) / c.Strut.Section.Thickness, null);

    /// <summary>Bow of the elastic models over the system length.</summary>
    public static RatioVariable Bow { get; } = new("bow over length (–)", c => c.Strut.Bows.Max(b => b.Amplitude) / c.Strut.SystemLength, null);

    /// <summary>Largest roll of the reference at its peak.</summary>
    public static RatioVariable Roll { get; } = new("roll at the peak (rad)", c => c.RollAtPeak, null);

    /// <summary>What the cases themselves tell, without the roll, which is a result.</summary>
    public static IReadOnlyList<RatioVariable> Usual { get; } =
        [Section, Slenderness, InPlaneSpring, OutOfPlaneSpring, EccentricityAlongLeg, EccentricityAcross, YieldStrength, LegOverThickness, Bow];

    /// <summary>A variable of numbers, for instance the gusset thickness that was used for each strut.</summary>
    /// <param name="name">Name with the unit in brackets.</param>
    /// <param name="value">Its value for a case; <see cref="RatioCase.Index"/> is the place of the strut in the list given.</param>
    /// <exception cref="InputException">No name.</exception>
    public static RatioVariable Of(string name, Func<RatioCase, double> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(name, value, null);
    }

    /// <summary>A variable of words, for instance the kind of joint.</summary>
    /// <param name="name">Name.</param>
    /// <param name="value">Its word for a case.</param>
    /// <exception cref="InputException">No name.</exception>
    public static RatioVariable OfWords(string name, Func<RatioCase, string> value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new(name, null, value);
    }
}
