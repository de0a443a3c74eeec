using System.Text;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Client;

/// <summary>
/// Gathers the outputs of one cell: joins texts of the same stream, replaces shown values that were updated, and cuts
/// a flood off before it fills the memory.
/// </summary>
internal sealed class OutputCollector
{
    /// <summary>Characters of console text kept for one cell.</summary>
    internal const int TextLimit = 1_000_000;

    /// <summary>What stands where the text was cut off.</summary>
    internal static readonly string CutOff = $"\n… the rest is left out: more than {TextLimit:N0} characters.\n";

    private readonly List<CellOutput> _outputs = [];
    private readonly StringBuilder _text = new();
    private string? _stream;
    private int _characters;

    internal IReadOnlyList<CellOutput> Outputs
    {
        get
        {
            lock (_outputs)
            {
                CloseText();
                return [.. _outputs];
            }
        }
    }

    /// <summary>Adds an output. False if it was dropped because the cell has written too much.</summary>
    internal bool Add(CellOutput output)
    {
        lock (_outputs)
        {
            switch (output)
            {
                case StreamOutput stream:
                    return AddText(stream);
                case ShownOutput { Replaces: true } update:
                    Replace(update);
                    return true;
                default:
                    CloseText();
                    _outputs.Add(output);
                    return true;
            }
        }
    }

    private bool AddText(StreamOutput stream)
    {
        if (_characters > TextLimit)
        {
            return false;
        }
        _characters += stream.Text.Length;
        var text = _characters > TextLimit ? stream.Text + CutOff : stream.Text;
        if (_stream != stream.Name)
        {
            CloseText();
            _stream = stream.Name;
        }
        _text.Append(text);
        return true;
    }

    /// <summary>The text gathered so far becomes an output; later text of the same stream is joined to it again.</summary>
    private void CloseText()
    {
        if (_stream is null)
        {
            return;
        }
        if (_outputs is [.., StreamOutput last] && last.Name == _stream)
        {
            _outputs[^1] = last with { Text = last.Text + _text };
        }
        else
        {
            _outputs.Add(new StreamOutput(_stream, _text.ToString()));
        }
        _stream = null;
        _text.Clear();
    }

    private void Replace(ShownOutput update)
    {
        var at = _outputs.FindIndex(output => output is ShownOutput shown && shown.DisplayId == update.DisplayId);
        if (at >= 0)
        {
            _outputs[at] = update with { Replaces = false };
        }
    }
}
