using System.Text.Json;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using StrutLessons.Kernel.Player;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Notebook.Tests.Lessons;

/// <summary>
/// The figures of a played lesson: there is at least one with axis titles and units. A chart names quantity and unit on each
/// axis, "deflection v, mm" or "N (kN)", with "-" for a pure number; categories need no unit. A drawing carries a text for those
/// who cannot see it, and says its unit if it is the only figure.
/// </summary>
internal static partial class LessonFigures
{
    private const string Plotly = "application/vnd.plotly.v1+json";
    private const string Svg = "image/svg+xml";

    internal static IReadOnlyList<string> Faults(PlayedLesson lesson)
    {
        var faults = new List<string>();
        var figuresWithUnits = 0;
        foreach (var cell in lesson.Cells)
        {
            foreach (var shown in (cell.Run?.Outputs ?? []).OfType<ShownOutput>())
            {
                if (shown.Content(Plotly) is { } chart)
                {
                    var found = ChartFaults(chart, $"The chart of cell '{cell.Cell.Id}'").ToArray();
                    faults.AddRange(found);
                    figuresWithUnits += found.Length == 0 ? 1 : 0;
                    if (shown.Content(Svg) is null)
                    {
                        faults.Add($"The chart of cell '{cell.Cell.Id}' has no still picture for paper and plain front ends.");
                    }
                }
                if (shown.Content(Svg) is { } drawing)
                {
                    var svg = XDocument.Parse(drawing).Root!;
                    if (!HasWords(svg))
                    {
                        faults.Add($"The drawing of cell '{cell.Cell.Id}' has no title, description or label for those who cannot see it.");
                    }
                    figuresWithUnits += Unit().IsMatch(string.Join(" ; ", svg.Descendants().Where(e => e.Name.LocalName is "text" or "title" or "desc").Select(e => e.Value))) ? 1 : 0;
                }
            }
        }
        if (figuresWithUnits == 0)
        {
            faults.Add("The lesson shows no figure with axis titles and units.");
        }
        return faults;
    }

    private static IEnumerable<string> ChartFaults(string json, string name)
    {
        using var chart = JsonDocument.Parse(json);
        var layout = chart.RootElement.GetProperty("layout");
        var axes = layout.EnumerateObject().Where(member => member.Name.StartsWith("xaxis", StringComparison.Ordinal)
            || member.Name.StartsWith("yaxis", StringComparison.Ordinal)).ToArray();
        var hasScene = layout.TryGetProperty("scene", out _);
        if (axes.Length == 0 && !hasScene)
        {
            yield return $"{name} names none of its axes.";
        }
        foreach (var axis in axes.Where(axis => !HasCategories(chart.RootElement, axis.Name)))
        {
            var title = Title(axis.Value);
            if (title.Length == 0)
            {
                yield return $"{name} has no title on {axis.Name}.";
            }
            else if (!Unit().IsMatch(title))
            {
                yield return $"{name} has no unit in the title '{title}' of {axis.Name}; write the unit, or '-' for a pure number.";
            }
        }
    }

    /// <summary>True if the axis carries names instead of numbers.</summary>
    private static bool HasCategories(JsonElement chart, string axis) =>
        chart.GetProperty("data").EnumerateArray().Any(trace => trace.TryGetProperty(axis[..1], out var values)
            && values.ValueKind == JsonValueKind.Array && values.EnumerateArray().Any(value => value.ValueKind == JsonValueKind.String));

    private static string Title(JsonElement axis) => axis.TryGetProperty("title", out var title)
        ? title.ValueKind == JsonValueKind.String ? title.GetString()! : title.TryGetProperty("text", out var text) ? text.GetString() ?? "" : ""
        : "";

    private static bool HasWords(XElement svg) => svg.Attribute("aria-label") is not null
        || svg.Elements().Any(e => e.Name.LocalName is "title" or "desc" && e.Value.Length > 0);

    // The unit stands at the end of a title or in brackets, and after a number in a drawing.
    [GeneratedRegex(@"(?<![A-Za-z])(mm|cm|m|N|kN|MPa|GPa|rad|mrad|deg|°|kNm|kN m|N mm|%|µs|s|min)(/(rad|mm|m|kN|N))?([²³⁴⁶]|<sup>\d</sup>|\^\d)?(?![A-Za-z])|[\(\[,]\s*[-–−]\s*[\)\]]?$|[\(\[][-–−][\)\]]")]
    private static partial Regex Unit();
}
