using System.Globalization;
using System.Net;

namespace StrutLessons.Notebook.Controls;

/// <summary>
/// A bar in the cell that grows while a long calculation runs: <c>RatioGrid.Run(struts, progress: ProgressBar.Show("Struts", struts.Count))</c>.
/// It may be told its place from several threads, in any order; it never goes back.
/// </summary>
public sealed class ProgressBar : IProgress<int>
{
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(150);

    private readonly string label;
    private readonly int total;
    private readonly ShownValue place;
    private readonly Lock one = new();
    private readonly System.Diagnostics.Stopwatch clock = System.Diagnostics.Stopwatch.StartNew();
    private int done;
    private TimeSpan shown = TimeSpan.MinValue;

    private ProgressBar(string label, int total)
    {
        (this.label, this.total) = (label, total);
        place = Cells.Show(new ProgressState(label, 0, total));
    }

    /// <summary>Shows an empty bar in the cell.</summary>
    /// <param name="label">What is counted.</param>
    /// <param name="total">How many there are in all.</param>
    /// <exception cref="InputException">Fewer than one.</exception>
    public static ProgressBar Show(string label, int total) => total > 0
        ? new(label, total)
        : throw new InputException("total", $"{total}", "1 or more", "Give the number of steps in all.");

    /// <summary>Says how many are done; the picture follows a few times a second and always at the end.</summary>
    public void Report(int value)
    {
        lock (one)
        {
            done = Math.Max(done, Math.Min(value, total));
            if (done < total && (value < done || clock.Elapsed - Pause < shown))
            {
                return;
            }

            shown = clock.Elapsed;
            place.Replace(new ProgressState(label, done, total));
        }
    }
}

/// <summary>A bar at one moment.</summary>
internal sealed record ProgressState(string Label, int Done, int Total) : IShown
{
    public IReadOnlyList<ShownPart> Shown() =>
    [
        new("text/html", string.Create(CultureInfo.InvariantCulture,
            $"<label>{WebUtility.HtmlEncode(Label)} <progress value=\"{Done}\" max=\"{Total}\" style=\"width:min(24em,50%);vertical-align:middle\"></progress> {Done} of {Total}</label>")),
        new("text/plain", ToString()),
    ];

    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Label}: {Done} of {Total}");
}
