using System.Globalization;

namespace StrutLessons.Tests.House;

/// <summary>
/// Evaluates the numbers of a worked step: the arithmetic subset of TeX that steps are written in (fractions, roots, powers, products,
/// brackets, sin, cos, cot, tanh, ln, exp, arctan in degrees).
/// </summary>
internal sealed class TexArithmetic
{
    private readonly string _text;
    private int _at;

    private TexArithmetic(string text) => _text = text;

    internal static double Evaluate(string tex)
    {
        string text = tex.Replace(@"\left", "", StringComparison.Ordinal).Replace(@"\right", "", StringComparison.Ordinal)
            .Replace(@"\,", "", StringComparison.Ordinal).Replace(@"\tfrac", @"\frac", StringComparison.Ordinal)
            .Replace('[', '(').Replace(']', ')');
        var parser = new TexArithmetic(text);
        double value = parser.Sum();
        return parser.Peek() == '\0' ? value : throw new FormatException($"'{text[parser._at..]}' is left over in '{tex}'");
    }

    private double Sum()
    {
        double value = Product();
        while (true)
        {
            if (Take("+"))
            {
                value += Product();
            }
            else if (Take("-"))
            {
                value -= Product();
            }
            else
            {
                return value;
            }
        }
    }

    private double Product()
    {
        double value = Signed();
        while (true)
        {
            if (Take(@"\cdot"))
            {
                value *= Signed();
            }
            else if (Take("/"))
            {
                value /= Signed();
            }
            else if (Peek() is '(' or '\\' or (>= '0' and <= '9') && !Next(@"\circ"))
            {
                value *= Power();
            }
            else
            {
                return value;
            }
        }
    }

    private double Signed() => Take("-") ? -Signed() : Power();

    private double Power()
    {
        double value = Atom();
        if (Take(@"^\circ"))
        {
            return value * Math.PI / 180;
        }

        return Take("^") ? Math.Pow(value, Exponent()) : value;
    }

    private double Exponent() => Peek() == '{' ? Group() : Number();

    private double Atom()
    {
        if (Take("("))
        {
            double value = Sum();
            return Take(")") ? value : throw new FormatException($"')' is missing in '{_text}'");
        }

        if (Take(@"\frac"))
        {
            double top = Group();
            return top / Group();
        }

        if (Take(@"\sqrt"))
        {
            return Math.Sqrt(Group());
        }

        if (Take(@"\pi"))
        {
            return Math.PI;
        }

        foreach ((string name, Func<double, double> function) in Functions)
        {
            if (Take(@"\" + name))
            {
                double power = Take("^") ? Exponent() : 1;
                return Math.Pow(function(Power()), power);
            }
        }

        return Number();
    }

    private static readonly (string, Func<double, double>)[] Functions =
    [
        ("sinh", Math.Sinh), ("sin", Math.Sin), ("cosh", Math.Cosh), ("cos", Math.Cos), ("cot", x => 1 / Math.Tan(x)), ("coth", x => 1 / Math.Tanh(x)),
        ("tanh", Math.Tanh), ("tan", Math.Tan), ("ln", Math.Log), ("exp", Math.Exp), ("arctan", x => Math.Atan(x) * 180 / Math.PI),
    ];

    private double Group()
    {
        if (!Take("{"))
        {
            throw new FormatException($"'{{' is missing in '{_text}' at {_at}");
        }

        double value = Sum();
        return Take("}") ? value : throw new FormatException($"'}}' is missing in '{_text}'");
    }

    private double Number()
    {
        Peek();
        int start = _at;
        while (_at < _text.Length && (char.IsDigit(_text[_at]) || _text[_at] == '.'))
        {
            _at++;
        }

        return start < _at
            ? double.Parse(_text[start.._at], CultureInfo.InvariantCulture)
            : throw new FormatException($"a number is missing in '{_text}' at {start}");
    }

    private bool Next(string token)
    {
        Peek();
        return string.CompareOrdinal(_text, _at, token, 0, token.Length) == 0;
    }

    private bool Take(string token)
    {
        if (!Next(token))
        {
            return false;
        }

        _at += token.Length;
        return true;
    }

    private char Peek()
    {
        while (_at < _text.Length && _text[_at] == ' ')
        {
            _at++;
        }

        return _at < _text.Length ? _text[_at] : '\0';
    }
}
