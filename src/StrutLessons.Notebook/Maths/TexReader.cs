using System.Collections.Immutable;
using System.Globalization;

namespace StrutLessons.Notebook.Maths;

/// <summary>
/// Reads our subset of TeX mathematics. An unknown command is kept as an upright word, so that a slip shows on the page
/// instead of stopping the lesson; <see cref="UnknownCommands"/> lets a test find it.
/// </summary>
internal sealed class TexReader
{
    private readonly string _text;
    private readonly List<string> _unknown = [];
    private int _at;
    private bool _upright;

    private TexReader(string text) => _text = text;

    /// <summary>The formula as a tree.</summary>
    internal static MathNode Read(string tex) => new TexReader(tex).ReadAll();

    /// <summary>The commands in the formula that the subset does not know.</summary>
    internal static IReadOnlyList<string> UnknownCommands(string tex)
    {
        var reader = new TexReader(tex);
        reader.ReadAll();
        return reader._unknown;
    }

    private MathNode ReadAll()
    {
        var items = ImmutableArray.CreateBuilder<MathNode>();
        while (_at < _text.Length)
        {
            items.AddRange(ReadItems(""));
            if (_at < _text.Length)
            {
                _at++; // a closing brace without its partner
            }
        }

        return Join(items.ToImmutable());
    }

    /// <summary>Items up to the end, a closing brace, or one of the commands that end a part (right, end, \\, &amp;).</summary>
    private List<MathNode> ReadItems(string stop)
    {
        List<MathNode> items = [];
        while (_at < _text.Length && _text[_at] != '}' && !AtStop(stop))
        {
            if (ReadItem() is { } item)
            {
                items.Add(item);
            }
            else if (_at < _text.Length && _text[_at] is '_' or '^' or '\'')
            {
                MathNode under = items.Count > 0 ? items[^1] : Join([]);
                if (items.Count > 0)
                {
                    items.RemoveAt(items.Count - 1);
                }

                items.Add(ReadScripts(under));
            }
        }

        return items;
    }

    private bool AtStop(string stop) => stop switch
    {
        "right" => Looking(@"\right") && !Looking(@"\rightarrow"),
        "grid" => _text[_at] == '&' || Looking(@"\\") || Looking(@"\end"),
        "]" => _text[_at] == ']',
        _ => false,
    };

    private bool Looking(string ahead) => string.CompareOrdinal(_text, _at, ahead, 0, ahead.Length) == 0;

    /// <summary>One item without its scripts; null where a script, a blank or nothing visible stands.</summary>
    private MathNode? ReadItem()
    {
        char c = _text[_at];
        if (c is '_' or '^' or '\'')
        {
            return null;
        }

        if (char.IsDigit(c) || c == '.' && _at + 1 < _text.Length && char.IsDigit(_text[_at + 1]))
        {
            int from = _at;
            while (_at < _text.Length && (char.IsDigit(_text[_at]) || _text[_at] == '.' && _at + 1 < _text.Length && char.IsDigit(_text[_at + 1])))
            {
                _at++;
            }

            return new MathNode.Number(_text[from.._at]);
        }

        _at++;
        switch (c)
        {
            case '\\':
                return ReadCommand();
            case '{':
                MathNode group = Join([.. ReadItems("")]);
                _at++;
                return group;
            case ' ' or '\n' or '\t' or '\r':
                return null;
            case '~':
                return new MathNode.Space(0.25);
            case '+' or '*' or '·' or '×' or '±':
                return new MathNode.Sign(c.ToString(), SignKind.Binary);
            case '-' or '−':
                return new MathNode.Sign("−", SignKind.Binary);
            case '=' or '<' or '>' or '≤' or '≥' or '≈':
                return new MathNode.Sign(c.ToString(), SignKind.Relation);
            case '(' or '[':
                return new MathNode.Sign(c.ToString(), SignKind.Open);
            case ')' or ']':
                return new MathNode.Sign(c.ToString(), SignKind.Close);
            case ',' or ';' or ':':
                return new MathNode.Sign(c.ToString(), SignKind.Comma);
            default:
                return char.IsLetter(c) ? ReadLetters(c) : new MathNode.Sign(c.ToString(), SignKind.Plain);
        }
    }

    /// <summary>One slanted letter, or in an upright group the whole word.</summary>
    private MathNode.Name ReadLetters(char first)
    {
        int from = _at;
        while (_upright && _at < _text.Length && char.IsLetter(_text[_at]))
        {
            _at++;
        }

        return new MathNode.Name(first + _text[from.._at], _upright);
    }

    private MathNode ReadUpright()
    {
        bool outer = _upright;
        _upright = true;
        MathNode group = ReadArgument();
        _upright = outer;
        return group;
    }

    private MathNode ReadScripts(MathNode under)
    {
        MathNode? below = null, above = null;
        while (_at < _text.Length && _text[_at] is '_' or '^' or '\'')
        {
            char c = _text[_at++];
            if (c == '\'')
            {
                string primes = "′";
                while (_at < _text.Length && _text[_at] == '\'')
                {
                    primes += "′";
                    _at++;
                }

                MathNode prime = new MathNode.Sign(primes, SignKind.Plain);
                above = above is null ? prime : Join([above, prime]);
            }
            else if (c == '_')
            {
                below = IsWordAhead() ? ReadUpright() : ReadArgument();
            }
            else
            {
                MathNode exponent = ReadArgument();
                above = above is null ? exponent : Join([above, exponent]);
            }
        }

        return new MathNode.Script(under, below, above);
    }

    /// <summary>An index of several letters is an abbreviation (cr, eff, pl) and stands upright, unless it names axes (yz, uu).</summary>
    private bool IsWordAhead()
    {
        int close = _at < _text.Length && _text[_at] == '{' ? _text.IndexOf('}', _at) : -1;
        string inside = close > 0 ? _text[(_at + 1)..close] : "";
        return inside.Length > 1 && inside.All(char.IsAsciiLetter) && !inside.All(c => c is >= 'u' and <= 'z');
    }

    /// <summary>The next single token or braced group.</summary>
    private MathNode ReadArgument()
    {
        while (_at < _text.Length && _text[_at] == ' ')
        {
            _at++;
        }

        if (_at >= _text.Length)
        {
            return Join([]);
        }

        if (char.IsDigit(_text[_at]))
        {
            return new MathNode.Number(_text[_at++].ToString());
        }

        return ReadItem() ?? Join([]);
    }

    private string ReadWord()
    {
        int from = _at;
        while (_at < _text.Length && char.IsAsciiLetter(_text[_at]))
        {
            _at++;
        }

        if (_at == from && _at < _text.Length)
        {
            _at++;
        }

        return _text[from.._at];
    }

    private MathNode? ReadCommand()
    {
        string word = ReadWord();
        if (TexWords.Letters.TryGetValue(word, out string? letter))
        {
            return new MathNode.Name(letter, letter == "∂");
        }

        if (TexWords.Signs.TryGetValue(word, out (string Text, SignKind Kind) sign))
        {
            return new MathNode.Sign(sign.Text, sign.Kind);
        }

        if (TexWords.Functions.TryGetValue(word, out bool below))
        {
            return new MathNode.Function(word, below);
        }

        if (TexWords.Spaces.TryGetValue(word, out double em))
        {
            return em > 0 ? new MathNode.Space(em) : null;
        }

        if (TexWords.Accents.TryGetValue(word, out char mark))
        {
            return new MathNode.Accent(ReadArgument(), mark);
        }

        return TexWords.Ignored.Contains(word) ? null : ReadStructure(word);
    }

    private MathNode ReadStructure(string word)
    {
        switch (word)
        {
            case "frac" or "tfrac" or "dfrac":
                MathNode over = ReadArgument();
                return new MathNode.Fraction(over, ReadArgument());
            case "sqrt":
                MathNode? degree = null;
                if (_at < _text.Length && _text[_at] == '[')
                {
                    _at++;
                    degree = Join([.. ReadItems("]")]);
                    _at++;
                }

                return new MathNode.Root(ReadArgument(), degree);
            case "mathrm" or "mathbf" or "mathsf" or "boldsymbol":
                return ReadUpright();
            case "operatorname":
                return new MathNode.Function(ReadRaw(), false);
            case "text" or "textrm" or "textit" or "textbf" or "mbox":
                return new MathNode.Words(ReadRaw());
            case "left":
                return ReadFence();
            case "begin":
                return ReadGrid();
            default:
                _unknown.Add(word);
                return new MathNode.Words(word);
        }
    }

    private MathNode.Fence ReadFence()
    {
        string open = ReadDelimiter();
        MathNode body = Join([.. ReadItems("right")]);
        _at = Math.Min(_at + @"\right".Length, _text.Length);
        return new MathNode.Fence(open, body, ReadDelimiter());
    }

    private string ReadDelimiter()
    {
        if (_at >= _text.Length)
        {
            return "";
        }

        if (_text[_at] != '\\')
        {
            char c = _text[_at++];
            return c == '.' ? "" : c.ToString();
        }

        _at++;
        string word = ReadWord();
        return TexWords.Signs.TryGetValue(word, out (string Text, SignKind Kind) sign) ? sign.Text : word;
    }

    private MathNode.Grid ReadGrid()
    {
        string kind = ReadRaw();
        (string open, string close) = TexWords.Grids.TryGetValue(kind, out (string, string) known) ? known : ("", "");
        if (kind == "array")
        {
            ReadRaw();
        }

        var rows = ImmutableArray.CreateBuilder<ImmutableArray<MathNode>>();
        var row = ImmutableArray.CreateBuilder<MathNode>();
        while (_at < _text.Length)
        {
            row.Add(Join([.. ReadItems("grid")]));
            if (_at < _text.Length && _text[_at] == '&')
            {
                _at++;
                continue;
            }

            rows.Add(row.ToImmutable());
            row.Clear();
            bool more = Looking(@"\\");
            _at = Math.Min(_at + (more ? 2 : @"\end".Length), _text.Length);
            if (!more)
            {
                ReadRaw();
                break;
            }
        }

        return new MathNode.Grid(open, rows.ToImmutable(), close);
    }

    /// <summary>The text of a braced group as it stands, escapes taken off; used for words, units and names.</summary>
    private string ReadRaw()
    {
        if (_at >= _text.Length || _text[_at] != '{')
        {
            return _at < _text.Length ? _text[_at++].ToString(CultureInfo.InvariantCulture) : "";
        }

        int depth = 0, from = _at + 1;
        for (; _at < _text.Length; _at++)
        {
            if (_text[_at] == '\\')
            {
                _at++;
                continue;
            }

            depth += _text[_at] == '{' ? 1 : _text[_at] == '}' ? -1 : 0;
            if (depth == 0)
            {
                break;
            }
        }

        string raw = _text[Math.Min(from, _text.Length)..Math.Min(_at, _text.Length)];
        _at = Math.Min(_at + 1, _text.Length);
        return Unescape(raw);
    }

    private static string Unescape(string raw) => raw
        .Replace(@"\,", "\u2009", StringComparison.Ordinal).Replace(@"\ ", " ", StringComparison.Ordinal).Replace("~", "\u00A0", StringComparison.Ordinal)
        .Replace(@"\%", "%", StringComparison.Ordinal).Replace(@"\_", "_", StringComparison.Ordinal).Replace(@"\#", "#", StringComparison.Ordinal)
        .Replace(@"\&", "&", StringComparison.Ordinal).Replace(@"\$", "$", StringComparison.Ordinal)
        .Replace(@"\{", "{", StringComparison.Ordinal).Replace(@"\}", "}", StringComparison.Ordinal)
        .Replace(@"\cdot", "·", StringComparison.Ordinal);

    private static MathNode Join(ImmutableArray<MathNode> items) => items.Length == 1 ? items[0] : new MathNode.Row(items);
}
