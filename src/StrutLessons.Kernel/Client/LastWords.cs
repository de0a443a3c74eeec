using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Client;

/// <summary>The end of what a kernel process wrote to standard error, to say why it went.</summary>
internal sealed class LastWords
{
    private const int LinesKept = 40;
    private const string Terminated = "Process terminated. ";
    private readonly Queue<string> _lines = new();

    internal void Add(string? line)
    {
        if (line is null)
        {
            return;
        }
        lock (_lines)
        {
            // A stack overflow prints thousands of frames after its one telling line.
            if (_lines.Count == LinesKept && !line.StartsWith("   at ", StringComparison.Ordinal))
            {
                _lines.Dequeue();
            }
            if (_lines.Count < LinesKept)
            {
                _lines.Enqueue(line);
            }
        }
    }

    /// <summary>Why the process ended, in words.</summary>
    internal ErrorOutput Explain()
    {
        lock (_lines)
        {
            var message = _lines switch
            {
                _ when Has("Stack overflow") => "A method calls itself without end: the stack is used up, and the kernel process has ended.",
                _ when Has("Out of memory") || Has("OutOfMemory") => "The cell asked for more memory than it may use, and the kernel process has ended.",
                _ when _lines.FirstOrDefault(line => line.StartsWith(Terminated, StringComparison.Ordinal)) is { } terminated
                    => "The kernel process has ended: " + terminated[Terminated.Length..],
                _ when _lines.FirstOrDefault(line => line.StartsWith("Unhandled exception. ", StringComparison.Ordinal)) is { } unhandled
                    => "The kernel process has ended: " + unhandled["Unhandled exception. ".Length..],
                _ => "The kernel process has ended.",
            };
            return new ErrorOutput("Kernel", message, null, null, Compiled: true);
        }
    }

    private bool Has(string words) => _lines.Any(line => line.Contains(words, StringComparison.Ordinal));
}
