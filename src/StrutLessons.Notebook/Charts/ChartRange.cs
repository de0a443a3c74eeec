using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>The part of the plane a chart shows, with the ticks of both axes.</summary>
internal sealed record ChartRange(Ticks X, Ticks Y)
{
    internal static ChartRange Of(Chart chart)
    {
        IEnumerable<double> x = chart.Series.SelectMany(s => s.X).Concat(chart.Bands.SelectMany(b => b.X))
            .Concat(chart.Levels.Where(l => l.Vertical).Select(l => l.At)).Concat(chart.Remarks.Select(r => r.X));
        IEnumerable<double> y = chart.Series.SelectMany(s => s.Y).Concat(chart.Bands.SelectMany(b => b.Lower.Concat(b.Upper)))
            .Concat(chart.Levels.Where(l => !l.Vertical).Select(l => l.At)).Concat(chart.Remarks.Select(r => r.Y));
        return new ChartRange(Ticks.For(chart.XAxis, x, 8, tight: chart.Series.All(s => s.Kind == SeriesKind.Line)), Ticks.For(chart.YAxis, y, 6));
    }

    /// <summary>Where a pair of values lies in a rectangle of the paper.</summary>
    internal Paper At(Chart chart, Box area, double x, double y) => new(
        area.Left + area.Width * Share(x, X, chart.XAxis.Logarithmic),
        area.Bottom - area.Height * Share(y, Y, chart.YAxis.Logarithmic));

    internal static double Share(double value, Ticks ticks, bool logarithmic) => logarithmic
        ? Math.Log(value / ticks.From) / Math.Log(ticks.To / ticks.From)
        : (value - ticks.From) / (ticks.To - ticks.From);
}
