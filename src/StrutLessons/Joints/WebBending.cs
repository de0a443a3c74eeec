using StrutLessons.Sections;

namespace StrutLessons.Joints;

/// <summary>
/// How a web turns and gives way under a gusset across it, flange lines held: a strip of the web between the flanges, with an effective
/// width. Immutable; every intermediate value is kept.
/// </summary>
/// <remarks>
/// Unit strip of length h_s, moment at a from the nearer flange, b′ = h_s − a. Flanges twist with the web, so they are neither clamps nor
/// pins: rotation lies half-way, translation near pinned. Fitted to this project's plate analyses (112 cases): the half, h_s/4 and ¾ in
/// b_eff, 1.05 and 0.8 in b_w, and 8 in the footprint. Range: G I_t,f/(D h_s) = 2 to 8, b_g/h_s = 0.2 to 1.5, a/h_s ≥ 0.2.
/// </remarks>
public sealed record WebBending : IWorked
{
    private const string Strip = "beam deflection formulas (any mechanics book) on a strip of plate";
    private const string Fitted = "strip model of this project, constants fitted to its plate analyses";

    internal WebBending(Girder girder, WebSeat seat, double footLength, double elasticModulus)
    {
        Girder = girder;
        Seat = seat;
        FootLength = footLength;
        double hs = girder.FlangeSpacing;
        if (seat.Height >= hs)
        {
            throw Guard.Fail(seat.Height, "height y0 on the web", "mm", $"between the flanges, less than h_s = {Guard.Text(hs)} mm",
                "Measure from the mid-plane of the lower flange up to the gusset.");
        }

        if (seat.Footprint > hs / 4)
        {
            throw Guard.Fail(seat.Footprint, "footprint e", "mm", $"at most h_s/4 = {Guard.Text(hs / 4)} mm",
                "Give half the distance of the two weld lines, usually 5 to 15 mm.");
        }

        ElasticModulus = elasticModulus;
        PlateStiffness = PlateStrip.Stiffness(elasticModulus, girder.WebThickness);
        FlangeTorsion = PlateStrip.ShearModulus(elasticModulus) * girder.FlangeTorsionConstant;
        Near = Math.Min(seat.Height, hs - seat.Height);
        double a = Near, b = hs - a, d = PlateStiffness;
        Clamped = a * b * (hs * hs - 3 * a * b) / (d * hs * hs * hs);
        Pinned = (a * a - a * b + b * b) / (3 * d * hs);
        RotationWidth = footLength + hs / 4 + 0.75 * (hs / 2 - a);
        FootprintFactor = 1 + 8 * seat.Footprint / hs;
        Rotation = 0.5 * (Clamped + Pinned) / RotationWidth / FootprintFactor;
        FlangeReach = Math.Sqrt(FlangeTorsion * hs / (3.2 * d));
        PushWidth = footLength + 1.05 * hs + 0.8 * FlangeReach;
        Push = a * a * b * b / (3 * d * hs * PushWidth);
        Coupling = a * b * (b - a) / (3 * d * hs * PushWidth);
        Notes = RangeNotes();
    }

    /// <summary>The girder.</summary>
    public Girder Girder { get; }

    /// <summary>Height, side and footprint of the gusset.</summary>
    public WebSeat Seat { get; }

    /// <summary>Length b_g of the gusset's foot, mm.</summary>
    public double FootLength { get; }

    /// <summary>E, MPa.</summary>
    public double ElasticModulus { get; }

    /// <summary>D of the web, N mm.</summary>
    public double PlateStiffness { get; }

    /// <summary>G I_t of one flange, N mm².</summary>
    public double FlangeTorsion { get; }

    /// <summary>a: distance from the mid-plane of the nearer flange, mm.</summary>
    public double Near { get; }

    /// <summary>f_cl = a b′(h_s² − 3 a b′)/(D h_s³): rotation per moment per unit width, flanges as clamps.</summary>
    public double Clamped { get; }

    /// <summary>f_pin = (a² − a b′ + b′²)/(3 D h_s): the same, flanges as pins.</summary>
    public double Pinned { get; }

    /// <summary>b_eff = b_g + h_s/4 + ¾(h_s/2 − a), mm.</summary>
    public double RotationWidth { get; }

    /// <summary>1 + 8 e/h_s: stiffening by the width of the foot (rough rule at mid-depth); 1 for a line.</summary>
    public double FootprintFactor { get; }

    /// <summary>f_θθ: rotation per moment, rad/(N mm).</summary>
    public double Rotation { get; }

    /// <summary>λ_F = √(G I_t,f h_s/(3.2 D)), mm.</summary>
    public double FlangeReach { get; }

    /// <summary>b_w = b_g + 1.05 h_s + 0.8 λ_F, mm.</summary>
    public double PushWidth { get; }

    /// <summary>f_ww: deflection of the web per force across it, mm/N.</summary>
    public double Push { get; }

    /// <summary>f_wθ: rotation per force across the web (and deflection per moment), 1/N; 0 at mid-depth. A push turns the free end of the gusset towards mid-depth.</summary>
    public double Coupling { get; }

    /// <summary>Where the formula is outside its stated range.</summary>
    public IReadOnlyList<string> Notes { get; }

    /// <summary>From the strip to rotation, deflection and coupling.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        double hs = Girder.FlangeSpacing, b = hs - Near;
        string a = Tex.Number(Near), far = Tex.Number(b), height = Tex.Number(hs), bg = Tex.Number(FootLength), d = Tex.Number(PlateStiffness * 1e-6);
        var steps = new List<WorkedStep>
        {
            new("Height of the web between the flange mid-planes", "h_s", "h - t_f",
                $"{Tex.Number(Girder.Height)} - {Tex.Number(Girder.FlangeThickness)}", hs, "mm", "geometry"),
            new("Bending stiffness of the web per mm", "D", @"\frac{E t_w^3}{12 (1 - \nu^2)}",
                $@"\frac{{{Tex.Number(ElasticModulus)} \cdot {Tex.Number(Girder.WebThickness)}^3}}{{12 (1 - 0.3^2)}} \cdot 10^{{-6}}", PlateStiffness * 1e-6, "kNm", "plate bending"),
            new("Distance from the nearer flange", "a", "", "", Near, "mm", "given"),
            new("Unit strip between clamps", "f_{cl}", @"\frac{a b' (h_s^2 - 3 a b')}{D h_s^3}",
                $@"\frac{{{a} \cdot {far} ({height}^2 - 3 \cdot {a} \cdot {far})}}{{{d} \cdot {height}^3}} \cdot 10^3", Clamped * 1e9, "mrad/kNm · mm", Strip),
            new("Unit strip between pins", "f_{pin}", @"\frac{a^2 - a b' + b'^2}{3 D h_s}",
                $@"\frac{{{a}^2 - {a} \cdot {far} + {far}^2}}{{3 \cdot {d} \cdot {height}}} \cdot 10^3", Pinned * 1e9, "mrad/kNm · mm", Strip),
            new("Effective width for rotation", "b_{eff}", @"b_g + \tfrac{h_s}{4} + \tfrac{3}{4} \left( \tfrac{h_s}{2} - a \right)",
                $@"{bg} + \tfrac{{{height}}}{{4}} + \tfrac{{3}}{{4}} ( \tfrac{{{height}}}{{2}} - {a} )", RotationWidth, "mm", Fitted),
        };
        if (Seat.Footprint > 0)
        {
            steps.Add(new("Stiffening by the width of the foot", @"\beta_e", @"1 + \frac{8 e}{h_s}", $@"1 + \frac{{8 \cdot {Tex.Number(Seat.Footprint)}}}{{{height}}}", FootprintFactor, "", Fitted));
        }

        steps.Add(new("Rotation per moment", @"f_{\theta\theta}", @"\frac{f_{cl} + f_{pin}}{2\, b_{eff}}" + (Seat.Footprint > 0 ? @"\frac{1}{\beta_e}" : ""),
            $@"\frac{{{Tex.Number(Clamped * 1e9)} + {Tex.Number(Pinned * 1e9)}}}{{2 \cdot {Tex.Number(RotationWidth)}}}"
            + (Seat.Footprint > 0 ? $@"\frac{{1}}{{{Tex.Number(FootprintFactor)}}}" : ""), Rotation * 1e9, "mrad/kNm", Fitted));
        steps.Add(new("Reach of the flange's twist", @"\lambda_F", @"\sqrt{\frac{G I_{t,f} h_s}{3.2 D}}",
            $@"\sqrt{{\frac{{{Tex.Number(FlangeTorsion * 1e-9)} \cdot {height}}}{{3.2 \cdot {d}}} \cdot 10^3}}", FlangeReach, "mm", Fitted));
        steps.Add(new("Effective width for deflection", "b_w", @"b_g + 1.05 h_s + 0.8 \lambda_F",
            $@"{bg} + 1.05 \cdot {height} + 0.8 \cdot {Tex.Number(FlangeReach)}", PushWidth, "mm", Fitted));
        steps.Add(new("Deflection per force across the web", "f_{ww}", @"\frac{a^2 b'^2}{3 D h_s b_w}",
            $@"\frac{{{a}^2 \cdot {far}^2}}{{3 \cdot {d} \cdot {height} \cdot {Tex.Number(PushWidth)}}} \cdot 10^{{-3}}", Push * 1e3, "mm/kN", Fitted));
        steps.Add(new("Rotation per force across the web", @"f_{w\theta}", @"\frac{a b' (b' - a)}{3 D h_s b_w}",
            $@"\frac{{{a} \cdot {far} ({far} - {a})}}{{3 \cdot {d} \cdot {height} \cdot {Tex.Number(PushWidth)}}}", Coupling * 1e6, "mrad/kN", Fitted));
        return steps;
    }

    private List<string> RangeNotes()
    {
        double hs = Girder.FlangeSpacing, twist = FlangeTorsion / (PlateStiffness * hs), foot = FootLength / hs, height = Near / hs;
        var notes = new List<string>();
        void Outside(bool outside, string what, double value, string range)
        {
            if (outside)
            {
                notes.Add($"{what} = {Guard.Text(value)} is outside the formula's range ({range}): use the plate analysis, method PlateAnalysis().");
            }
        }

        Outside(twist is < 2 or > 8, "G I_t,f/(D h_s)", twist, "2 to 8");
        Outside(foot is < 0.2 or > 1.5, "b_g/h_s", foot, "0.2 to 1.5");
        Outside(height < 0.2, "a/h_s", height, "0.2 and more");
        if (Seat.Footprint > 0 && height < 0.45)
        {
            notes.Add("The footprint rule was found at mid-depth; nearer to a flange the effect is smaller.");
        }

        return notes;
    }
}
