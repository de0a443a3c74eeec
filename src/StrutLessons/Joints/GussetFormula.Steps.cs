namespace StrutLessons.Joints;

public sealed partial record GussetFormula : IWorked
{
    private const string PlateBook = "plate bending (Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, from memory)";
    private const string Torsion = "bar in torsion on an elastic foundation, free outer edge; 45° spread and L_b/2 fitted to plate analyses";
    private const string Inclined = "fitted to the plate analyses of this project, without derivation";

    /// <summary>From the thickness to the spring, its place and the buckling loads; stiffness in kNm/rad.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        Gusset p = Gusset;
        string g = Tex.Number(p.FreeLength), geq = Tex.Number(EquivalentLength), lambda = Tex.Number(Spread);
        string length = p.IsSquare ? "g" : "g_{eq}";
        var steps = new List<WorkedStep>
        {
            new("Bending stiffness of the plate per mm of width", "D", @"\frac{E t^3}{12 (1 - \nu^2)}",
                $@"\frac{{{Tex.Number(ElasticModulus)} \cdot {Tex.Number(p.Thickness)}^3}}{{12 (1 - 0.3^2)}} \cdot 10^{{-6}}", PlateStiffness * 1e-6, "kNm", PlateBook),
        };
        if (!p.IsSquare)
        {
            string alpha = Tex.Number(p.InclinationDegrees) + @"^\circ";
            steps.Add(new("Free length at the near corner of the leg", "g_n", @"g - \tfrac{w}{2} \cot\alpha",
                $@"{g} - {Tex.Number(HalfRight)} \cot {alpha}", NearLength, "mm", "geometry"));
            steps.Add(new("Length of an equal square gusset", "g_{eq}", @"\sqrt{g\, g_n \sin\alpha}",
                $@"\sqrt{{{g} \cdot {Tex.Number(NearLength)} \cdot \sin {alpha}}}", EquivalentLength, "mm", Inclined));
        }

        steps.Add(new("Length over which plate beside the leg is dragged along", @"\lambda", length + @" + \tfrac{L_b}{2}",
            $@"{geq} + \tfrac{{{Tex.Number(PatchLength)}}}{{2}}", Spread, "mm", Torsion));
        steps.Add(Dragged("left", SideLeft, DraggedLeft, lambda));
        steps.Add(Dragged("right", SideRight, DraggedRight, lambda));
        steps.Add(new("Effective width", "b_{eff}", @"w + \sum \lambda \tanh\tfrac{B}{\lambda}",
            $"{Tex.Number(HalfLeft + HalfRight)} + {Tex.Number(DraggedLeft)} + {Tex.Number(DraggedRight)}", EffectiveWidth, "mm", Torsion));
        if (p.IsSquare)
        {
            steps.Add(new("Spring of the gusset", "c", @"\frac{D\, b_{eff}}{g}",
                $@"\frac{{{Tex.Number(PlateStiffness * 1e-6)} \cdot {Tex.Number(EffectiveWidth)}}}{{{g}}}", Stiffness * 1e-6, "kNm/rad", "strip, one end clamped"));
        }
        else
        {
            double nearest = NearLength * Math.Sin(p.Inclination);
            steps.Add(new("Strips from the near side of the leg straight to the support, per D", "S",
                @"0.5 \frac{\cot\alpha}{\sin^2\alpha} \ln\left(1 + \frac{L_f \sin\alpha}{g_n \sin\alpha}\right)",
                $@"0.5 \cdot {Tex.Number(1 / Math.Tan(p.Inclination) / Math.Pow(Math.Sin(p.Inclination), 2))} \ln\left(1 + \frac{{{Tex.Number(SideStripLength * Math.Sin(p.Inclination))}}}{{{Tex.Number(nearest)}}}\right)",
                SideStrips, "", Inclined));
            steps.Add(new("Spring of the gusset", "c", @"D \left( \frac{b_{eff}}{g_{eq}} + S \right)",
                $@"{Tex.Number(PlateStiffness * 1e-6)} \left( \frac{{{Tex.Number(EffectiveWidth)}}}{{{geq}}} + {Tex.Number(SideStrips)} \right)", Stiffness * 1e-6, "kNm/rad", Origin));
        }

        string sin = p.IsSquare ? "" : $@" \sin {Tex.Number(p.InclinationDegrees)}^\circ";
        string sinAlpha = p.IsSquare ? "" : @" \sin\alpha";
        steps.Add(new("Elastic centre from the first bolt (a strip would have g/2)", "s_h", "0.47\\, g" + sinAlpha, $@"0.47 \cdot {g}{sin}", HingeDistance, "mm", Origin));
        steps.Add(new("Deflection at the first bolt per force across the plate (a strip would have g²/3)", "f_{ww}", "0.327\\, g^2" + sinAlpha + @" / c",
            $@"0.327 \cdot {g}^2{sin} / {Tex.Number(Stiffness * 1e-6)} \cdot 10^{{-3}}", DeflectionPerForce * 1e3, "mm/kN", Origin));
        steps.Add(new("The gusset alone buckles, its end free", "N_{free}", @"0.75 \frac{\pi^2 c}{4 g}",
            $@"0.75 \frac{{\pi^2 \cdot {Tex.Number(Stiffness * 1e-6)}}}{{4 \cdot {g}}} \cdot 10^3", FreeBucklingLoad * 1e-3, "kN", Origin));
        steps.Add(new("The gusset alone buckles, its end guided", "N_{guided}", @"0.80 \frac{\pi^2 c}{g}",
            $@"0.80 \frac{{\pi^2 \cdot {Tex.Number(Stiffness * 1e-6)}}}{{{g}}} \cdot 10^3", GuidedBucklingLoad * 1e-3, "kN", Origin));
        return steps;
    }

    private static WorkedStep Dragged(string side, double width, double value, string lambda) => new(
        $"Plate dragged along on the {side}", $@"\lambda \tanh\tfrac{{B_{{{side}}}}}{{\lambda}}", "",
        $@"{lambda} \tanh\frac{{{Tex.Number(width)}}}{{{lambda}}}", value, "mm", Torsion);
}
