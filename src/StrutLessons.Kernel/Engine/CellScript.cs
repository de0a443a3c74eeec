using System.Reflection;
using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Scripting;
using Microsoft.CodeAnalysis.Scripting;
using Microsoft.DotNet.Interactive.Formatting;

namespace StrutLessons.Kernel.Engine;

/// <summary>The cells that have run, as one growing script: what a cell defines, the next one can use.</summary>
internal sealed class CellScript
{
    private static readonly MethodInfo HasReturnValue =
        typeof(Script).GetMethod(nameof(HasReturnValue), BindingFlags.Instance | BindingFlags.NonPublic)
        ?? throw new MissingMethodException(nameof(Script), nameof(HasReturnValue));

    private ScriptOptions _options;
    private ScriptState? _state;
    private string? _folder;

    private CellScript() =>
        // Debug information, so that a failure can name its line.
        _options = ScriptOptions.Default
            .WithLanguageVersion(LanguageVersion.Latest)
            .WithEmitDebugInformation(true)
            .WithFileEncoding(Encoding.UTF8)
            .AddReferences(
                Preload.AssemblyFiles
                    .Concat(new[] { typeof(Enumerable), typeof(Microsoft.DotNet.Interactive.Kernel), typeof(Formatter) }.Select(type => type.Assembly.Location))
                    .Select(file => KeptReferences.Mapped(file)));

    /// <summary>The script after the cell that every lesson's cells follow.</summary>
    internal static async Task<CellScript> StartAsync()
    {
        var script = new CellScript();
        script.FollowFolder();
        script._state = await CSharpScript.RunAsync(Preload.Code, script._options).ConfigureAwait(false);
        return script;
    }

    /// <summary>What ran last.</summary>
    internal ScriptState State => _state!;

    /// <summary>True if the last cell ended with a value.</summary>
    internal bool HasValue => (bool)HasReturnValue.Invoke(State.Script, null)!;

    /// <summary>Compiles and runs a cell. If it fails as it runs, the state holds the exception.</summary>
    /// <exception cref="CompilationErrorException">The cell is no C#; nothing of it ran.</exception>
    internal async Task RunAsync(string code, CancellationToken cancel)
    {
        FollowFolder();
        _state = await State.ContinueWithAsync(code, _options, static _ => true, cancel).ConfigureAwait(false);
    }

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
