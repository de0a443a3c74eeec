using System.Diagnostics;

namespace StrutLessons.Desk.Commands;

/// <summary>
/// A bar on a terminal; in a pipe nothing but the finished lines. The bar stands on the last line and is redrawn in place.
/// </summary>
internal sealed class Progress(int total) : IDisposable
{
    private const int BarWidth = 30;
    private readonly bool _isTerminal = !Console.IsOutputRedirected;
    private readonly Stopwatch _clock = Stopwatch.StartNew();
    private int _done;
    private int _drawn;

    /// <summary>One of the <c>total</c> pieces of work is finished.</summary>
    internal void Step(string now)
    {
        _done++;
        Draw(now);
    }

    /// <summary>Shows what is going on without counting it.</summary>
    internal void Draw(string now)
    {
        if (!_isTerminal)
        {
            return;
        }
        var filled = total == 0 ? BarWidth : BarWidth * _done / total;
        var line = $"[{new string('#', filled)}{new string('.', BarWidth - filled)}] {_done}/{total} {_clock.Elapsed.TotalSeconds:0} s  {now}";
        var width = Console.WindowWidth > 20 ? Console.WindowWidth - 1 : 79;
        line = line.Length > width ? line[..width] : line;
        Console.Write("\r" + line.PadRight(_drawn));
        _drawn = line.Length;
    }

    /// <summary>Prints a finished line above the bar.</summary>
    internal void Say(string line)
    {
        Clear();
        Console.WriteLine(line);
    }

    public void Dispose() => Clear();

    private void Clear()
    {
        if (_isTerminal && _drawn > 0)
        {
            Console.Write("\r" + new string(' ', _drawn) + "\r");
            _drawn = 0;
        }
    }
}
