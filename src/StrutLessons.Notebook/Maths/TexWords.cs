using System.Collections.Frozen;

namespace StrutLessons.Notebook.Maths;

/// <summary>The commands of the TeX subset in which worked steps and labels are written, and the characters they stand for.</summary>
internal static class TexWords
{
    internal static readonly FrozenDictionary<string, string> Letters = new Dictionary<string, string>
    {
        ["alpha"] = "α", ["beta"] = "β", ["gamma"] = "γ", ["delta"] = "δ", ["epsilon"] = "ε", ["varepsilon"] = "ε",
        ["zeta"] = "ζ", ["eta"] = "η", ["theta"] = "θ", ["vartheta"] = "ϑ", ["kappa"] = "κ", ["lambda"] = "λ",
        ["mu"] = "μ", ["nu"] = "ν", ["xi"] = "ξ", ["pi"] = "π", ["rho"] = "ρ", ["sigma"] = "σ", ["tau"] = "τ",
        ["phi"] = "φ", ["varphi"] = "φ", ["chi"] = "χ", ["psi"] = "ψ", ["omega"] = "ω",
        ["Gamma"] = "Γ", ["Delta"] = "Δ", ["Theta"] = "Θ", ["Lambda"] = "Λ", ["Xi"] = "Ξ", ["Pi"] = "Π", ["Sigma"] = "Σ",
        ["Phi"] = "Φ", ["Psi"] = "Ψ", ["Omega"] = "Ω", ["ell"] = "ℓ", ["partial"] = "∂",
    }.ToFrozenDictionary();

    internal static readonly FrozenDictionary<string, (string Text, SignKind Kind)> Signs = new Dictionary<string, (string, SignKind)>
    {
        ["cdot"] = ("·", SignKind.Binary), ["times"] = ("×", SignKind.Binary), ["pm"] = ("±", SignKind.Binary), ["mp"] = ("∓", SignKind.Binary),
        ["le"] = ("≤", SignKind.Relation), ["leq"] = ("≤", SignKind.Relation), ["ge"] = ("≥", SignKind.Relation),
        ["geq"] = ("≥", SignKind.Relation), ["lt"] = ("<", SignKind.Relation), ["gt"] = (">", SignKind.Relation),
        ["ne"] = ("≠", SignKind.Relation), ["neq"] = ("≠", SignKind.Relation), ["approx"] = ("≈", SignKind.Relation),
        ["sim"] = ("∼", SignKind.Relation), ["equiv"] = ("≡", SignKind.Relation), ["to"] = ("→", SignKind.Relation),
        ["rightarrow"] = ("→", SignKind.Relation), ["Rightarrow"] = ("⇒", SignKind.Relation), ["in"] = ("∈", SignKind.Relation),
        ["parallel"] = ("∥", SignKind.Relation), ["perp"] = ("⊥", SignKind.Relation), ["ll"] = ("≪", SignKind.Relation), ["gg"] = ("≫", SignKind.Relation),
        ["int"] = ("∫", SignKind.Large), ["oint"] = ("∮", SignKind.Large), ["sum"] = ("∑", SignKind.Large), ["prod"] = ("∏", SignKind.Large),
        ["infty"] = ("∞", SignKind.Plain), ["circ"] = ("°", SignKind.Plain), ["degree"] = ("°", SignKind.Plain), ["prime"] = ("′", SignKind.Plain),
        ["ldots"] = ("…", SignKind.Plain), ["dots"] = ("…", SignKind.Plain), ["cdots"] = ("…", SignKind.Plain),
        ["lvert"] = ("|", SignKind.Open), ["rvert"] = ("|", SignKind.Close), ["lVert"] = ("‖", SignKind.Open), ["rVert"] = ("‖", SignKind.Close),
        ["langle"] = ("⟨", SignKind.Open), ["rangle"] = ("⟩", SignKind.Close), ["%"] = ("%", SignKind.Plain), ["&"] = ("&", SignKind.Plain),
        ["#"] = ("#", SignKind.Plain), ["_"] = ("_", SignKind.Plain), ["$"] = ("$", SignKind.Plain),
        ["{"] = ("{", SignKind.Open), ["}"] = ("}", SignKind.Close), ["|"] = ("‖", SignKind.Plain),
    }.ToFrozenDictionary();

    /// <summary>Function names; true where an index goes below the name (max over x).</summary>
    internal static readonly FrozenDictionary<string, bool> Functions = new Dictionary<string, bool>
    {
        ["sin"] = false, ["cos"] = false, ["tan"] = false, ["cot"] = false, ["sec"] = false, ["csc"] = false, ["arctan"] = false,
        ["arcsin"] = false, ["arccos"] = false, ["sinh"] = false, ["cosh"] = false, ["tanh"] = false, ["ln"] = false, ["log"] = false,
        ["exp"] = false, ["det"] = false, ["max"] = true, ["min"] = true, ["lim"] = true,
    }.ToFrozenDictionary();

    internal static readonly FrozenDictionary<string, double> Spaces = new Dictionary<string, double>
    {
        [","] = 0.17, [":"] = 0.22, [";"] = 0.28, [" "] = 0.25, ["quad"] = 1, ["qquad"] = 2, ["!"] = 0, ["\\"] = 1,
    }.ToFrozenDictionary();

    internal static readonly FrozenDictionary<string, char> Accents = new Dictionary<string, char>
    {
        ["bar"] = '\u0304', ["overline"] = '\u0304', ["hat"] = '\u0302', ["tilde"] = '\u0303', ["vec"] = '\u20D7', ["dot"] = '\u0307', ["ddot"] = '\u0308',
    }.ToFrozenDictionary();

    /// <summary>Commands that only change size or style and take no part in the meaning.</summary>
    internal static readonly FrozenSet<string> Ignored =
        new[] { "displaystyle", "textstyle", "scriptstyle", "big", "Big", "bigl", "bigr", "Bigl", "Bigr", "limits", "nolimits", "left.", "right." }.ToFrozenSet();

    /// <summary>Brackets of the matrix environments.</summary>
    internal static readonly FrozenDictionary<string, (string Open, string Close)> Grids = new Dictionary<string, (string, string)>
    {
        ["matrix"] = ("", ""), ["pmatrix"] = ("(", ")"), ["bmatrix"] = ("[", "]"), ["vmatrix"] = ("|", "|"), ["cases"] = ("{", ""),
        ["aligned"] = ("", ""), ["array"] = ("", ""),
    }.ToFrozenDictionary();
}
