using System.Text;
using System.Text.Json.Nodes;
using StrutLessons.Kernel.Client;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// Sends the outputs of one cell to every front end. Console text is gathered for a moment, so that a loop that prints does not
/// become thousands of messages, and cut off where it would fill the notebook.
/// </summary>
internal sealed class CellPublisher : IDisposable
{
    private static readonly TimeSpan Moment = TimeSpan.FromMilliseconds(50);

    private readonly Lock _one = new();
    private readonly Action<string, JsonObject> _publish;
    private readonly string _stem;
    private readonly int _count;
    private readonly StringBuilder _text = new();
    private readonly Timer _timer;
    private readonly List<ErrorOutput> _errors = [];
    private string _stream = "";
    private int _characters;

    /// <param name="publish">Sends a message of a type on the publishing channel.</param>
    /// <param name="stem">Put before the names of shown values: old outputs of a notebook carry names of earlier sessions.</param>
    /// <param name="count">The cell's execution count.</param>
    internal CellPublisher(Action<string, JsonObject> publish, string stem, int count)
    {
        (_publish, _stem, _count) = (publish, stem, count);
        _timer = new Timer(_ => Flush());
    }

    /// <summary>The errors of the cell; they are sent as one message at its end.</summary>
    internal IReadOnlyList<ErrorOutput> Errors => _errors;

    /// <summary>Takes an output.</summary>
    internal void Add(CellOutput output)
    {
        lock (_one)
        {
            switch (output)
            {
                case StreamOutput stream:
                    AddText(stream);
                    break;
                case ErrorOutput error:
                    _errors.Add(error);
                    break;
                case ShownOutput shown:
                    SendText();
                    SendShown(shown);
                    break;
            }
        }
    }

    /// <summary>Sends the text gathered so far.</summary>
    internal void Flush()
    {
        lock (_one)
        {
            SendText();
        }
    }

    public void Dispose()
    {
        _timer.Dispose();
        Flush();
    }

    private void AddText(StreamOutput stream)
    {
        if (_characters > OutputCollector.TextLimit)
        {
            return;
        }
        if (stream.Name != _stream)
        {
            SendText();
            _stream = stream.Name;
        }
        if (_text.Length == 0)
        {
            _timer.Change(Moment, Timeout.InfiniteTimeSpan);
        }
        _characters += stream.Text.Length;
        _text.Append(stream.Text);
        if (_characters > OutputCollector.TextLimit)
        {
            _text.Append(OutputCollector.CutOff);
        }
    }

    private void SendText()
    {
        if (_text.Length > 0)
        {
            _publish("stream", new JsonObject { ["name"] = _stream, ["text"] = _text.ToString() });
            _text.Clear();
        }
    }

    private void SendShown(ShownOutput shown)
    {
        var content = new JsonObject { ["data"] = MimeBundle.Of(shown.Parts), ["metadata"] = new JsonObject() };
        if (shown.IsResult)
        {
            content["execution_count"] = _count;
        }
        else
        {
            content["transient"] = shown.DisplayId is { } id ? new JsonObject { ["display_id"] = $"{_stem}-{id}" } : new JsonObject();
        }
        _publish(shown.IsResult ? "execute_result" : shown.Replaces ? "update_display_data" : "display_data", content);
    }
}
