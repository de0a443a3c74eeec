using System.Text.RegularExpressions;

namespace StrutLessons.Desk.Site;

/// <summary>Makes an SVG document fit to stand among others on one page: its ids are made unique, its prologue is dropped.</summary>
internal static partial class SvgInline
{
    /// <summary>The SVG element with every id, and every reference to one, carrying the prefix.</summary>
    internal static string Prepare(string svg, string prefix)
    {
        var start = svg.IndexOf("<svg", StringComparison.Ordinal);
        var element = start > 0 ? svg[start..] : svg;
        element = Id().Replace(element, match => match.Groups[1].Value + prefix + match.Groups[2].Value);
        element = ReferencePrefix().Replace(element, match => match.Value + prefix);
        element = IdList().Replace(element, match =>
            match.Groups[1].Value + string.Join(' ', match.Groups[2].Value.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(id => prefix + id)));
        return element.StartsWith("<svg", StringComparison.Ordinal) && !OpeningRole().IsMatch(element)
            ? "<svg role=\"img\"" + element[4..]
            : element;
    }

    [GeneratedRegex(@"(\sid=[""'])([^""']+)")]
    private static partial Regex Id();

    [GeneratedRegex(@"url\([""']?#|href=[""']#")]
    private static partial Regex ReferencePrefix();

    [GeneratedRegex(@"(aria-(?:labelledby|describedby)=[""'])([^""']+)")]
    private static partial Regex IdList();

    [GeneratedRegex(@"^<svg[^>]*\srole=")]
    private static partial Regex OpeningRole();
}
