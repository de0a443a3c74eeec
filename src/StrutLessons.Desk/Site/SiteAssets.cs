using System.Reflection;
using System.Text.Json;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Desk.Site;

/// <summary>The files that pages refer to, carried inside the program and written beside the pages.</summary>
internal static class SiteAssets
{
    private const string PlotlyResource = "Plotly.NET.plotly-2.28.0.min.js";

    /// <summary>The chart library's file below the third-party folder.</summary>
    internal const string PlotlyFile = "plotly/plotly-2.28.0.min.js";

    /// <summary>Writes style sheet, script, icon and typesetter; the chart library only if a page needs it.</summary>
    internal static void WriteTo(string folder, bool withCharts)
    {
        var own = typeof(SiteAssets).Assembly;
        foreach (var name in own.GetManifestResourceNames())
        {
            Copy(own, name, Path.Combine(folder, name));
        }
        // Drawings stand inline on the pages; their colours follow the page's light or dark setting.
        File.AppendAllText(Path.Combine(folder, "site.css"), "\n/* Drawings */\n" + Palette.PageCss);
        if (withCharts)
        {
            var inks = $"const inks = {JsonSerializer.Serialize(Palette.PageVariables)};\n";
            var script = Path.Combine(folder, "site.js");
            File.WriteAllText(script, inks + File.ReadAllText(script));
            var plotly = typeof(Plotly.NET.GenericChart).Assembly;
            var target = Path.Combine(folder, "third-party", PlotlyFile);
            Copy(plotly, PlotlyResource, target);
            Copy(plotly, PlotlyResource + ".LICENSE.txt", target + ".LICENSE.txt");
        }
    }

    private static void Copy(Assembly source, string name, string target)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(target)!);
        using var content = source.GetManifestResourceStream(name) ?? throw new FileNotFoundException($"The program lacks its part {name}.");
        using var file = File.Create(target);
        content.CopyTo(file);
    }
}
