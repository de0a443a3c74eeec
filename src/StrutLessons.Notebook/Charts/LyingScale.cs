using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook.Charts;

/// <summary>The scale below lying bars, with its grid, its numbers and its title.</summary>
/// <param name="Left">Left end of the plot, px.</param>
/// <param name="Right">Right end, px.</param>
/// <param name="Top">Upper end of the grid, px.</param>
/// <param name="Bottom">Lower end, px.</param>
/// <param name="Ticks">The numbers.</param>
/// <param name="Title">What is measured, with its unit.</param>
internal readonly record struct LyingScale(double Left, double Right, double Top, double Bottom, Ticks Ticks, string Title)
{
    /// <summary>Where a value lies, px.</summary>
    internal double Place(double value) => Left + (Right - Left) * (value - Ticks.From) / (Ticks.To - Ticks.From);

    internal IEnumerable<Mark> Marks()
    {
        for (int i = 0; i < Ticks.At.Count; i++)
        {
            double x = Place(Ticks.At[i]);
            yield return Stroke.Line(new Paper(x, Top), new Paper(x, Bottom), Ink.Grid, 1);
            yield return new Words(Ticks.Names[i], new Paper(x, Bottom + 18), Anchor.Middle, 12);
        }

        yield return new Words(Title, new Paper((Left + Right) / 2, Bottom + 42), Anchor.Middle, 13);
    }
}
