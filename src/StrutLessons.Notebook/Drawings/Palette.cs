using System.Text;

namespace StrutLessons.Notebook.Drawings;

/// <summary>
/// Colours of drawings and charts. They differ in lightness as well as in hue, so that greyscale print and colour-blind
/// eyes keep them apart; lines differ in dash and marker on top of that.
/// </summary>
/// <remarks>
/// Inside the SVG stand fixed colours on white paper: a front end that shows the SVG as an image (JupyterLab does) hands no
/// style down to it, and a drawing without paper would vanish on its dark page. A page that puts the SVG inline includes
/// <see cref="PageCss"/>; its rules outrank the fixed colours, make the paper transparent, take the words' colour
/// from the page and follow the reader's light or dark setting.
/// </remarks>
public static class Palette
{
    private static readonly (Ink Ink, string Name, string Light, string Dark)[] Colours =
    [
        (Ink.Text, "text", "#1b1f24", "#e8eaed"),
        (Ink.Soft, "soft", "#5f6771", "#a3abb5"),
        (Ink.Grid, "grid", "#dfe3e8", "#3a4149"),
        (Ink.Sheet, "sheet", "#ffffff", "#15191c"),
        (Ink.Steel, "steel", "#cfd6de", "#4a5561"),
        (Ink.Plate, "plate", "#ece5d3", "#3d3a2f"),
        (Ink.Force, "force", "#b3360b", "#ff9a6b"),
        (Ink.Compression, "compression", "#0a5fa8", "#6cb6ff"),
        (Ink.Tension, "tension", "#c95100", "#ffa657"),
        (Ink.Major, "major", "#007a5e", "#4fd1a5"),
        (Ink.Minor, "minor", "#83327a", "#e29ade"),
        (Ink.Fifth, "fifth", "#3c4248", "#c9d1d9"),
    ];

    /// <summary>Style rules for a page that shows drawings inline. The variables can be set again by the page.</summary>
    public static string PageCss { get; } = MakeCss();

    /// <summary>
    /// The style variable that stands for each fixed colour. The colours of a chart are data, out of reach of style rules;
    /// a page's script puts the variable's value in their place.
    /// </summary>
    public static IReadOnlyDictionary<string, string> PageVariables { get; } = Colours.ToDictionary(c => c.Light, c => "--sl-" + c.Name);

    internal static string Colour(Ink ink) => ink == Ink.None ? "none" : Find(ink).Light;

    internal static string Name(Ink ink) => Find(ink).Name;

    private static (Ink Ink, string Name, string Light, string Dark) Find(Ink ink) => Array.Find(Colours, c => c.Ink == ink);

    private static string MakeCss()
    {
        var css = new StringBuilder(":root{--sl-paper:transparent;").Append(Variables(c => c.Light)).Append("}\n")
            .Append("@media (prefers-color-scheme:dark){:root{").Append(Variables(c => c.Dark)).Append("}}\n")
            .Append("@media print{:root{").Append(Variables(c => c.Light)).Append("}}\n")
            .Append(".sl-paper{fill:var(--sl-paper)}");
        foreach ((Ink ink, string name, _, _) in Colours)
        {
            string value = ink == Ink.Text ? "currentColor" : $"var(--sl-{name})";
            css.Append($".sl-f-{name}{{fill:{value}}}.sl-s-{name}{{stroke:{value}}}");
        }

        return css.Append('\n').ToString();
    }

    private static string Variables(Func<(Ink Ink, string Name, string Light, string Dark), string> shade) =>
        string.Concat(Colours.Select(c => $"--sl-{c.Name}:{shade(c)};"));
}
