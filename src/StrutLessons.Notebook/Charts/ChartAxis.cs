namespace StrutLessons.Notebook.Charts;

/// <summary>An axis of a chart.</summary>
/// <param name="Title">What is measured, with its unit in brackets: <c>"Load $N$ (kN)"</c>; a pure number carries <c>(–)</c>.</param>
/// <param name="From">First value shown; null leaves it to the data.</param>
/// <param name="To">Last value shown; null leaves it to the data.</param>
/// <param name="Logarithmic">True for a logarithmic scale.</param>
public sealed record ChartAxis(string Title, double? From = null, double? To = null, bool Logarithmic = false);
