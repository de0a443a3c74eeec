using System.Collections.Concurrent;
using System.Reflection;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive;
using Microsoft.DotNet.Interactive.Commands;
using Microsoft.DotNet.Interactive.CSharp;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// Answers questions about code with the engine's C# kernel, which is made at the first question and runs no cell itself.
/// The engine is frozen at its last version and offers no way to tell its kernel what ran elsewhere; its members are reached by name.
/// </summary>
internal sealed class CodeQuestions : IDisposable
{
    private const BindingFlags Hidden = BindingFlags.Instance | BindingFlags.Public | BindingFlags.NonPublic;

    private readonly ConcurrentQueue<ScriptState> _unknown = new();
    private readonly SemaphoreSlim _one = new(1, 1);
    private CSharpKernel? _engine;

    /// <summary>Remembers that a cell has run without a failure.</summary>
    internal void Note(ScriptState state) => _unknown.Enqueue(state);

    /// <summary>Publishes the answer to a question.</summary>
    internal async Task AskAsync<TQuestion>(TQuestion question, KernelInvocationContext context) where TQuestion : KernelCommand
    {
        await _one.WaitAsync(context.CancellationToken).ConfigureAwait(false);
        try
        {
            var engine = _engine ??= Make();
            while (_unknown.TryDequeue(out var state))
            {
                await TellAsync(engine, state).ConfigureAwait(false);
            }
            await ((IKernelCommandHandler<TQuestion>)engine).HandleAsync(question, context).ConfigureAwait(false);
        }
        finally
        {
            _one.Release();
        }
    }

    public void Dispose()
    {
        _engine?.Dispose();
        _one.Dispose();
    }

    private static CSharpKernel Make()
    {
        var engine = new CSharpKernel();
        engine.AddAssemblyReferences(Preload.AssemblyFiles);
        return engine;
    }

    private static async Task TellAsync(CSharpKernel engine, ScriptState state)
    {
        var workspace = (typeof(CSharpKernel).GetField("_workspace", Hidden)?.GetValue(engine))
            ?? throw new MissingFieldException(nameof(CSharpKernel), "_workspace");
        var update = workspace.GetType().GetMethod("UpdateWorkspaceAsync", Hidden)
            ?? throw new MissingMethodException(workspace.GetType().Name, "UpdateWorkspaceAsync");
        await ((Task)update.Invoke(workspace, [state])!).ConfigureAwait(false);
        typeof(CSharpKernel).GetProperty(nameof(CSharpKernel.ScriptState))!.SetValue(engine, state);
    }
}
