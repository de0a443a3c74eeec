using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.Events;
using Microsoft.DotNet.Interactive.Formatting;
using EngineDiagnostic = Microsoft.DotNet.Interactive.Diagnostic;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Compiles and runs cells. The engine's own C# kernel prepares, before its first cell and again after each, everything it needs
/// to answer questions about code; a lesson waits for that and seldom asks. Here cells run at once, and the engine's kernel
/// is made at the first question.
/// </summary>
internal sealed class ScriptKernel : Microsoft.DotNet.Interactive.Kernel,
    IKernelCommandHandler<SubmitCode>,
    IKernelCommandHandler<RequestCompletions>,
    IKernelCommandHandler<RequestHoverText>,
    IKernelCommandHandler<RequestSignatureHelp>
{
    private readonly CodeQuestions _questions = new();
    private CellScript? _script;

    internal ScriptKernel() : base("csharp")
    {
        KernelInfo.LanguageName = "C#";
        RegisterForDisposal(_questions);
    }

    /// <summary>Gives the script that the first cell goes on with.</summary>
    internal void GoOnFrom(CellScript script)
    {
        _script = script;
        _questions.Note(script.State);
    }

    async Task IKernelCommandHandler<SubmitCode>.HandleAsync(SubmitCode command, KernelInvocationContext context)
    {
        var script = _script!;
        try
        {
            await script.RunAsync(command.Code, context.CancellationToken).ConfigureAwait(false);
        }
        catch (CompilationErrorException refused)
        {
            Publish(refused, command, context);
            return;
        }
        if (script.State.Exception is { } failure)
        {
            context.Fail(command, failure);
            return;
        }
        _questions.Note(script.State);
        if (script.HasValue)
        {
            context.Publish(new ReturnValueProduced(script.State.ReturnValue, command, Forms(script.State.ReturnValue)));
        }
    }

    Task IKernelCommandHandler<RequestCompletions>.HandleAsync(RequestCompletions command, KernelInvocationContext context) =>
        _questions.AskAsync(command, context);

    Task IKernelCommandHandler<RequestHoverText>.HandleAsync(RequestHoverText command, KernelInvocationContext context) =>
        _questions.AskAsync(command, context);

    Task IKernelCommandHandler<RequestSignatureHelp>.HandleAsync(RequestSignatureHelp command, KernelInvocationContext context) =>
        _questions.AskAsync(command, context);

    private static void Publish(CompilationErrorException refused, SubmitCode command, KernelInvocationContext context)
    {
        context.Publish(new DiagnosticsProduced(
            [.. refused.Diagnostics.Select(EngineDiagnostic.FromCodeAnalysisDiagnostic)],
            [.. refused.Diagnostics.Select(diagnostic => new FormattedValue(PlainTextFormatter.MimeType, diagnostic.ToString()))],
            command));
        context.Fail(command, refused, string.Join(Environment.NewLine, refused.Diagnostics));
    }

    private static IReadOnlyList<FormattedValue> Forms(object? value) => value switch
    {
        FormattedValue form => [form],
        IEnumerable<FormattedValue> forms => [.. forms],
        _ => FormattedValue.CreateManyFromObject(value),
    };
}
