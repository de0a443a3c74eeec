namespace StrutLessons.Kernel.Notebooks;

/// <summary>A file that is not a notebook as nbformat 4.5 describes it; the message names the file and the fault.</summary>
public sealed class NotebookException(string message, Exception? cause = null) : Exception(message, cause);
