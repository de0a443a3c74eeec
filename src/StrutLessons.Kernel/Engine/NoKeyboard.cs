namespace StrutLessons.Kernel.Engine;

/// <summary>A lesson has no keyboard: a cell that waits for one would wait for ever.</summary>
internal sealed class NoKeyboard : TextReader
{
    public override int Read() => throw Refuse();

    public override int Peek() => throw Refuse();

    public override string? ReadLine() => throw Refuse();

    private static InvalidOperationException Refuse() =>
        new("A cell cannot read from the keyboard. Put the value into the cell and run it again.");
}
