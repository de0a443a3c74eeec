using System.Collections.Immutable;

namespace StrutLessons.Notebook.Maths;

/// <summary>A piece of a formula, read from TeX; from here it becomes plain text, MathML or the runs of a drawing's label.</summary>
internal abstract record MathNode
{
    /// <summary>Pieces side by side.</summary>
    internal sealed record Row(ImmutableArray<MathNode> Items) : MathNode;

    /// <summary>A symbol or the name of a function. Upright for names, units and functions.</summary>
    internal sealed record Name(string Text, bool Upright) : MathNode;

    /// <summary>The name of a function such as sin, which takes what follows as its argument.</summary>
    internal sealed record Function(string Text, bool LimitsBelow) : MathNode;

    /// <summary>A number as it stands in the formula.</summary>
    internal sealed record Number(string Text) : MathNode;

    /// <summary>An operator, a relation, a bracket or a punctuation mark.</summary>
    internal sealed record Sign(string Text, SignKind Kind) : MathNode;

    /// <summary>Ordinary words inside a formula.</summary>
    internal sealed record Words(string Text) : MathNode;

    /// <summary>Blank of a width in em.</summary>
    internal sealed record Space(double Em) : MathNode;

    /// <summary>A fraction.</summary>
    internal sealed record Fraction(MathNode Over, MathNode Under) : MathNode;

    /// <summary>A root; the degree is null for a square root.</summary>
    internal sealed record Root(MathNode Radicand, MathNode? Degree) : MathNode;

    /// <summary>A base with an index below, an exponent above, or both.</summary>
    internal sealed record Script(MathNode Base, MathNode? Below, MathNode? Above) : MathNode;

    /// <summary>A symbol under a bar, hat or tilde, given as the combining character.</summary>
    internal sealed record Accent(MathNode Base, char Mark) : MathNode;

    /// <summary>Brackets that grow with what they hold; an empty string is a missing bracket.</summary>
    internal sealed record Fence(string Open, MathNode Body, string Close) : MathNode;

    /// <summary>Rows and columns: a matrix, or the lines of an aligned formula.</summary>
    internal sealed record Grid(string Open, ImmutableArray<ImmutableArray<MathNode>> Rows, string Close) : MathNode;
}

/// <summary>How a sign behaves towards its neighbours.</summary>
internal enum SignKind
{
    /// <summary>Between two terms, or in front of one: + − · ×.</summary>
    Binary,

    /// <summary>Between two sides: = ≤ ≈.</summary>
    Relation,

    /// <summary>Opens a bracket.</summary>
    Open,

    /// <summary>Closes a bracket.</summary>
    Close,

    /// <summary>Separates: comma, semicolon.</summary>
    Comma,

    /// <summary>Large operator: integral, sum.</summary>
    Large,

    /// <summary>Behaves like a letter: ∞, |, /, !.</summary>
    Plain,
}
