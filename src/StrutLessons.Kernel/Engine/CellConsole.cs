using System.Text;
using StrutLessons.Kernel.Wire;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// The console of a running cell: what it writes becomes an output at once. The engine would take console text through its chain
/// of events, and a cell stopped inside that chain leaves one of its locks closed for ever.
/// </summary>
internal sealed class CellConsole(string stream, Action<CellOutput> emit) : TextWriter
{
    public override Encoding Encoding => Encoding.UTF8;

    /// <summary>Lets a cell write to the console.</summary>
    /// <returns>Gives the console back when it is disposed of.</returns>
    internal static IDisposable Lend(Action<CellOutput> emit)
    {
        var before = new Before(Console.Out, Console.Error);
        Console.SetOut(new CellConsole("stdout", emit));
        Console.SetError(new CellConsole("stderr", emit));
        return before;
    }

    public override void Write(char value) => Write(value.ToString());

    public override void Write(char[] buffer, int index, int count) => Write(new string(buffer, index, count));

    public override void Write(string? value)
    {
        if (!string.IsNullOrEmpty(value))
        {
            emit(new StreamOutput(stream, value));
        }
    }

    public override void WriteLine(string? value) => Write(value + NewLine);

    private sealed class Before(TextWriter standard, TextWriter error) : IDisposable
    {
        public void Dispose()
        {
            Console.SetOut(standard);
            Console.SetError(error);
        }
    }
}
