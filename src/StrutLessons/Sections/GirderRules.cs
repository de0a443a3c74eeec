namespace StrutLessons.Sections;

/// <summary>Which formula gives the St Venant torsion constant of a rolled I-section; tables before and after 2021 differ by a few percent.</summary>
public enum TorsionConstantRule
{
    /// <summary>
    /// I_t = ⅔(b − 0.63 t_f) t_f³ + ⅓(h − 2 t_f) t_w³ + 2 (t_w/t_f)(0.145 + 0.1 r/t_f) D⁴,
    /// D = [(t_f + r)² + t_w (r + t_w/4)]/(2 r + t_f). Source: European sections catalogues up to 2014.
    /// </summary>
    Catalogue2014,

    /// <summary>
    /// I_t = ⅔ b t_f³ + ⅓(h − 2 t_f) t_w³ + 2 α₁ D⁴ − 0.42 t_f⁴,
    /// α₁ = −0.042 + 0.2204 t_w/t_f + 0.1355 r/t_f − 0.0865 r t_w/t_f² − 0.0725 (t_w/t_f)². Source: SCI P385 (from memory).
    /// </summary>
    SciP385,

    /// <summary>
    /// Three thin rectangles between the flange mid-planes, without fillets: I_t = ⅓(2 b t_f³ + (h − t_f) t_w³) (thin-walled theory).
    /// Smaller than the printed values; the plate analyses of this project have the same I_t.
    /// </summary>
    ThinPlates,
}

/// <summary>Which formula gives the warping constant; the two differ by 0.1 to 0.7 %.</summary>
public enum WarpingConstantRule
{
    /// <summary>Flanges alone: I_w = t_f b³ (h − t_f)²/24. The value printed in tables.</summary>
    FlangesOnly,

    /// <summary>Whole section: I_w = I_z (h − t_f)²/4.</summary>
    WholeSection,
}
