using System.Text.Json;
using System.Text.Json.Serialization;
using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Desk.Live.Running;

/// <summary>A live view on the page: its controls, where they stand, and what it shows.</summary>
internal sealed class LivePiece(LiveForm form, IReadOnlyList<string> html)
{
    internal string Name => form.Live;

    private IReadOnlyList<double> Places { get; set; } = [.. form.Controls.Select(control => control.Start)];

    private IReadOnlyList<string> Html { get; set; } = html;

    /// <summary>The live view among the forms of a shown value; null if it is none.</summary>
    internal static LivePiece? Of(ShownOutput shown, Outputs outputs) =>
        shown.Content(LiveForm.MimeType) is { } json && JsonSerializer.Deserialize(json, LivePieceJson.Default.LiveForm) is { } form
            ? new LivePiece(form, [.. form.Shown.Select(parts => outputs.ToHtml(new ShownOutput(parts, IsResult: false)))])
            : null;

    internal void MoveTo(IReadOnlyList<double> places, IReadOnlyList<string> html) => (Places, Html) = (places, html);

    internal JsonElement ToJson() =>
        JsonSerializer.SerializeToElement(new LivePieceView(form.Live, form.Controls, Places, Html), LivePieceJson.Default.LivePieceView);
}

/// <summary>A live view as a page needs it.</summary>
internal sealed record LivePieceView(string Live, IReadOnlyList<LiveControlForm> Controls, IReadOnlyList<double> Places, IReadOnlyList<string> Html);

/// <summary>Generated reader and writer.</summary>
[JsonSourceGenerationOptions(JsonSerializerDefaults.Web)]
[JsonSerializable(typeof(LiveForm))]
[JsonSerializable(typeof(LivePieceView))]
internal sealed partial class LivePieceJson : JsonSerializerContext;
