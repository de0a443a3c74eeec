using System.Text;

namespace StrutLessons.Notebook.Working;

/// <summary>Steps as one aligned block of TeX mathematics.</summary>
internal static class StepsLatex
{
    internal static string Write(Steps steps)
    {
        var text = new StringBuilder(@"$$\begin{aligned}");
        for (int i = 0; i < steps.Items.Count; i++)
        {
            WorkedStep step = steps.Items[i];
            string source = step.Source.Length == 0 ? "" : $@"\quad{{\scriptsize\text{{{Escape(step.Source)}}}}}";
            text.Append(i == 0 ? "\n" : "\\\\[6pt]\n").Append($@"&\textsf{{{Escape(step.Title)}}}{source}");
            IEnumerable<string> lines = StepLines.Formula(step).Concat(steps.Asked.Contains(i) ? ["\\;?"] : StepLines.Result(step));
            string left = step.Symbol;
            foreach (string line in lines)
            {
                text.Append("\\\\\n").Append(left).Append(" &= ").Append(line);
                left = "";
            }
        }

        return text.Append("\n\\end{aligned}$$").ToString();
    }

    /// <summary>Words inside a formula: the characters that TeX reads as commands are escaped.</summary>
    private static string Escape(string words)
    {
        var text = new StringBuilder();
        foreach (char c in words)
        {
            text.Append(c switch
            {
                '\\' => @"\backslash ",
                '^' => @"\^{}",
                '~' => @"\~{}",
                '_' or '%' or '&' or '#' or '$' or '{' or '}' => "\\" + c,
                _ => c.ToString(),
            });
        }

        return text.ToString();
    }
}
