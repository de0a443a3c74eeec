using System.Collections.Immutable;
using System.Globalization;
using System.Xml.Linq;
using StrutLessons.Notebook.Charts;
using StrutLessons.Notebook.Drawings;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Tables;

/// <summary>
/// A small table of results: <c>Table.Of("Springs", "thickness (mm)", "$c$ (kNm/rad)").Row(10, 46.0)</c>. Numbers are written with
/// four significant digits and stand to the right. Immutable; every method returns a new table.
/// </summary>
public sealed record Table : IShown
{
    private const string Cell = "border:0;border-bottom:1px solid rgba(128,128,128,.4);background:none;padding:.3em .7em .3em 0;";

    private Table(string title, ImmutableArray<string> columns, ImmutableArray<ImmutableArray<object>> rows)
    {
        Title = title;
        Columns = columns;
        Rows = rows;
    }

    /// <summary>Title above the table.</summary>
    public string Title { get; }

    /// <summary>Column heads with units; mathematics between dollar signs.</summary>
    public ImmutableArray<string> Columns { get; }

    /// <summary>The values: numbers or words.</summary>
    public ImmutableArray<ImmutableArray<object>> Rows { get; }

    /// <summary>A table without rows.</summary>
    /// <exception cref="InputException">No column.</exception>
    public static Table Of(string title, params IReadOnlyList<string> columns)
    {
        ArgumentNullException.ThrowIfNull(columns);
        return columns.Count > 0
            ? new(title, [.. columns], [])
            : throw new InputException("columns", "none", "at least one", "Name each column with its unit.");
    }

    /// <summary>Adds a row.</summary>
    /// <exception cref="InputException">Not as many values as columns.</exception>
    public Table Row(params IReadOnlyList<object> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        return values.Count == Columns.Length
            ? new(Title, Columns, Rows.Add([.. values]))
            : throw new InputException("row", $"{values.Count} values", $"{Columns.Length}, one for each column", "Add what is missing.");
    }

    /// <summary>Adds a row for each item.</summary>
    /// <exception cref="InputException">Not as many values as columns.</exception>
    public Table For<T>(IEnumerable<T> items, Func<T, IReadOnlyList<object>> row)
    {
        ArgumentNullException.ThrowIfNull(items);
        return items.Aggregate(this, (table, item) => table.Row(row(item)));
    }

    /// <inheritdoc/>
    public IReadOnlyList<ShownPart> Shown() => [new("text/html", Html()), new("text/plain", ToString())];

    /// <summary>The table with aligned columns, for a terminal.</summary>
    public override string ToString() =>
        $"{Label.Plain(Title)}\n{ChartText.Table([[.. Columns.Select(Label.Plain)], .. Written()])}".TrimEnd('\n');

    // A caption element would be squeezed to the width of a narrow table.
    private string Html() => new XElement("div", Style("overflow-x:auto;max-width:100%"),
        new XElement("div", Style("font-weight:600;margin-top:.4em"), Rich(Title)),
        new XElement("table", new XAttribute("aria-label", Label.Plain(Title)), Style("border-collapse:collapse;border:0;margin:.4em 0;font-size:1em"),
            new XElement("thead", new XElement("tr", Columns.Select((c, i) =>
                new XElement("th", new XAttribute("scope", "col"), Style(Cell + "vertical-align:bottom;" + Align(i)), Rich(c))))),
            new XElement("tbody", Rows.Zip(Written(), (r, written) => new XElement("tr", Style("background:none"),
                r.Select((v, i) => new XElement("td", Style(Cell + Align(i)), v is string words ? Rich(words) : written[i]))))))).ToString(SaveOptions.DisableFormatting);

    /// <summary>All values as plain words; the numbers of a column agree in their decimals.</summary>
    private string[][] Written()
    {
        string[][] written = [.. Rows.Select(r => r.Select(Words).ToArray())];
        for (int column = 0; column < Columns.Length; column++)
        {
            int[] numbers = [.. Enumerable.Range(0, Rows.Length).Where(row => Rows[row][column] is double and not double.NaN)];
            IReadOnlyList<string> texts = Figures.Column([.. numbers.Select(row => (double)Rows[row][column])]);
            for (int i = 0; i < numbers.Length; i++)
            {
                written[numbers[i]][column] = texts[i];
            }
        }
        return written;
    }

    private string Align(int column) => Rows.Length > 0 && Rows.All(r => r[column] is not (string or Enum)) ? "text-align:right" : "text-align:left";

    private static IEnumerable<object> Rich(string text) =>
        text.Split('$').Select((part, i) => i % 2 == 1 ? (object)MathMarkup.FromTex(part) : Joined(part));

    /// <summary>Names of axes such as v–v are not broken at their dash, names of angles not behind their L, numbers not before their percent sign.</summary>
    private static string Joined(string words) => string.Concat(words.Select((c, i) => (i > 0 && i + 1 < words.Length ? (words[i - 1], c, words[i + 1]) : default) switch
    {
        (var before, '–', var after) when char.IsLetter(before) && char.IsLetter(after) => "\u2060–\u2060",
        (>= '0' and <= '9', ' ', '%') or ('L', ' ', >= '0' and <= '9') => "\u00a0",
        _ => c.ToString(),
    }));

    private static string Words(object value) => value switch
    {
        string text => Label.Plain(text),
        Enum name => Spaced(name.ToString()),
        // Numbers are written column by column; what is left is no number.
        double => "–",
        IFormattable other => other.ToString(null, CultureInfo.InvariantCulture),
        _ => value.ToString() ?? "",
    };

    /// <summary>The name of a choice as words: <c>GussetMidPlane</c> reads "gusset mid plane".</summary>
    private static string Spaced(string name) =>
        string.Concat(name.Select((c, i) => i > 0 && char.IsUpper(c) ? " " + char.ToLowerInvariant(c) : char.ToLowerInvariant(c).ToString()));

    private static XAttribute Style(string css) => new("style", css);
}
