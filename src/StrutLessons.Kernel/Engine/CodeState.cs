using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;

namespace StrutLessons.Kernel.Engine;

/// <summary>Whether code that is being typed can be run.</summary>
internal enum CodeCompleteness
{
    /// <summary>It can.</summary>
    Complete,

    /// <summary>More must follow.</summary>
    Incomplete,

    /// <summary>Nothing that follows can make it right.</summary>
    Invalid,
}

/// <summary>What the compiler's reader says about code that is being typed.</summary>
/// <param name="Kind">Whether it can be run.</param>
/// <param name="Indent">Blanks to begin the next line with, if more must follow.</param>
internal readonly record struct CodeState(CodeCompleteness Kind, string Indent)
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    internal static CodeState Of(string code)
    {
        var tree = CSharpSyntaxTree.ParseText(OwnReferences.Without(code), Script);
        if (!SyntaxFactory.IsCompleteSubmission(tree))
        {
            var open = tree.GetRoot().DescendantTokens().Sum(token => token.Kind() switch
            {
                SyntaxKind.OpenBraceToken when !token.IsMissing => 1,
                SyntaxKind.CloseBraceToken when !token.IsMissing => -1,
                _ => 0,
            });
            return new(CodeCompleteness.Incomplete, new string(' ', 4 * Math.Max(open, 0)));
        }
        return new(tree.GetDiagnostics().Any(fault => fault.Severity == DiagnosticSeverity.Error) ? CodeCompleteness.Invalid : CodeCompleteness.Complete, "");
    }
}
