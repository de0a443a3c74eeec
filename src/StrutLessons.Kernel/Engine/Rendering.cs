using System.Text.RegularExpressions;
using Microsoft.DotNet.Interactive.Formatting;
using StrutLessons.Notebook;
using StrutLessons.Notebook.Controls;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Turns a value into what is shown. The lessons' own values are asked first; the engine's formatters serve the rest.
/// </summary>
internal static partial class Rendering
{
    // The engine formats every value before it hands it over, and knows one preferred type per .NET type.
    // A type of ours that costs nothing to write keeps it from doing work that is thrown away.
    private const string Undecided = "application/x-undecided";

    /// <summary>Tells the engine to leave the choice to <see cref="Parts"/>.</summary>
    internal static void Install()
    {
        Formatter.Register<object>((_, _) => true, Undecided);
        Formatter.SetPreferredMimeTypesFor(typeof(object), Undecided);
    }

    /// <summary>Every form in which a value is shown, the preferred one first.</summary>
    /// <param name="value">The value of a cell or a displayed value.</param>
    /// <param name="formatted">What the engine's own formatters made of it; kept where they know better.</param>
    /// <param name="views">Keeps the live views among the values; null where none is expected.</param>
    internal static IReadOnlyList<ShownPart> Parts(object? value, IReadOnlyCollection<FormattedValue> formatted, LiveViews? views = null)
    {
        if (formatted.Count > 0 && formatted.All(form => form.MimeType != Undecided))
        {
            return [.. formatted.Select(form => new ShownPart(form.MimeType, form.Value))];
        }
        if (value is null)
        {
            return [new ShownPart(PlainTextFormatter.MimeType, "null")];
        }
        try
        {
            return value is LiveView view && views is not null ? views.Show(view) : Showing.Show(value) ?? Default(value);
        }
#pragma warning disable CA1031 // Showing a value runs code of the value; whatever it throws belongs into the cell's output.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            return [new ShownPart(PlainTextFormatter.MimeType, $"The value of type {value.GetType().Name} cannot be shown: {failure.Message}")];
        }
    }

    private static IReadOnlyList<ShownPart> Default(object value)
    {
        var text = new ShownPart(PlainTextFormatter.MimeType, value.ToDisplayString());
        var type = value.GetType();
        var isPlain = type.IsPrimitive || type.IsEnum || value is string or decimal or DateTime or TimeSpan;
        return isPlain ? [text] : [new ShownPart(HtmlFormatter.MimeType, Unstyled(value.ToDisplayString(HtmlFormatter.MimeType))), text];
    }

    /// <summary>The engine repeats its style sheet under every value; pages and front ends have their own.</summary>
    private static string Unstyled(string html) => EngineStyle().Replace(html, "");

    [GeneratedRegex(@"<style>\s*\.dni-code-hint.*?</style>\s*$", RegexOptions.Singleline)]
    private static partial Regex EngineStyle();
}
