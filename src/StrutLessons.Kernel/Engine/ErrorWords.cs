using System.Diagnostics;
using System.Reflection;
using System.Text.RegularExpressions;
using Microsoft.CodeAnalysis;
using Microsoft.DotNet.Interactive.Events;
using StrutLessons.Kernel.Wire;
using Diagnostic = Microsoft.DotNet.Interactive.Diagnostic;

namespace StrutLessons.Kernel.Engine;

/// <summary>Puts a failure into words about the cell; the frames of the program around it are left out.</summary>
internal static partial class ErrorWords
{
    /// <summary>One error for each thing the compiler did not understand.</summary>
    internal static IEnumerable<ErrorOutput> Compilation(IEnumerable<Diagnostic> diagnostics) =>
        diagnostics.Where(diagnostic => diagnostic.Severity == DiagnosticSeverity.Error)
            .Select(diagnostic => new ErrorOutput(
                diagnostic.Code,
                diagnostic.Message,
                diagnostic.LinePositionSpan.Start.Line + 1,
                diagnostic.LinePositionSpan.Start.Character + 1,
                Compiled: false));

    /// <summary>The error for an exception that left the cell, or for a command the engine refused.</summary>
    internal static ErrorOutput Failure(CommandFailed failed)
    {
        if (failed.Exception is null)
        {
            return new ErrorOutput("Cell", failed.Message, null, null, Compiled: false);
        }
        var cause = Unwrap(failed.Exception);
        return new ErrorOutput(cause.GetType().Name, cause.Message, LineOf(cause), null, Compiled: true);
    }

    private static Exception Unwrap(Exception exception) => exception switch
    {
        TargetInvocationException { InnerException: { } inner } => Unwrap(inner),
        AggregateException { InnerExceptions: [var only] } => Unwrap(only),
        TypeInitializationException { InnerException: { } inner } => Unwrap(inner),
        _ => exception,
    };

    /// <summary>
    /// The line of the running cell from which the failure came: the innermost frame that belongs to it. The engine
    /// compiles each cell into a class Submission#n, and the outermost of these on the stack is the running cell.
    /// </summary>
    private static int? LineOf(Exception exception)
    {
        var frames = new StackTrace(exception, fNeedFileInfo: true).GetFrames()
            .Select(frame => (Cell: CellOf(frame.GetMethod()), Line: frame.GetFileLineNumber()))
            .Where(frame => frame.Cell is not null)
            .ToArray();
        if (frames.Length == 0)
        {
            return null;
        }
        var line = frames.First(frame => frame.Cell == frames[^1].Cell).Line;
        return line > 0 ? line : null;
    }

    private static string? CellOf(MethodBase? method) =>
        method?.DeclaringType?.FullName is { } name && Submission().Match(name) is { Success: true } match ? match.Value : null;

    [GeneratedRegex(@"^Submission#\d+")]
    private static partial Regex Submission();
}
