using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Kernel.Engine;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>Runs the cells that front ends send, counts them and keeps their history.</summary>
/// <param name="publish">Sends a message of a type on the publishing channel, as a consequence of a request.</param>
internal sealed class CellExecution(Action<JupyterRequest, string, JsonObject> publish)
{
    private readonly string _stem = Guid.NewGuid().ToString("N")[..8];
    private int _count;

    internal SessionHistory History { get; } = new();

    /// <summary>Runs a cell.</summary>
    /// <returns>The reply's content, and whether cells that wait behind this one must not run.</returns>
    internal async Task<(JsonObject Reply, bool Abort)> RunAsync(JupyterRequest request, LessonEngine engine)
    {
        var code = request.Text("code");
        var isSilent = request.Flag("silent", false);
        if (!isSilent && request.Flag("store_history", true))
        {
            _count++;
            History.Add(_count, code);
        }
        if (!isSilent)
        {
            publish(request, "execute_input", new JsonObject { ["code"] = code, ["execution_count"] = _count });
        }
        using var outputs = new CellPublisher(Publish, _stem, _count);
        await engine.RunAsync(code, outputs.Add).ConfigureAwait(false);
        outputs.Flush();
        if (outputs.Errors.Count > 0)
        {
            Publish("error", ErrorContent.Of(outputs.Errors, code));
            var failed = ErrorContent.Of(outputs.Errors, code);
            failed["status"] = "error";
            failed["execution_count"] = _count;
            return (failed, request.Flag("stop_on_error", true));
        }
        return (new JsonObject
        {
            ["status"] = "ok",
            ["execution_count"] = _count,
            ["payload"] = new JsonArray(),
            ["user_expressions"] = await EvaluateAsync(request, engine).ConfigureAwait(false),
        }, false);

        void Publish(string type, JsonObject content)
        {
            if (!isSilent)
            {
                publish(request, type, content);
            }
        }
    }

    /// <summary>The reply to a cell that waited behind one that failed.</summary>
    internal JsonObject Aborted() => new() { ["status"] = "aborted", ["execution_count"] = _count };

    /// <summary>Expressions that a front end wants evaluated after the cell, unseen.</summary>
    private static async Task<JsonObject> EvaluateAsync(JupyterRequest request, LessonEngine engine)
    {
        var values = new JsonObject();
        if (request.Field("user_expressions") is not { ValueKind: JsonValueKind.Object } expressions)
        {
            return values;
        }
        foreach (var expression in expressions.EnumerateObject().Where(one => one.Value.ValueKind == JsonValueKind.String))
        {
            var code = expression.Value.GetString()!;
            var outputs = new List<CellOutput>();
            await engine.RunAsync(code, outputs.Add).ConfigureAwait(false);
            var errors = outputs.OfType<ErrorOutput>().ToArray();
            var value = errors.Length > 0 ? ErrorContent.Of(errors, code) : new JsonObject
            {
                ["data"] = MimeBundle.Of(outputs.OfType<ShownOutput>().LastOrDefault(shown => shown.IsResult)?.Parts ?? []),
                ["metadata"] = new JsonObject(),
            };
            value["status"] = errors.Length > 0 ? "error" : "ok";
            values[expression.Name] = value;
        }
        return values;
    }
}
