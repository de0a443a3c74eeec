using System.Xml.Linq;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Working;

/// <summary>Steps as an HTML table with MathML: title and source on the left, the equation on the right, signs of equality aligned.</summary>
/// <remarks>Styles stand in the elements, so that the table needs no style sheet and inherits colour and font from where it is shown.</remarks>
internal static class StepsHtml
{
    private const string Line = "border:0;border-top:1px solid rgba(128,128,128,.4);background:none;vertical-align:baseline;text-align:left;";

    internal static string Write(Steps steps) =>
        new XElement("div", new XAttribute("class", "worked-steps"), new XAttribute("style", "overflow-x:auto;max-width:100%"),
            new XElement("table",
                new XAttribute("style", "border-collapse:collapse;border:0;margin:.4em 0;font-size:1em"),
                new XAttribute("aria-label", "Worked steps"),
                new XElement("tbody", steps.Items.Select((step, i) => Row(step, steps.Asked.Contains(i))))))
        .ToString(SaveOptions.DisableFormatting);

    private static XElement Row(WorkedStep step, bool asked) =>
        new("tr", Style("border:0;background:none"),
            new XElement("th", new XAttribute("scope", "row"), Style(Line + "font-weight:normal;padding:.45em 1.2em .45em 0;max-width:17em;white-space:normal"),
                step.Title, Source(step)),
            new XElement("td", Style(Line + "text-align:right;padding:.45em .3em;white-space:nowrap"), MathMarkup.FromTex(step.Symbol)),
            new XElement("td", Style(Line + "padding:.45em 0;white-space:nowrap"),
                StepLines.Formula(step).Select(Equal), asked ? Folded(step) : StepLines.Result(step).Select(Equal)));

    private static XElement? Source(WorkedStep step) => step.Source.Length == 0
        ? null
        : new XElement("small", Style("display:block;opacity:.72;font-size:.78em;line-height:1.3"), step.Source);

    private static XElement Equal(string tex) => new("div", Style("margin:.3em 0"), MathMarkup.FromTex("= " + tex));

    private static XElement Folded(WorkedStep step) =>
        new("details", new XElement("summary", "Work it out, then look"), StepLines.Result(step).Select(Equal));

    private static XAttribute Style(string css) => new("style", css);
}
