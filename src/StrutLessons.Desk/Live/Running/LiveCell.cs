using System.Text;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Live.Running;

/// <summary>What a cell is doing, or how it ended.</summary>
internal enum CellState
{
    Idle,
    Waiting,
    Running,
    Done,
    Failed,
}

/// <summary>A code cell of an open lesson. Whoever changes it holds the lesson's lock.</summary>
internal sealed class LiveCell(string id, string? shipped, string? after, bool mustFail)
{
    internal string Id { get; } = id;

    /// <summary>The text of the lesson as it is shipped; null for a cell that the user added.</summary>
    internal string? Shipped { get; } = shipped;

    /// <summary>For an added cell: the cell before it.</summary>
    internal string? After { get; set; } = after;

    internal bool MustFail { get; } = mustFail;

    internal string Text { get; set; } = shipped ?? "";

    internal long Revision { get; set; }

    /// <summary>A text written at the same time elsewhere.</summary>
    internal string? Other { get; set; }

    /// <summary>The shipped text with which the user's edit began.</summary>
    internal string? Began { get; set; } = shipped;

    internal CellState State { get; set; }

    internal double? Milliseconds { get; set; }

    internal bool IsOld { get; set; }

    internal List<Piece> Pieces { get; } = [];

    internal bool IsChanged => Shipped is not null && Text != Shipped;

    internal TextSay TextSay(string? by = null) =>
        new(Id, Text, Revision, IsChanged, Other, IsChanged && Began != Shipped ? Shipped : null, by);

    internal StateSay StateSay() => new(Id, State.ToString().ToLowerInvariant(), Milliseconds, IsOld);

    internal CellView View() => new(TextSay(), After, StateSay(), [.. Pieces.Select(piece => piece.Say(Id))]);

    internal static LiveCell Of(NotebookCell cell) => new(cell.Id, cell.Source.TrimEnd('\n'), null, cell.MustFail);
}

/// <summary>A piece of what a cell shows.</summary>
/// <param name="key">Its name on the page.</param>
internal sealed class Piece(string key)
{
    internal string Key { get; } = key;

    /// <summary>The name of a shown value that may be replaced later; null for others.</summary>
    internal string? DisplayId { get; init; }

    internal string Html { private get; set; } = "";

    internal int? Line { get; init; }

    /// <summary>The stream of a console piece; null for others.</summary>
    internal string? Stream { get; init; }

    internal StringBuilder Text { get; } = new();

    /// <summary>The view of a live piece; null for others.</summary>
    internal LivePiece? Live { get; set; }

    internal PieceSay Say(string cell) => new(cell, Key, Stream is null ? Html : Console(), Line, Live?.ToJson());

    /// <summary>A line break right behind the opening tag is no part of the text (HTML standard, element pre).</summary>
    private string Console() => $"<pre class=\"output text {Stream}\" tabindex=\"0\">\n{Site.Html.Escape(Text.ToString())}</pre>";
}
