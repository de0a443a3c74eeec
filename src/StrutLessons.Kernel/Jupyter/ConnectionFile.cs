using System.Text.Json;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>Where a front end expects its kernel: five ports on this machine and the key that signs the messages.</summary>
internal sealed record ConnectionFile(int Shell, int Control, int Publish, int Input, int Heartbeat, string Key)
{
    /// <summary>The only address a kernel ever listens on.</summary>
    internal const string Address = "127.0.0.1";

    /// <summary>Reads the file that a front end hands over.</summary>
    /// <exception cref="ConnectionException">It cannot be read, or asks for something else than signed messages on this machine alone.</exception>
    internal static ConnectionFile Read(string path)
    {
        try
        {
            using var json = JsonDocument.Parse(File.ReadAllText(path));
            var root = json.RootElement;
            Expect(root, "transport", "tcp");
            Expect(root, "ip", Address);
            Expect(root, "signature_scheme", "hmac-sha256");
            var key = root.GetProperty("key").GetString();
            return string.IsNullOrEmpty(key)
                ? throw new ConnectionException("The connection file holds no key. Any program on this machine could run cells: the kernel does not start.")
                : new(Port("shell_port"), Port("control_port"), Port("iopub_port"), Port("stdin_port"), Port("hb_port"), key);

            int Port(string name) => root.GetProperty(name).GetInt32();
        }
        catch (Exception fault) when (fault is IOException or UnauthorizedAccessException or JsonException
            or KeyNotFoundException or InvalidOperationException or FormatException)
        {
            throw new ConnectionException($"The connection file cannot be read: {fault.Message}");
        }
    }

    private static void Expect(JsonElement root, string name, string wanted)
    {
        var found = root.GetProperty(name).GetString();
        if (found != wanted)
        {
            throw new ConnectionException($"The connection file asks for {name} '{found}'. The kernel serves '{wanted}' only and does not start.");
        }
    }
}

/// <summary>A connection file that the kernel refuses; the message says why.</summary>
internal sealed class ConnectionException(string message) : Exception(message);
