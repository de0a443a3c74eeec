using System.Collections.Immutable;
using System.Text;

namespace StrutLessons.Notebook.Maths;

/// <summary>Turns a formula into one line of readable text: Greek letters, a/b with brackets where needed, √, superscripts.</summary>
internal static class PlainMaths
{
    private const string Raised = "⁰¹²³⁴⁵⁶⁷⁸⁹";

    /// <summary>One line of text for a formula in TeX.</summary>
    internal static string FromTex(string tex) => Text(TexReader.Read(tex)).Trim();

    /// <summary>One line of text for a formula.</summary>
    internal static string Text(MathNode node) => node switch
    {
        MathNode.Row row => RowText(row.Items),
        MathNode.Name name => name.Text,
        MathNode.Function function => function.Text,
        MathNode.Number number => number.Text,
        MathNode.Sign sign => sign.Text,
        MathNode.Words words => words.Text,
        MathNode.Space space => space.Em < 0.2 ? "\u2009" : " ",
        MathNode.Fraction f => $"{Bracketed(f.Over, IsSum)}/{Bracketed(f.Under, n => IsSum(n) || IsProduct(n))}",
        MathNode.Root { Degree: null } root => "√" + Bracketed(root.Radicand, n => n is MathNode.Row or MathNode.Fraction),
        MathNode.Root root => $"({Text(root.Radicand)})^(1/{Text(root.Degree!)})",
        MathNode.Script script => ScriptText(script),
        MathNode.Accent accent => AccentText(accent),
        MathNode.Fence fence => fence.Open + Text(fence.Body) + fence.Close,
        MathNode.Grid grid => grid.Open + string.Join("; ", grid.Rows.Select(r => string.Join(", ", r.Select(Text)))) + grid.Close,
        _ => "",
    };

    private static string RowText(ImmutableArray<MathNode> items)
    {
        var text = new StringBuilder();
        for (int i = 0; i < items.Length; i++)
        {
            MathNode item = items[i];
            string piece = Text(item);
            if (item is MathNode.Sign { Kind: SignKind.Binary or SignKind.Relation } sign)
            {
                bool leading = sign.Kind == SignKind.Binary && (i == 0 || IsOpening(items[i - 1]));
                piece = leading || i == items.Length - 1 ? piece : $" {piece} ";
            }
            else if (i > 0 && NeedsBlank(items[i - 1], item))
            {
                text.Append(' ');
            }

            text.Append(piece);
            if (item is MathNode.Sign { Kind: SignKind.Comma })
            {
                text.Append(' ');
            }
        }

        return string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private static bool IsOpening(MathNode node) =>
        node is MathNode.Sign { Kind: SignKind.Open or SignKind.Binary or SignKind.Relation or SignKind.Comma };

    /// <summary>A blank stands between two factors, so that E I reads as a product and not as a word.</summary>
    private static bool NeedsBlank(MathNode left, MathNode right) =>
        left is MathNode.Function or MathNode.Script { Base: MathNode.Function } && right is not (MathNode.Fence or MathNode.Sign { Kind: SignKind.Open }) ||
        EndsFactor(left) && right is MathNode.Function ||
        EndsFactor(left) && StartsFactor(right);

    private static bool EndsFactor(MathNode node) =>
        node is MathNode.Name or MathNode.Words or MathNode.Number or MathNode.Fraction or MathNode.Root or MathNode.Script or MathNode.Accent or MathNode.Fence
            or MathNode.Sign { Kind: SignKind.Close };

    private static bool StartsFactor(MathNode node) =>
        node is MathNode.Name or MathNode.Words or MathNode.Number or MathNode.Fraction or MathNode.Root or MathNode.Accent
        || node is MathNode.Script script && (StartsFactor(script.Base) || script.Base is MathNode.Function)
        || node is MathNode.Sign { Kind: SignKind.Large };

    private static string ScriptText(MathNode.Script script)
    {
        string text = Bracketed(script.Base, n => n is MathNode.Row { Items.Length: > 1 } or MathNode.Fraction);
        if (script.Below is not null)
        {
            string below = Text(script.Below);
            text += below.All(c => char.IsLetterOrDigit(c) || c == '\u0304') ? "_" + below
                : below.All(c => char.IsLetterOrDigit(c) || c is ',' or ' ') ? "_" + below.Replace(" ", "", StringComparison.Ordinal)
                : $"_({below})";
        }

        return script.Above is null ? text : text + RaisedText(Text(script.Above));
    }

    private static string RaisedText(string above)
    {
        if (above.All(c => c is '′' or '°'))
        {
            return above.Replace("′′", "″", StringComparison.Ordinal);
        }

        string digits = above.TrimStart('−');
        if (digits.Length > 0 && digits.All(char.IsAsciiDigit))
        {
            return (digits.Length < above.Length ? "⁻" : "") + string.Concat(digits.Select(c => Raised[c - '0']));
        }

        return above.Length == 1 ? "^" + above : $"^({above})";
    }

    private static string AccentText(MathNode.Accent accent)
    {
        // The combining mark follows the letter itself, in front of an index.
        if (accent.Base is MathNode.Script script)
        {
            return ScriptText(script with { Base = accent with { Base = script.Base } });
        }

        string under = Text(accent.Base);
        return under.Length == 0 ? "" : under.Insert(1, accent.Mark.ToString());
    }

    private static string Bracketed(MathNode node, Func<MathNode, bool> needs) => needs(node) ? $"({Text(node)})" : Text(node);

    private static bool IsSum(MathNode node) =>
        node is MathNode.Row row && row.Items.Any(i => i is MathNode.Sign { Kind: SignKind.Binary or SignKind.Relation, Text: not ("·" or "×") });

    private static bool IsProduct(MathNode node) =>
        node is MathNode.Fraction || node is MathNode.Row row && row.Items.Count(i => i is not MathNode.Space) > 1;
}
