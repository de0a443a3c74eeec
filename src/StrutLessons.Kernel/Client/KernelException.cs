namespace StrutLessons.Kernel.Client;

/// <summary>A kernel process that could not be started.</summary>
public sealed class KernelException(string message) : Exception(message);
