using StrutLessons.Sections;

namespace StrutLessons.Eccentricity;

public sealed partial record LoadPoint : IWorked
{
    private const string Definition = "definition: the bolt line along the leg, the load plane across it";

    /// <summary>From gauge and gusset to the eccentricity and its principal components.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        AngleSection s = Section;
        double g = Bolts.Gauge;
        bool connected = !ThroughOtherLeg;
        (string formula, string numbers) along = connected
            ? ("g - c_y", $"{Tex.Number(g)} - {Tex.Number(s.CentroidY)}")
            : ("c_z - g", $"{Tex.Number(s.CentroidZ)} - {Tex.Number(g)}");
        (string formula, string numbers) across = Across(connected ? s.CentroidZ : s.CentroidY, connected ? "c_z" : "c_y", connected);
        WorkedStep alongStep = new("Eccentricity along the bolted leg", connected ? "y_e" : "z_e", along.formula, along.numbers,
            connected ? Offset.Y : Offset.Z, "mm", Definition);
        WorkedStep acrossStep = new("Eccentricity across the bolted leg", connected ? "z_e" : "y_e", across.formula, across.numbers,
            connected ? Offset.Z : Offset.Y, "mm", Definition);
        return
        [
            new("Gauge: bolt line from the heel", "g", "", "", g, "mm", "given"),
            new("Gusset thickness", "t_g", "", "", GussetThickness, "mm", "given"),
            new("Centroid from the heel, along the connected leg", "c_y", "", "", s.CentroidY, "mm", "section"),
            new("Centroid from the outer face of the connected leg", "c_z", "", "", s.CentroidZ, "mm", "section"),
            alongStep,
            acrossStep,
            Component("Part along u–u: bends about the weak axis v–v", "e_u", "u", s.AxisU, AlongU),
            Component("Part along v–v: bends about the strong axis u–u", "e_v", "v", s.AxisV, AlongV),
        ];
    }

    /// <summary>The distance across the leg: centroid to outer face, then to the load plane. Along y the heel side is negative.</summary>
    private (string Formula, string Numbers) Across(double c, string symbol, bool connected)
    {
        string t = Tex.Number(Section.Thickness), tg = Tex.Number(GussetThickness);
        (string formula, string numbers) = (Face, Plane) switch
        {
            (GussetFace.Outer, LoadPlane.GussetMidPlane) => (symbol + @" + \tfrac{t_g}{2}", $@"{Tex.Number(c)} + \tfrac{{{tg}}}{{2}}"),
            (GussetFace.Inner, LoadPlane.GussetMidPlane) => (symbol + @" - t - \tfrac{t_g}{2}", $@"{Tex.Number(c)} - {t} - \tfrac{{{tg}}}{{2}}"),
            (GussetFace.Outer, LoadPlane.Interface) => (symbol, Tex.Number(c)),
            (GussetFace.Inner, LoadPlane.Interface) => (symbol + " - t", $"{Tex.Number(c)} - {t}"),
            _ => (symbol + @" - \tfrac{t}{2}", $@"{Tex.Number(c)} - \tfrac{{{t}}}{{2}}"),
        };
        return connected ? (formula, numbers) : ($"-({formula})", $"-({numbers})");
    }

    private WorkedStep Component(string title, string symbol, string axis, Planar unit, double value) => new(
        title, symbol, $@"y_e\,\hat e_{{{axis},y}} + z_e\,\hat e_{{{axis},z}}",
        $@"{Tex.Number(Offset.Y)} \cdot {Tex.Bracketed(unit.Y)} + {Tex.Bracketed(Offset.Z)} \cdot {Tex.Bracketed(unit.Z)}",
        value, "mm", "definition: projection on the principal axis");
}
