using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>Progress of a study on a terminal: a bar, the rate and the time that remains. In a pipe it stays silent.</summary>
internal sealed class StudyBar : IProgress<StudyProgress>, IDisposable
{
    private const int Width = 30;
    private readonly bool _isTerminal = !Console.IsErrorRedirected && !Console.IsOutputRedirected;
    private int _drawn;

    public void Report(StudyProgress value)
    {
        if (!_isTerminal)
        {
            return;
        }
        var filled = value.Total == 0 ? Width : (int)(Width * value.Done / value.Total);
        var line = FormattableString.Invariant(
            $"[{new string('#', filled)}{new string('.', Width - filled)}] {value.Done}/{value.Total}  {value.PerSecond:0} per s  {value.Remaining.TotalSeconds:0} s left");
        Console.Error.Write("\r" + line.PadRight(_drawn));
        _drawn = line.Length;
    }

    public void Dispose()
    {
        if (_drawn > 0)
        {
            Console.Error.Write("\r" + new string(' ', _drawn) + "\r");
        }
    }
}
