using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Kernel.Engine;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// Live views over comm messages. A front end opens a comm with the target <c>strutlessons.live</c> and sends
/// <c>{"live": name, "positions": [numbers]}</c>; it gets back <c>{"live": name, "shown": [bundles]}</c> or
/// <c>{"live": name, "error": words}</c>. A comm with another target is closed at once, as the protocol asks.
/// </summary>
/// <param name="publish">Sends a message of a type on the publishing channel, as a consequence of a request.</param>
internal sealed class LiveComms(Action<JupyterRequest, string, JsonObject> publish)
{
    internal const string Target = "strutlessons.live";

    private readonly HashSet<string> _open = [];

    internal void Open(JupyterRequest request)
    {
        var id = request.Text("comm_id");
        if (request.Text("target_name") == Target)
        {
            _open.Add(id);
        }
        else
        {
            publish(request, "comm_close", new JsonObject { ["comm_id"] = id, ["data"] = new JsonObject() });
        }
    }

    internal void Close(JupyterRequest request) => _open.Remove(request.Text("comm_id"));

    /// <summary>The open comms, or those of one target.</summary>
    internal JsonObject Answer(JupyterRequest request)
    {
        var comms = new JsonObject();
        if (request.Text("target_name") is "" or Target)
        {
            foreach (var id in _open)
            {
                comms[id] = new JsonObject { ["target_name"] = Target };
            }
        }
        return new JsonObject { ["status"] = "ok", ["comms"] = comms };
    }

    /// <summary>Moves the controls of a live view and sends what it shows there.</summary>
    internal void Move(JupyterRequest request, LessonEngine engine)
    {
        var id = request.Text("comm_id");
        if (!_open.Contains(id) || request.Field("data") is not { ValueKind: JsonValueKind.Object } data)
        {
            return;
        }
        var live = data.TryGetProperty("live", out var name) && name.ValueKind == JsonValueKind.String ? name.GetString()! : "";
        var answer = new JsonObject { ["live"] = live };
        if (!data.TryGetProperty("positions", out var list) || list.ValueKind != JsonValueKind.Array
            || list.EnumerateArray().Any(place => place.ValueKind != JsonValueKind.Number))
        {
            answer["error"] = "The positions of the controls are missing: send one number for each.";
        }
        else
        {
            var shown = new JsonArray();
            engine.Move(new MoveRequest(0, live, [.. list.EnumerateArray().Select(place => place.GetDouble())]), output =>
            {
                if (output is ShownOutput view)
                {
                    shown.Add(MimeBundle.Of(view.Parts));
                }
                else if (output is ErrorOutput error)
                {
                    answer["error"] = error.Message;
                }
            });
            answer["shown"] = shown;
        }
        publish(request, "comm_msg", new JsonObject { ["comm_id"] = id, ["data"] = answer });
    }
}
