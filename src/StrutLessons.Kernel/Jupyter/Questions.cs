using System.Text.Json.Nodes;
using StrutLessons.Kernel.Engine;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>What an editor asks about a cell while it is being written.</summary>
internal static class Questions
{
    /// <summary>What could be typed here?</summary>
    internal static async Task<JsonObject> CompleteAsync(JupyterRequest request, LessonEngine engine)
    {
        var (code, index) = Place(request);
        var answer = await engine.CompleteAsync(new CompleteRequest(0, code, index)).ConfigureAwait(false);
        var (start, end) = (CodePoints.FromIndex(code, answer.Start), CodePoints.FromIndex(code, answer.End));
        return new JsonObject
        {
            ["status"] = "ok",
            ["matches"] = new JsonArray([.. answer.Items.Select(item => JsonValue.Create(item.Text))]),
            ["cursor_start"] = start,
            ["cursor_end"] = end,
            ["metadata"] = new JsonObject
            {
                // Known to front ends under this name; says what each match is.
                ["_jupyter_types_experimental"] = new JsonArray([.. answer.Items.Select(item =>
                    new JsonObject { ["start"] = start, ["end"] = end, ["text"] = item.Text, ["type"] = item.Kind.ToLowerInvariant() })]),
            },
        };
    }

    /// <summary>What is this?</summary>
    internal static async Task<JsonObject> InspectAsync(JupyterRequest request, LessonEngine engine)
    {
        var (code, index) = Place(request);
        var parts = await engine.InspectAsync(code, index).ConfigureAwait(false);
        return new JsonObject
        {
            ["status"] = "ok",
            ["found"] = parts.Count > 0,
            ["data"] = MimeBundle.Of(parts),
            ["metadata"] = new JsonObject(),
        };
    }

    /// <summary>Can this be run, or is more to come?</summary>
    internal static JsonObject IsComplete(JupyterRequest request)
    {
        var state = CodeState.Of(request.Text("code"));
        var answer = new JsonObject { ["status"] = state.Kind.ToString().ToLowerInvariant() };
        if (state.Kind == CodeCompleteness.Incomplete)
        {
            answer["indent"] = state.Indent;
        }
        return answer;
    }

    private static (string Code, int Index) Place(JupyterRequest request)
    {
        var code = request.Text("code");
        return (code, CodePoints.ToIndex(code, request.Number("cursor_pos", int.MaxValue)));
    }
}
