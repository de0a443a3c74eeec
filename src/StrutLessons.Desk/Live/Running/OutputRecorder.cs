using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Desk.Live.Running;

/// <summary>Turns the outputs of running cells into pieces of the page. Call it under the lesson's lock.</summary>
internal sealed class OutputRecorder(IReadOnlyList<LiveCell> cells, Action<Say> tell)
{
    /// <summary>A cell that shows more than this many pieces is a mistake; the rest would only make the page slow.</summary>
    private const int MostPieces = 200;

    /// <summary>Characters: more of them would slow the browser down more than they would tell a reader.</summary>
    private const int MostText = 200_000;

    // Lives as long as the lesson, so that no two figures share an id.
    private readonly Outputs _outputs = new();
    private long _last;

    /// <summary>Forgets what a cell has shown.</summary>
    internal static void Clear(LiveCell cell) => cell.Pieces.Clear();

    internal void Add(LiveCell cell, CellOutput output)
    {
        switch (output)
        {
            case StreamOutput stream:
                AddText(cell, stream);
                break;
            case ShownOutput { Replaces: true } update:
                Replace(update);
                break;
            case ShownOutput shown when LivePiece.Of(shown, _outputs) is { } live:
                Show(cell, new Piece(NewKey()) { DisplayId = shown.DisplayId, Live = live });
                break;
            default:
                Show(cell, new Piece(NewKey())
                {
                    DisplayId = (output as ShownOutput)?.DisplayId,
                    Html = _outputs.ToHtml(output),
                    Line = (output as ErrorOutput)?.Line,
                });
                break;
        }
    }

    /// <summary>What a live view shows at new places. A refusal in words takes the place of all its values.</summary>
    internal void Moved(MoveAsk ask, IReadOnlyList<CellOutput> outputs, string by)
    {
        string[] html = [.. outputs.Select(_outputs.ToHtml)];
        cells.SelectMany(cell => cell.Pieces).FirstOrDefault(piece => piece.Live?.Name == ask.Live)?.Live!.MoveTo(ask.Places, html);
        tell(new MovedSay(ask.Cell, ask.Live, ask.Places, html, by));
    }

    private void AddText(LiveCell cell, StreamOutput stream)
    {
        if (cell.Pieces.LastOrDefault() is { Stream: { } name } last && (name == "stderr") == (stream.Name == "stderr"))
        {
            if (last.Text.Length <= MostText)
            {
                var text = last.Text.Length + stream.Text.Length > MostText ? stream.Text + "\n… the rest is left out.\n" : stream.Text;
                last.Text.Append(text);
                tell(new WriteSay(cell.Id, last.Key, text));
            }
            return;
        }
        var piece = new Piece(NewKey()) { Stream = stream.Name == "stderr" ? "stderr" : "stdout" };
        piece.Text.Append(stream.Text);
        Show(cell, piece);
    }

    private void Replace(ShownOutput update)
    {
        foreach (var cell in cells)
        {
            if (cell.Pieces.Find(piece => piece.DisplayId == update.DisplayId) is { } piece)
            {
                (piece.Live, piece.Html) = LivePiece.Of(update, _outputs) is { } live ? (live, "") : (null, _outputs.ToHtml(update));
                tell(piece.Say(cell.Id));
                return;
            }
        }
    }

    private void Show(LiveCell cell, Piece piece)
    {
        if (cell.Pieces.Count < MostPieces)
        {
            cell.Pieces.Add(piece);
            tell(piece.Say(cell.Id));
        }
        else if (cell.Pieces.Count == MostPieces)
        {
            var words = new Piece(NewKey()) { Html = $"<p class=\"aside\">The cell shows more than {MostPieces} things; the rest is left out.</p>" };
            cell.Pieces.Add(words);
            tell(words.Say(cell.Id));
        }
    }

    private string NewKey() => $"o{++_last}";
}
