using System.Collections.Immutable;
using System.Xml.Linq;

namespace StrutLessons.Notebook.Maths;

/// <summary>
/// Turns a formula into MathML, which every present browser typesets by itself: no script, no network, and a screen reader can read it.
/// </summary>
internal static class MathMarkup
{
    // Faces with mathematical metrics: one of them ships with Windows, macOS and most Linux desktops each; "math" is the browser's own choice.
    private const string Fonts = "font-family:'Latin Modern Math','STIX Two Math','Cambria Math','DejaVu Math TeX Gyre',math";

    /// <summary>A math element with fractions at full size; the TeX rides along as an annotation, for copying.</summary>
    internal static XElement FromTex(string tex) =>
        new("math", new XAttribute("displaystyle", "true"), new XAttribute("style", Fonts), new XElement("semantics", Group(TexReader.Read(tex)),
            new XElement("annotation", new XAttribute("encoding", "application/x-tex"), tex)));

    private static XElement Group(MathNode node) => new("mrow", Elements(node));

    private static XElement Single(MathNode node)
    {
        XElement[] elements = [.. Elements(node)];
        return elements.Length == 1 ? elements[0] : new XElement("mrow", elements);
    }

    private static IEnumerable<XElement> Elements(MathNode node) => node switch
    {
        MathNode.Row row => RowElements(row.Items),
        MathNode.Name name => [Identifier(name.Text, name.Upright)],
        MathNode.Function function => [new XElement("mi", function.Text)],
        MathNode.Number number => [new XElement("mn", number.Text)],
        MathNode.Sign sign => [SignElement(sign)],
        MathNode.Words words => [new XElement("mtext", words.Text.Replace(' ', '\u00A0'))],
        MathNode.Space space => [new XElement("mspace", new XAttribute("width", FormattableString.Invariant($"{space.Em}em")))],
        MathNode.Fraction f => [new XElement("mfrac", Group(f.Over), Group(f.Under))],
        MathNode.Root { Degree: null } root => [new XElement("msqrt", Elements(root.Radicand))],
        MathNode.Root root => [new XElement("mroot", Group(root.Radicand), Group(root.Degree!))],
        MathNode.Script script => [ScriptElement(script)],
        MathNode.Accent accent => [new XElement("mover", new XAttribute("accent", "true"), Single(accent.Base), new XElement("mo", Standing(accent.Mark)))],
        MathNode.Fence fence => [new XElement("mrow", Bracket(fence.Open), Elements(fence.Body), Bracket(fence.Close))],
        MathNode.Grid grid => [new XElement("mrow", Bracket(grid.Open), Table(grid.Rows), Bracket(grid.Close))],
        _ => [],
    };

    /// <summary>A function and its argument stand apart unless a bracket keeps them apart.</summary>
    private static IEnumerable<XElement> RowElements(ImmutableArray<MathNode> items)
    {
        for (int i = 0; i < items.Length; i++)
        {
            if (i > 0 && IsFunction(items[i]) && items[i - 1] is not (MathNode.Sign or MathNode.Space))
            {
                yield return Thin();
            }

            foreach (XElement element in Elements(items[i]))
            {
                // A minus in front of a number is a sign, not a difference: no blank after it.
                if (items[i] is MathNode.Sign { Kind: SignKind.Binary } && (i == 0 || items[i - 1] is MathNode.Sign { Kind: not (SignKind.Close or SignKind.Plain) }))
                {
                    element.Add(new XAttribute("form", "prefix"));
                }

                yield return element;
            }

            if (IsFunction(items[i]) && i + 1 < items.Length && items[i + 1] is not (MathNode.Fence or MathNode.Sign { Kind: SignKind.Open }))
            {
                yield return Thin();
            }
        }
    }

    private static bool IsFunction(MathNode node) => node is MathNode.Function or MathNode.Script { Base: MathNode.Function };

    private static XElement Thin() => new("mspace", new XAttribute("width", "0.17em"));

    private static XElement Identifier(string text, bool upright) =>
        upright && text.Length == 1 ? new XElement("mi", new XAttribute("mathvariant", "normal"), text) : new XElement("mi", text);

    private static XElement SignElement(MathNode.Sign sign) => sign.Kind switch
    {
        SignKind.Plain when sign.Text is "°" or "%" or "∞" or "…" => Identifier(sign.Text, true),
        SignKind.Open or SignKind.Close => new XElement("mo", new XAttribute("stretchy", "false"), sign.Text),
        SignKind.Plain when sign.Text is "|" or "/" =>
            new XElement("mo", new XAttribute("stretchy", "false"), new XAttribute("lspace", "0"), new XAttribute("rspace", "0"), sign.Text),
        _ => new XElement("mo", sign.Text),
    };

    private static XElement ScriptElement(MathNode.Script script)
    {
        bool limits = script.Base is MathNode.Function { LimitsBelow: true } or MathNode.Sign { Text: "∑" or "∏" };
        XElement under = Single(script.Base);
        if (script.Above is MathNode.Sign { Kind: SignKind.Plain } prime && (prime.Text.StartsWith('′') || prime.Text == "°"))
        {
            // Prime and degree of a text face stand high already; raised once more they would shrink to a dot.
            under = new XElement("mrow", under, new XElement("mo", new XAttribute("lspace", "0"), new XAttribute("rspace", "0"), prime.Text == "′′" ? "″" : prime.Text));
            script = script with { Above = null };
        }

        return (script.Below, script.Above) switch
        {
            ({ } below, { } above) => new XElement(limits ? "munderover" : "msubsup", under, Single(below), Single(above)),
            ({ } below, null) => new XElement(limits ? "munder" : "msub", under, Single(below)),
            (null, { } above) => new XElement("msup", under, Single(above)),
            _ => under,
        };
    }

    private static XElement? Bracket(string text) => text.Length == 0 ? null : new XElement("mo", new XAttribute("stretchy", "true"), text);

    private static XElement Table(ImmutableArray<ImmutableArray<MathNode>> rows) =>
        new("mtable", rows.Select(row => new XElement("mtr", row.Select(cell => new XElement("mtd", Elements(cell))))));

    private static string Standing(char mark) => mark switch
    {
        '\u0304' => "¯",
        '\u0302' => "^",
        '\u0303' => "~",
        '\u20D7' => "→",
        '\u0307' => "˙",
        _ => "¨",
    };
}
