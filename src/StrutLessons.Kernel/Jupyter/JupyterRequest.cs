using System.Text.Json;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>The sockets of the protocol on which messages with content travel.</summary>
internal enum JupyterChannel
{
    /// <summary>Cells and questions about them, one after another.</summary>
    Shell,

    /// <summary>What must be heard while a cell runs: interrupt, shutdown.</summary>
    Control,

    /// <summary>What every front end sees: outputs and the kernel's state.</summary>
    Publish,
}

/// <summary>A message from a front end whose signature was right.</summary>
/// <param name="Channel">Where it came in; the reply goes out there.</param>
/// <param name="Route">Names of the sender's socket, to be put before the reply.</param>
/// <param name="Header">The header as it came: it is the parent header of everything that follows from the message.</param>
/// <param name="Type">Kind of the message, from the header.</param>
/// <param name="Content">What is asked.</param>
internal sealed record JupyterRequest(JupyterChannel Channel, IReadOnlyList<byte[]> Route, byte[] Header, string Type, JsonElement Content)
{
    /// <summary>A text from the content; empty if there is none of this name.</summary>
    internal string Text(string name) =>
        Field(name) is { ValueKind: JsonValueKind.String } text ? text.GetString()! : "";

    /// <summary>A switch from the content.</summary>
    internal bool Flag(string name, bool usual) => Field(name)?.ValueKind switch
    {
        JsonValueKind.True => true,
        JsonValueKind.False => false,
        _ => usual,
    };

    /// <summary>A whole number from the content.</summary>
    internal int Number(string name, int usual) =>
        Field(name) is { ValueKind: JsonValueKind.Number } number && number.TryGetInt32(out var value) ? value : usual;

    /// <summary>Any field of the content; null if there is none of this name.</summary>
    internal JsonElement? Field(string name) =>
        Content.ValueKind == JsonValueKind.Object && Content.TryGetProperty(name, out var field) ? field : null;
}
