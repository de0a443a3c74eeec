using System.Text;
using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace StrutLessons.Desk.Site;

/// <summary>
/// Marks the words of C# source for the style sheet: keyword, type, call, text, number, comment. The compiler's own parser
/// reads the source, so that new syntax needs no new rules here.
/// </summary>
public static class CodeColours
{
    private static readonly CSharpParseOptions Script = new(LanguageVersion.Latest, kind: SourceCodeKind.Script);

    /// <summary>The source as HTML; wrong source is coloured as far as it can be read.</summary>
    public static string ToHtml(string code)
    {
        var html = new StringBuilder(code.Length * 2);
        foreach (var token in CSharpSyntaxTree.ParseText(code, Script).GetRoot().DescendantTokens())
        {
            AppendTrivia(html, token.LeadingTrivia);
            Append(html, ClassOf(token), token.Text);
            AppendTrivia(html, token.TrailingTrivia);
        }
        return html.ToString();
    }

    private static void AppendTrivia(StringBuilder html, SyntaxTriviaList list)
    {
        foreach (var trivia in list)
        {
            var kind = trivia.Kind();
            var isSpace = kind is SyntaxKind.WhitespaceTrivia or SyntaxKind.EndOfLineTrivia;
            var isSkipped = kind is SyntaxKind.SkippedTokensTrivia;
            Append(html, isSpace || isSkipped ? "" : trivia.IsDirective ? "k" : "c", trivia.ToFullString());
        }
    }

    private static void Append(StringBuilder html, string name, string text)
    {
        if (name.Length == 0)
        {
            html.Append(Html.Escape(text));
        }
        else if (text.Length > 0)
        {
            html.Append($"<span class=\"{name}\">").Append(Html.Escape(text)).Append("</span>");
        }
    }

    private static string ClassOf(SyntaxToken token)
    {
        var kind = token.Kind();
        if (kind is SyntaxKind.NumericLiteralToken)
        {
            return "n";
        }
        if (kind is SyntaxKind.StringLiteralToken or SyntaxKind.CharacterLiteralToken or SyntaxKind.SingleLineRawStringLiteralToken
            or SyntaxKind.MultiLineRawStringLiteralToken or SyntaxKind.Utf8StringLiteralToken or SyntaxKind.InterpolatedStringTextToken
            or SyntaxKind.InterpolatedStringStartToken or SyntaxKind.InterpolatedStringEndToken or SyntaxKind.InterpolatedVerbatimStringStartToken)
        {
            return "s";
        }
        if (SyntaxFacts.IsKeywordKind(kind) || (kind is SyntaxKind.IdentifierToken && token.Text == "var" && token.Parent is IdentifierNameSyntax))
        {
            return "k";
        }
        return kind is SyntaxKind.IdentifierToken ? ClassOfName(token) : "";
    }

    private static string ClassOfName(SyntaxToken name) => name.Parent switch
    {
        BaseTypeDeclarationSyntax or DelegateDeclarationSyntax => "t",
        MethodDeclarationSyntax or LocalFunctionStatementSyntax => "m",
        SimpleNameSyntax { Parent: InvocationExpressionSyntax } => "m",
        SimpleNameSyntax { Parent: MemberAccessExpressionSyntax { Parent: InvocationExpressionSyntax } access } called when access.Name == called => "m",
        // A name with a capital before a dot is a type in the lessons' style: locals start small.
        SimpleNameSyntax { Parent: MemberAccessExpressionSyntax access } owner when access.Expression == owner && char.IsUpper(name.Text[0]) => "t",
        SimpleNameSyntax { Parent: ObjectCreationExpressionSyntax or VariableDeclarationSyntax or ParameterSyntax or TypeArgumentListSyntax
            or NullableTypeSyntax or ArrayTypeSyntax or CastExpressionSyntax or BaseTypeSyntax or LocalFunctionStatementSyntax or MethodDeclarationSyntax } => "t",
        _ => "",
    };
}
