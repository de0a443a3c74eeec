namespace StrutLessons.Sections;

public sealed partial record AngleSection : IWorked
{
    private const string Composed = "composed areas (any mechanics book)";
    private const string Principal = "principal axes (any mechanics book)";

    /// <summary>Elastic moduli at the five corners.</summary>
    public AngleModuli Moduli() => new(this);

    /// <summary>
    /// From the five pieces (<see cref="AnglePart"/>) to the principal axes, as one would do it by hand;
    /// areas in cm², second moments in cm⁴, as in printed tables.
    /// </summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        IReadOnlyList<AnglePart> parts = AnglePart.Of(this);
        string Sum(Func<AnglePart, double> term, double unit) =>
            string.Join(" + ", parts.Select(p => Tex.Bracketed(term(p) / unit)));
        double mean = (SecondMomentY + SecondMomentZ) / 2;
        double difference = (SecondMomentY - SecondMomentZ) / 2;
        string root = $@"\sqrt{{{Tex.Bracketed(difference / 1e4)}^2 + {Tex.Number(ProductMoment / 1e4)}^2}}";
        string rootFormula = @"\sqrt{\left(\tfrac{I_y - I_z}{2}\right)^2 + I_{yz}^2}";
        return
        [
            new("Area: two rectangles, root fillet, rounded toes", "A", @"\sum A_i", Sum(p => p.Area, 1e2), Area / 1e2, "cm²", Composed),
            new("Centroid from the heel, along the connected leg", "c_y", @"\frac{1}{A} \sum A_i Y_i",
                $@"\frac{{{Sum(p => p.Area * p.Y, 1e3)}}}{{{Tex.Number(Area / 1e2)}}} \cdot 10", CentroidY, "mm", Composed),
            new("Centroid from the outer face of the connected leg", "c_z", @"\frac{1}{A} \sum A_i Z_i",
                $@"\frac{{{Sum(p => p.Area * p.Z, 1e3)}}}{{{Tex.Number(Area / 1e2)}}} \cdot 10", CentroidZ, "mm", Composed),
            new("Second moment about y, parallel to the connected leg", "I_y", @"\sum \left[ I_{y,i} + A_i (Z_i - c_z)^2 \right]",
                Sum(p => p.OwnY + p.Area * Math.Pow(p.Z - CentroidZ, 2), 1e4), SecondMomentY / 1e4, "cm⁴", Composed),
            new("Second moment about z, perpendicular to the connected leg", "I_z", @"\sum \left[ I_{z,i} + A_i (Y_i - c_y)^2 \right]",
                Sum(p => p.OwnZ + p.Area * Math.Pow(p.Y - CentroidY, 2), 1e4), SecondMomentZ / 1e4, "cm⁴", Composed),
            new("Product of inertia (z points against Z, hence the sign)", "I_{yz}", @"-\sum \left[ I_{YZ,i} + A_i (Y_i - c_y)(Z_i - c_z) \right]",
                "-[" + Sum(p => p.OwnYZ + p.Area * (p.Y - CentroidY) * (p.Z - CentroidZ), 1e4) + "]", ProductMoment / 1e4, "cm⁴", Composed),
            new("Second moment about the major axis u–u", "I_u", @"\tfrac{I_y + I_z}{2} + " + rootFormula,
                $"{Tex.Number(mean / 1e4)} + {root}", SecondMomentU / 1e4, "cm⁴", Principal),
            new("Second moment about the minor axis v–v", "I_v", @"\tfrac{I_y + I_z}{2} - " + rootFormula,
                $"{Tex.Number(mean / 1e4)} - {root}", SecondMomentV / 1e4, "cm⁴", Principal),
            new("Direction of the axis u–u from +y; of its two ends the one on the heel's side", @"\varphi_u", @"180^\circ + \arctan \frac{I_v - I_z}{I_{yz}}",
                $@"180 + \arctan \frac{{{Tex.Number(SecondMomentV / 1e4)} - {Tex.Number(SecondMomentZ / 1e4)}}}{{{Tex.Number(ProductMoment / 1e4)}}}",
                AngleToU * 180 / Math.PI, "°", Principal),
            Radius("y", SecondMomentY, RadiusY),
            Radius("z", SecondMomentZ, RadiusZ),
            Radius("u", SecondMomentU, RadiusU),
            Radius("v", SecondMomentV, RadiusV),
        ];
    }

    private WorkedStep Radius(string axis, double moment, double radius) => new(
        $"Radius of gyration about {axis}–{axis}", $"i_{axis}", $@"\sqrt{{I_{axis}/A}}",
        $@"\sqrt{{{Tex.Number(moment / 1e4)}/{Tex.Number(Area / 1e2)}}} \cdot 10", radius, "mm", "definition");
}
