namespace StrutLessons.Joints;

/// <summary>Where and how a gusset sits on the web of a girder. Immutable; mm.</summary>
public sealed record WebSeat
{
    /// <summary>A seat on the web.</summary>
    /// <param name="height">y₀ above the mid-plane of the lower flange, mm.</param>
    /// <param name="zTowards">Where the strut's z axis points.</param>
    /// <param name="footprint">
    /// e: half the distance of the two weld lines, mm (half the gusset thickness and half a weld); 0 treats the foot as a line, which is soft.
    /// </param>
    /// <exception cref="InputException">Not positive, or a negative footprint.</exception>
    public WebSeat(double height, ZTowards zTowards = ZTowards.MidDepth, double footprint = 0)
    {
        Height = Guard.Positive(height, "height y0 on the web", "mm", "Measure from the mid-plane of the lower flange up to the gusset.");
        ZTowards = Guard.Named(zTowards, "direction of z");
        Footprint = Guard.NotNegative(footprint, "footprint e", "mm", "Give half the distance of the weld lines; 0 treats the foot as a line.");
    }

    /// <summary>y₀ above the mid-plane of the lower flange, mm.</summary>
    public double Height { get; }

    /// <summary>Where the strut's z axis points.</summary>
    public ZTowards ZTowards { get; }

    /// <summary>e, mm; 0 for a line.</summary>
    public double Footprint { get; }

    /// <summary>A seat at mid-depth of a girder.</summary>
    /// <param name="girder">The girder.</param>
    /// <param name="footprint">e, mm.</param>
    /// <exception cref="InputException">A negative footprint.</exception>
    public static WebSeat AtMidDepth(Sections.Girder girder, double footprint = 0)
    {
        ArgumentNullException.ThrowIfNull(girder);
        return new(girder.FlangeSpacing / 2, ZTowards.MidDepth, footprint);
    }
}
