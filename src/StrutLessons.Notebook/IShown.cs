namespace StrutLessons.Notebook;

/// <summary>A value that knows how it looks in a cell.</summary>
public interface IShown
{
    /// <summary>Its forms, best first. The order matters only to front ends that follow the sender.</summary>
    IReadOnlyList<ShownPart> Shown();
}
