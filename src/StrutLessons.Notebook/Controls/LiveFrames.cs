using System.Collections.Immutable;
using System.Net;
using System.Text;
using System.Text.Json;

namespace StrutLessons.Notebook.Controls;

/// <summary>
/// A live view for readers without a kernel: the pictures for a limited number of places are made beforehand, and a short script
/// exchanges them. Without the script the picture at the start stays.
/// </summary>
internal static class LiveFrames
{
    /// <summary>More frames would make pages heavy; a long slider is thinned out, keeping its ends and its start.</summary>
    internal const int MostFrames = 48;

    private const string Script = """
        (() => {
          const root = document.getElementById("NAME");
          if (!root || root.dataset.ready) return;
          root.dataset.ready = "yes";
          const inputs = [...root.querySelectorAll("[data-words]")];
          const frames = root.querySelectorAll("template");
          const show = () => {
            let at = 0;
            for (const input of inputs) {
              const words = JSON.parse(input.dataset.words);
              at = at * words.length + Number(input.value);
              input.setAttribute("aria-valuetext", words[input.value]);
              const said = input.parentElement.querySelector("output");
              if (said) said.textContent = words[input.value];
            }
            root.querySelector("[data-frame]").replaceChildren(frames[at].content.cloneNode(true));
          };
          inputs.forEach(input => input.addEventListener("input", show));
          root.querySelector("[data-controls]").hidden = false;
        })();
        """;

    internal static string Html(LiveView view, string name)
    {
        var places = Thinned(view.Controls);
        var html = new StringBuilder();
        html.Append($"<div class=\"sl-live\" id=\"{name}\" data-live=\"{name}\">\n<div data-controls hidden>\n");
        for (var i = 0; i < view.Controls.Length; i++)
        {
            html.Append(Input(view.Controls[i], places[i], $"{name}-{i}"));
        }
        html.Append("</div>\n<div data-frame aria-live=\"polite\">").Append(Frame(view, view.Start)).Append("</div>\n");
        foreach (var at in Product(places))
        {
            html.Append("<template>").Append(Frame(view, at)).Append("</template>\n");
        }
        return html.Append($"<script>{Script.Replace("NAME", name, StringComparison.Ordinal)}</script>\n</div>").ToString();
    }

    /// <summary>The places of each control for which frames are made.</summary>
    internal static ImmutableArray<ImmutableArray<double>> Thinned(ImmutableArray<Control> controls)
    {
        ImmutableArray<double>[] places = [.. controls.Select(control => control.Places)];
        while (places.Aggregate(1L, (product, one) => product * one.Length) > MostFrames)
        {
            var longest = Enumerable.Range(0, places.Length)
                .Where(i => controls[i].Kind != ControlKind.Choice && places[i].Length > 3)
                .OrderByDescending(i => places[i].Length).Cast<int?>().FirstOrDefault();
            if (longest is not { } i)
            {
                break;
            }
            places[i] = EverySecond(places[i], controls[i].Start);
        }
        return [.. places];
    }

    private static ImmutableArray<double> EverySecond(ImmutableArray<double> places, double start)
    {
        var near = Enumerable.Range(0, places.Length).MinBy(i => Math.Abs(places[i] - start));
        return [.. places.Where((_, i) => i % 2 == near % 2 || i == 0 || i == places.Length - 1)];
    }

    private static IEnumerable<ImmutableArray<double>> Product(ImmutableArray<ImmutableArray<double>> places) =>
        places.Aggregate<ImmutableArray<double>, IEnumerable<ImmutableArray<double>>>(
            [[]], (sofar, next) => sofar.SelectMany(_ => next, (begun, place) => begun.Add(place)));

    private static string Input(Control control, ImmutableArray<double> places, string id)
    {
        var at = Enumerable.Range(0, places.Length).MinBy(i => Math.Abs(places[i] - control.Start));
        var words = places.Select(control.Words).ToArray();
        var data = $"data-words=\"{Escape(JsonSerializer.Serialize(words))}\"";
        var label = $"<label for=\"{id}\" style=\"display:inline-block;min-width:15em\">{Escape(control.Label)}</label>";
        return control.Kind == ControlKind.Choice
            ? $"<p style=\"margin:.3em 0\">{label} <select id=\"{id}\" {data}>{string.Concat(words.Select((word, i) => $"<option value=\"{i}\"{(i == at ? " selected" : "")}>{Escape(word)}</option>"))}</select></p>\n"
            : $"<p style=\"margin:.3em 0\">{label} <input type=\"range\" id=\"{id}\" min=\"0\" max=\"{places.Length - 1}\" step=\"1\" value=\"{at}\" autocomplete=\"off\" aria-valuetext=\"{Escape(words[at])}\" {data} style=\"width:min(20em,40%);vertical-align:middle\"> <output for=\"{id}\" style=\"font-variant-numeric:tabular-nums\">{Escape(words[at])}</output></p>\n";
    }

    /// <summary>What is shown at one place. A place the calculation refuses says why.</summary>
    private static string Frame(LiveView view, IReadOnlyList<double> places)
    {
        try
        {
            return string.Concat(view.At(places).Select(Still));
        }
        catch (InputException refused)
        {
            return $"<p><strong>Not possible.</strong> {Escape(refused.Message)}</p>";
        }
    }

    /// <summary>A value as a picture or text that needs no script.</summary>
    private static string Still(object value) => Showing.Picture(value) switch
    {
        IPictured pictured => Figure(pictured.ToDrawing().Svg),
        IShown shown when shown.Shown() is var parts => parts.FirstOrDefault(part => part.MimeType == "image/svg+xml") is { } svg
            ? Figure(svg.Content)
            : parts.FirstOrDefault(part => part.MimeType == "text/html")?.Content
                ?? Text(parts.FirstOrDefault(part => part.MimeType == "text/plain")?.Content ?? ""),
        _ => Text(value.ToString() ?? ""),
    };

    private static string Figure(string svg) => $"<div class=\"drawing\">{svg[svg.IndexOf("<svg", StringComparison.Ordinal)..]}</div>";

    private static string Text(string words) => $"<p style=\"white-space:pre-wrap\">{Escape(words)}</p>";

    private static string Escape(string text) => WebUtility.HtmlEncode(text);
}
