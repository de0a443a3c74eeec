using System.Reflection;
using System.Text;
using System.Text.Json;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Desk.Site;

/// <summary>The files that pages refer to, carried inside the program: written beside finished pages, or served to live ones.</summary>
internal static class SiteAssets
{
    private const string PlotlyResource = "Plotly.NET.plotly-2.28.0.min.js";

    /// <summary>The chart library's file below the third-party folder.</summary>
    internal const string PlotlyFile = "plotly/plotly-2.28.0.min.js";

    /// <summary>Names of all files, with forward slashes.</summary>
    internal static IReadOnlyList<string> Names { get; } =
        [.. typeof(SiteAssets).Assembly.GetManifestResourceNames(), .. ChartFiles.Select(file => file.Name)];

    private static IEnumerable<(string Name, string Resource)> ChartFiles =>
        [($"third-party/{PlotlyFile}", PlotlyResource), ($"third-party/{PlotlyFile}.LICENSE.txt", PlotlyResource + ".LICENSE.txt")];

    /// <summary>Writes style sheet, script, icon and typesetter; the chart library only if a page needs it.</summary>
    internal static void WriteTo(string folder, bool withCharts)
    {
        foreach (var name in Names.Where(name => !IsForLivePages(name) && (withCharts || !name.StartsWith("third-party/plotly/", StringComparison.Ordinal))))
        {
            var target = Path.Combine(folder, name);
            Directory.CreateDirectory(Path.GetDirectoryName(target)!);
            File.WriteAllBytes(target, Read(name));
        }
    }

    /// <summary>The content of a file.</summary>
    /// <param name="name">One of <see cref="Names"/>.</param>
    internal static byte[] Read(string name) => name switch
    {
        // Drawings stand inline on the pages; their colours follow the page's light or dark setting.
        "site.css" => [.. Own(name), .. Encoding.UTF8.GetBytes("\n/* Drawings */\n" + Palette.PageCss)],
        "site.js" => [.. Encoding.UTF8.GetBytes($"const inks = {JsonSerializer.Serialize(Palette.PageVariables)};\n"), .. Own(name)],
        _ when ChartFiles.FirstOrDefault(file => file.Name == name).Resource is { } resource => Bytes(typeof(Plotly.NET.GenericChart).Assembly, resource),
        _ => Own(name),
    };

    private static bool IsForLivePages(string name) =>
        name.StartsWith("live", StringComparison.Ordinal) || name.StartsWith("third-party/codemirror/", StringComparison.Ordinal);

    private static byte[] Own(string name) => Bytes(typeof(SiteAssets).Assembly, name);

    private static byte[] Bytes(Assembly source, string name)
    {
        using var content = source.GetManifestResourceStream(name) ?? throw new FileNotFoundException($"The program lacks its part {name}.");
        using var bytes = new MemoryStream();
        content.CopyTo(bytes);
        return bytes.ToArray();
    }
}
