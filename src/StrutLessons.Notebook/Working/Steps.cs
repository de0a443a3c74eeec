using System.Collections.Immutable;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Working;

/// <summary>
/// The worked steps of a result, ready to be shown: <c>Steps.Of(section).Only("c_y", "c_z")</c>.
/// Immutable; every method returns a new list of steps.
/// </summary>
/// <remarks>
/// Forms sent: text/html, text/latex, text/plain. Jupyter front ends choose html before latex, so the html must show typeset
/// mathematics by itself: it carries MathML, which all present browsers typeset without script, network or mathematics
/// service, and which therefore looks the same in a live page, a saved page and a notebook. The latex form is for front ends
/// and converters that take no html (printing through TeX); the plain form is for a terminal.
/// </remarks>
public sealed record Steps : IShown
{
    private Steps(ImmutableArray<WorkedStep> items, ImmutableHashSet<int> asked)
    {
        Items = items;
        Asked = asked;
    }

    /// <summary>The steps in the order of the calculation.</summary>
    public IReadOnlyList<WorkedStep> Items { get; }

    /// <summary>Positions in <see cref="Items"/> whose numbers and value stay folded until the reader opens them.</summary>
    internal ImmutableHashSet<int> Asked { get; }

    /// <summary>All steps of a result.</summary>
    /// <exception cref="ArgumentNullException">No result.</exception>
    public static Steps Of(IWorked result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new([.. result.WorkedSteps()], []);
    }

    /// <summary>Only the steps with these symbols, in the order asked for. Blanks and braces in a symbol do not matter.</summary>
    /// <exception cref="InputException">A symbol that no step has.</exception>
    public Steps Only(params IReadOnlyList<string> symbols) => new([.. Positions(symbols).Select(i => Items[i])], []);

    /// <summary>The same steps with numbers and value of these symbols folded away: the reader computes first, then looks.</summary>
    /// <exception cref="InputException">A symbol that no step has.</exception>
    public Steps Ask(params IReadOnlyList<string> symbols) => new([.. Items], Asked.Union(Positions(symbols)));

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() =>
    [
        new("text/html", StepsHtml.Write(this)),
        new("text/latex", StepsLatex.Write(this)),
        new("text/plain", StepsPlain.Write(this)),
    ];

    /// <summary>The steps as plain text.</summary>
    public override string ToString() => StepsPlain.Write(this);

    private IEnumerable<int> Positions(IReadOnlyList<string> symbols)
    {
        foreach (string symbol in symbols)
        {
            int[] found = [.. Enumerable.Range(0, Items.Count).Where(i => Key(Items[i].Symbol) == Key(symbol))];
            if (found.Length == 0)
            {
                throw new InputException("symbol", $"'{symbol}'", "one of " + string.Join(", ", Items.Select(s => s.Symbol).Distinct()),
                    "Choose the symbol of a step; Steps.Of(...) without Only shows them all.");
            }

            foreach (int i in found)
            {
                yield return i;
            }
        }
    }

    /// <summary>Two spellings of a symbol are the same if they read the same: <c>\lambda_v</c>, <c>λ_v</c>, <c>\lambda_{v}</c>.</summary>
    private static string Key(string symbol) => PlainMaths.FromTex(symbol).Replace(" ", "", StringComparison.Ordinal);
}
