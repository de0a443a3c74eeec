using System.Collections.Immutable;
using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>How a series is drawn.</summary>
public enum SeriesKind
{
    /// <summary>A line without markers.</summary>
    Line,

    /// <summary>Markers without a line.</summary>
    Points,

    /// <summary>A line with a marker at every point.</summary>
    LineAndPoints,
}

/// <summary>A named row of points.</summary>
/// <param name="Name">Name for the legend; mathematics between dollar signs.</param>
/// <param name="X">Horizontal values.</param>
/// <param name="Y">Vertical values, as many; NaN interrupts the line.</param>
/// <param name="Kind">Line, markers or both.</param>
public sealed record Series(string Name, ImmutableArray<double> X, ImmutableArray<double> Y, SeriesKind Kind);

/// <summary>The area between two curves.</summary>
/// <param name="Name">Name for the legend.</param>
/// <param name="X">Horizontal values.</param>
/// <param name="Lower">Lower curve.</param>
/// <param name="Upper">Upper curve.</param>
public sealed record Band(string Name, ImmutableArray<double> X, ImmutableArray<double> Lower, ImmutableArray<double> Upper);

/// <summary>A point with a remark.</summary>
/// <param name="X">Horizontal value.</param>
/// <param name="Y">Vertical value.</param>
/// <param name="Text">The remark.</param>
public sealed record Remark(double X, double Y, string Text);

/// <summary>A line at one value, across the chart.</summary>
/// <param name="At">The value.</param>
/// <param name="Text">What it is.</param>
/// <param name="Vertical">True for a value of the horizontal axis.</param>
public sealed record Level(double At, string Text, bool Vertical);

/// <summary>Colour, dash and marker of a series by its place: any two neighbours differ in all three.</summary>
internal readonly record struct SeriesLook(Ink Ink, string Dash, string PlotlyDash, string PlotlyMarker)
{
    private static readonly SeriesLook[] Looks =
    [
        new(Ink.Compression, "", "solid", "circle"),
        new(Ink.Tension, "9 4", "dash", "square"),
        new(Ink.Major, "2 3", "dot", "diamond"),
        new(Ink.Minor, "10 3 2 3", "dashdot", "triangle-up"),
        new(Ink.Fifth, "16 4", "longdash", "x"),
    ];

    internal static SeriesLook Of(int index) => Looks[index % Looks.Length];

    /// <summary>The marker as marks on paper.</summary>
    internal Mark Marker(Paper at, double size)
    {
        double s = size;
        return PlotlyMarker switch
        {
            "circle" => new Disc(at, s, Ink, 1.4, Ink.Sheet),
            "square" => Shape(at, (-s, -s), (s, -s), (s, s), (-s, s)),
            "diamond" => Shape(at, (0, -1.3 * s), (1.3 * s, 0), (0, 1.3 * s), (-1.3 * s, 0)),
            "triangle-up" => Shape(at, (0, -1.2 * s), (1.2 * s, s), (-1.2 * s, s)),
            _ => Shape(at, (-s, -s), (0, -0.3 * s), (s, -s), (0.3 * s, 0), (s, s), (0, 0.3 * s), (-s, s), (-0.3 * s, 0)),
        };
    }

    private Stroke Shape(Paper at, params (double X, double Y)[] points) =>
        new([.. points.Select(p => at + new Paper(p.X, p.Y))], Ink, 1.4, "", true, Ink.Sheet);
}
