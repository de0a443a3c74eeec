using System.Text;

namespace StrutLessons.Kernel.Notebooks;

/// <summary>Lines of a cell with their numbers and a mark at the one in question.</summary>
internal static class SourceExcerpt
{
    /// <summary>The lines around one of them.</summary>
    /// <param name="lines">The cell.</param>
    /// <param name="marked">Number of the line in question, from 1; null for none.</param>
    /// <param name="column">Column in that line, from 1, to be pointed at; null for none.</param>
    /// <param name="around">Lines shown before and after it; all of the cell if it is large enough.</param>
    internal static string Text(IReadOnlyList<string> lines, int? marked, int? column, int around = int.MaxValue)
    {
        var text = new StringBuilder();
        var digits = lines.Count.ToString().Length;
        for (var i = 1; i <= lines.Count; i++)
        {
            if (marked is { } middle && Math.Abs(i - middle) > around)
            {
                continue;
            }
            text.Append(i == marked ? " > " : "   ").Append(i.ToString().PadLeft(digits)).Append(" | ").Append(lines[i - 1]).Append('\n');
            if (i == marked && column is { } at)
            {
                text.Append(' ', 3 + digits).Append(" | ").Append(' ', at - 1).Append("^\n");
            }
        }
        return text.ToString();
    }
}
