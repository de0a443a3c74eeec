using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Scripting;
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
    private static readonly MethodInfo HasReturnValue =
        typeof(Script).GetMethod(nameof(HasReturnValue), BindingFlags.Instance | BindingFlags.NonPublic)
        ?? throw new MissingMethodException(nameof(Script), nameof(HasReturnValue));

    private readonly CodeQuestions _questions = new();
    private ScriptOptions _options;
    private ScriptState? _state;
    private string? _folder;

    internal ScriptKernel() : base("csharp")
    {
        KernelInfo.LanguageName = "C#";
        // Debug information, so that a failure can name its line.
        _options = ScriptOptions.Default
            .WithLanguageVersion(LanguageVersion.Latest)
            .WithEmitDebugInformation(true)
            .WithFileEncoding(Encoding.UTF8)
            .AddReferences(
                typeof(Enumerable).Assembly,
                typeof(Microsoft.DotNet.Interactive.Kernel).Assembly,
                typeof(Formatter).Assembly)
            .AddReferences(Preload.AssemblyFiles.Select(file => KeptReferences.Documented(file)));
        RegisterForDisposal(_questions);
    }

    /// <summary>Runs the cell that every lesson's cells follow.</summary>
    internal async Task PreloadAsync()
    {
        FollowFolder();
        _state = await CSharpScript.RunAsync(Preload.Code, _options).ConfigureAwait(false);
        _questions.Note(_state);
    }

    async Task IKernelCommandHandler<SubmitCode>.HandleAsync(SubmitCode command, KernelInvocationContext context)
    {
        FollowFolder();
        try
        {
            _state = await _state!.ContinueWithAsync(command.Code, _options, static _ => true, context.CancellationToken).ConfigureAwait(false);
        }
        catch (CompilationErrorException refused)
        {
            Publish(refused, command, context);
            return;
        }
        if (_state.Exception is { } failure)
        {
            context.Fail(command, failure);
            return;
        }
        _questions.Note(_state);
        if ((bool)HasReturnValue.Invoke(_state.Script, null)!)
        {
            context.Publish(new ReturnValueProduced(_state.ReturnValue, command, Forms(_state.ReturnValue)));
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

    /// <summary>Files named in a cell are looked for in the current folder, which a cell may change.</summary>
    private void FollowFolder()
    {
        var folder = Directory.GetCurrentDirectory();
        if (folder != _folder)
        {
            _folder = folder;
            _options = _options.WithMetadataResolver(new KeptReferences(folder)).WithSourceResolver(new SourceFileResolver([], folder));
        }
    }
}
