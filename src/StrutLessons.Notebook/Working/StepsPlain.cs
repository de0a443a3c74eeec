using System.Text;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Working;

/// <summary>Steps as plain text for a terminal.</summary>
internal static class StepsPlain
{
    internal static string Write(Steps steps)
    {
        var text = new StringBuilder();
        for (int i = 0; i < steps.Items.Count; i++)
        {
            WorkedStep step = steps.Items[i];
            text.Append(step.Title).Append(step.Source.Length == 0 ? "" : $"   [{step.Source}]").Append('\n');
            string left = PlainMaths.FromTex(step.Symbol);
            string indent = new(' ', VisibleLength(left));
            foreach (string line in StepLines.Formula(step).Concat(steps.Asked.Contains(i) ? ["?"] : StepLines.Result(step)))
            {
                text.Append("  ").Append(left).Append(" = ").Append(PlainMaths.FromTex(line)).Append('\n');
                left = indent;
            }
        }

        return text.ToString().TrimEnd('\n');
    }

    /// <summary>Combining marks (the bar of λ̄) take no column.</summary>
    private static int VisibleLength(string text) => text.Count(c => char.GetUnicodeCategory(c) != System.Globalization.UnicodeCategory.NonSpacingMark);
}
