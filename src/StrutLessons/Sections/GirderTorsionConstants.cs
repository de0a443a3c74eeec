namespace StrutLessons.Sections;

/// <summary>Torsion and warping constants of a girder by chosen formulas, with every intermediate value. Immutable; mm.</summary>
public sealed record GirderTorsionConstants : IWorked
{
    internal GirderTorsionConstants(Girder girder, TorsionConstantRule rule, WarpingConstantRule warpingRule)
    {
        Girder = girder;
        Rule = Guard.Named(rule, "torsion constant rule");
        WarpingRule = Guard.Named(warpingRule, "warping constant rule");
        double b = girder.Width, tf = girder.FlangeThickness, tw = girder.WebThickness, r = girder.RootRadius, hs = girder.FlangeSpacing;
        double tf3 = tf * tf * tf, tw3 = tw * tw * tw, clear = girder.Height - 2 * tf;
        Circle = (Math.Pow(tf + r, 2) + tw * (r + tw / 4)) / (2 * r + tf);
        (Junction, StVenant) = rule switch
        {
            TorsionConstantRule.Catalogue2014 => (tw / tf * (0.145 + 0.1 * r / tf), 2 * (b - 0.63 * tf) * tf3 / 3 + clear * tw3 / 3),
            TorsionConstantRule.SciP385 => (
                -0.042 + 0.2204 * tw / tf + 0.1355 * r / tf - 0.0865 * r * tw / (tf * tf) - 0.0725 * Math.Pow(tw / tf, 2),
                2 * b * tf3 / 3 + clear * tw3 / 3 - 0.42 * tf * tf3),
            _ => (0, 2 * b * tf3 / 3 + hs * tw3 / 3),
        };
        StVenant += 2 * Junction * Math.Pow(Circle, 4);
        Warping = warpingRule == WarpingConstantRule.FlangesOnly ? tf * b * b * b * hs * hs / 24 : girder.SecondMomentZ * hs * hs / 4;
    }

    /// <summary>The girder.</summary>
    public Girder Girder { get; }

    /// <summary>Formula of I_t.</summary>
    public TorsionConstantRule Rule { get; }

    /// <summary>Formula of I_w.</summary>
    public WarpingConstantRule WarpingRule { get; }

    /// <summary>Diameter D of the largest circle in the junction of flange and web, mm.</summary>
    public double Circle { get; }

    /// <summary>α: what one junction adds, in parts of D⁴; 0 for thin plates.</summary>
    public double Junction { get; }

    /// <summary>I_t, mm⁴.</summary>
    public double StVenant { get; }

    /// <summary>I_w, mm⁶.</summary>
    public double Warping { get; }

    /// <summary>I_t in cm⁴ and I_w in 10³ cm⁶, as in printed tables.</summary>
    public IReadOnlyList<WorkedStep> WorkedSteps()
    {
        string b = Tex.Number(Girder.Width), tf = Tex.Number(Girder.FlangeThickness), tw = Tex.Number(Girder.WebThickness), r = Tex.Number(Girder.RootRadius);
        string h = Tex.Number(Girder.Height), hs = Tex.Number(Girder.FlangeSpacing), d = Tex.Number(Circle), a = Tex.Number(Junction);
        var steps = new List<WorkedStep>();
        if (Rule != TorsionConstantRule.ThinPlates)
        {
            steps.Add(new("Largest circle in the junction of flange and web", "D", @"\frac{(t_f + r)^2 + t_w (r + t_w/4)}{2 r + t_f}",
                $@"\frac{{({tf} + {r})^2 + {tw} ({r} + {tw}/4)}}{{2 \cdot {r} + {tf}}}", Circle, "mm", "geometry"));
        }

        const string catalogue = "European sections catalogues up to 2014", sci = "SCI P385 (from memory)";
        if (Rule == TorsionConstantRule.Catalogue2014)
        {
            steps.Add(new("Share of a junction", @"\alpha", @"\frac{t_w}{t_f} \left( 0.145 + 0.1 \frac{r}{t_f} \right)",
                $@"\frac{{{tw}}}{{{tf}}} \left( 0.145 + 0.1 \cdot \frac{{{r}}}{{{tf}}} \right)", Junction, "", catalogue));
            steps.Add(new("Torsion constant", "I_t", @"\tfrac{2}{3} (b - 0.63 t_f) t_f^3 + \tfrac{1}{3} (h - 2 t_f) t_w^3 + 2 \alpha D^4",
                $@"(\tfrac{{2}}{{3}} ({b} - 0.63 \cdot {tf}) \cdot {tf}^3 + \tfrac{{1}}{{3}} ({h} - 2 \cdot {tf}) \cdot {tw}^3 + 2 \cdot {a} \cdot {d}^4) \cdot 10^{{-4}}",
                StVenant / 1e4, "cm⁴", catalogue));
        }
        else if (Rule == TorsionConstantRule.SciP385)
        {
            steps.Add(new("Share of a junction", @"\alpha_1",
                @"-0.042 + 0.2204 \frac{t_w}{t_f} + 0.1355 \frac{r}{t_f} - 0.0865 \frac{r t_w}{t_f^2} - 0.0725 \left( \frac{t_w}{t_f} \right)^2",
                $@"-0.042 + 0.2204 \cdot \frac{{{tw}}}{{{tf}}} + 0.1355 \cdot \frac{{{r}}}{{{tf}}} - 0.0865 \cdot \frac{{{r} \cdot {tw}}}{{{tf}^2}} - 0.0725 \cdot (\frac{{{tw}}}{{{tf}}})^2",
                Junction, "", sci));
            steps.Add(new("Torsion constant", "I_t", @"\tfrac{2}{3} b t_f^3 + \tfrac{1}{3} (h - 2 t_f) t_w^3 + 2 \alpha_1 D^4 - 0.42 t_f^4",
                $@"(\tfrac{{2}}{{3}} \cdot {b} \cdot {tf}^3 + \tfrac{{1}}{{3}} ({h} - 2 \cdot {tf}) \cdot {tw}^3 + 2 \cdot {a} \cdot {d}^4 - 0.42 \cdot {tf}^4) \cdot 10^{{-4}}",
                StVenant / 1e4, "cm⁴", sci));
        }
        else
        {
            steps.Add(new("Torsion constant of three thin plates", "I_t", @"\tfrac{1}{3} (2 b t_f^3 + h_s t_w^3)",
                $@"\tfrac{{1}}{{3}} (2 \cdot {b} \cdot {tf}^3 + {hs} \cdot {tw}^3) \cdot 10^{{-4}}", StVenant / 1e4, "cm⁴", "thin-walled theory, without fillets"));
        }

        steps.Add(WarpingRule == WarpingConstantRule.FlangesOnly
            ? new("Warping constant, flanges alone", "I_w", @"\tfrac{1}{24} t_f b^3 h_s^2",
                $@"\tfrac{{1}}{{24}} \cdot {tf} \cdot {b}^3 \cdot {hs}^2 \cdot 10^{{-9}}", Warping / 1e9, "10³ cm⁶", "thin-walled theory; the printed value")
            : new("Warping constant, whole section", "I_w", @"\tfrac{1}{4} I_z h_s^2",
                $@"\tfrac{{1}}{{4}} \cdot {Tex.Number(Girder.SecondMomentZ / 1e4)} \cdot {hs}^2 \cdot 10^{{-5}}", Warping / 1e9, "10³ cm⁶", "thin-walled theory"));
        return steps;
    }
}
