namespace StrutLessons.Sections;

public sealed partial record Girder : IWorked
{
    /// <summary>Area and second moments with the fillets' share, in cm² and cm⁴ as in printed tables; I_t and I_w: <see cref="InTorsion"/>.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        const string source = "composed areas (any mechanics book)";
        string h = Tex.Number(Height), b = Tex.Number(Width), tw = Tex.Number(WebThickness), tf = Tex.Number(FlangeThickness);
        string clear = Tex.Number(ClearHeight), r = Tex.Number(RootRadius);
        double up = ClearHeight / 2 - RootFillet.Centroid * RootRadius, aside = WebThickness / 2 + RootFillet.Centroid * RootRadius;
        return
        [
            new("Area", "A", @"2 b t_f + (h - 2 t_f) t_w + (4 - \pi) r^2",
                $@"(2 \cdot {b} \cdot {tf} + {clear} \cdot {tw} + (4 - \pi) \cdot {r}^2) \cdot 10^{{-2}}", Area / 1e2, "cm²", source),
            new("Second moment about the strong axis: full rectangle less the gaps, plus fillets", "I_y",
                @"\tfrac{1}{12} \left[ b h^3 - (b - t_w)(h - 2 t_f)^3 \right] + I_{y,r}",
                $@"\tfrac{{1}}{{12}} ({b} \cdot {h}^3 - {Tex.Number(Width - WebThickness)} \cdot {clear}^3) \cdot 10^{{-4}} + {Tex.Number(Fillets(up) / 1e4)}",
                SecondMomentY / 1e4, "cm⁴", source),
            new("Second moment about the weak axis: flanges, web, fillets", "I_z",
                @"\tfrac{1}{12} \left[ 2 t_f b^3 + (h - 2 t_f) t_w^3 \right] + I_{z,r}",
                $@"\tfrac{{1}}{{12}} (2 \cdot {tf} \cdot {b}^3 + {clear} \cdot {tw}^3) \cdot 10^{{-4}} + {Tex.Number(Fillets(aside) / 1e4)}",
                SecondMomentZ / 1e4, "cm⁴", source),
        ];
    }
}
