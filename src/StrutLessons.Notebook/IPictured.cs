using StrutLessons.Notebook.Drawings;

namespace StrutLessons.Notebook;

/// <summary>A value with a still picture that needs no script; whoever wants only that need not make the other forms.</summary>
public interface IPictured : IShown
{
    /// <summary>The picture.</summary>
    Drawing ToDrawing();
}
