using System.Collections.Immutable;
using StrutLessons.Notebook.Maths;

namespace StrutLessons.Notebook.Drawings;

/// <summary>A stretch of a label: its text, whether it stands below (−1), on (0) or above (+1) the line, and whether it is slanted.</summary>
internal readonly record struct Run(string Text, int Level, bool Slanted);

/// <summary>A line of words with mathematics between dollar signs, such as <c>"Load $N_R$ (kN)"</c>.</summary>
internal sealed record Label(ImmutableArray<Run> Runs)
{
    /// <summary>Size of an index against the size of the line.</summary>
    internal const double IndexSize = 0.74;

    internal static Label Read(string text)
    {
        var runs = ImmutableArray.CreateBuilder<Run>();
        string[] parts = text.Split('$');
        for (int i = 0; i < parts.Length; i++)
        {
            if (i % 2 == 1)
            {
                AddMaths(runs, TexReader.Read(parts[i]), 0);
            }
            else if (parts[i].Length > 0)
            {
                runs.Add(new Run(parts[i], 0, false));
            }
        }

        return new Label(runs.ToImmutable());
    }

    /// <summary>The label as one line of plain text.</summary>
    internal static string Plain(string text) =>
        string.Concat(text.Split('$').Select((part, i) => i % 2 == 1 ? PlainMaths.FromTex(part) : part));

    /// <summary>The label in the few tags that plotly.js knows.</summary>
    internal static string Tagged(string text) => string.Concat(Read(text).Runs.Select(run =>
    {
        string words = run.Text.Replace("&", "&amp;", StringComparison.Ordinal).Replace("<", "&lt;", StringComparison.Ordinal).Replace(">", "&gt;", StringComparison.Ordinal);
        string slanted = run.Slanted ? $"<i>{words}</i>" : words;
        return run.Level < 0 ? $"<sub>{slanted}</sub>" : run.Level > 0 ? $"<sup>{slanted}</sup>" : slanted;
    }));

    internal double Width(double size) => Runs.Sum(r => TextWidth.Of(r.Text, r.Level == 0 ? size : size * IndexSize));

    private static void AddMaths(ImmutableArray<Run>.Builder runs, MathNode node, int level)
    {
        switch (node)
        {
            case MathNode.Row row:
                for (int i = 0; i < row.Items.Length; i++)
                {
                    bool between = level == 0 && i > 0 && i < row.Items.Length - 1;
                    if (between && row.Items[i] is MathNode.Sign { Kind: SignKind.Relation or SignKind.Binary } sign)
                    {
                        runs.Add(new Run($" {sign.Text} ", level, false));
                    }
                    else
                    {
                        AddMaths(runs, row.Items[i], level);
                    }
                }

                break;
            case MathNode.Name name:
                runs.Add(new Run(name.Text, level, !name.Upright && char.IsLetter(name.Text[0])));
                break;
            case MathNode.Script script:
                AddMaths(runs, script.Base, level);
                AddMaths(runs, script.Below ?? new MathNode.Row([]), -1);
                AddMaths(runs, script.Above ?? new MathNode.Row([]), script.Above is MathNode.Sign { Text: "°" or "′" or "′′" } ? level : 1);
                break;
            case MathNode.Accent or MathNode.Fraction or MathNode.Root or MathNode.Fence or MathNode.Grid:
                runs.Add(new Run(PlainMaths.Text(node), level, node is MathNode.Accent));
                break;
            default:
                runs.Add(new Run(PlainMaths.Text(node), level, false));
                break;
        }
    }
}
