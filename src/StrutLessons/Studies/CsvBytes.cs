using System.Globalization;
using System.Text;

namespace StrutLessons.Studies;

/// <summary>Rows of a study as bytes of comma-separated values (RFC 4180), written without strings in between. Used again for one chunk after another.</summary>
internal sealed class CsvBytes : IStudyRows
{
    private byte[] bytes = new byte[1 << 16];
    private int length;

    internal ReadOnlySpan<byte> Written => bytes.AsSpan(0, length);

    internal int Rows { get; private set; }

    public void Add(Study study, long index, ReadOnlySpan<double> places, StudyResult result)
    {
        Room(32);
        (index + 1).TryFormat(bytes.AsSpan(length), out int written, default, CultureInfo.InvariantCulture);
        length += written;
        for (int f = 0; f < study.Factors.Length; f++)
        {
            StudyFactor factor = study.Factors[f];
            Comma();
            if (!factor.Variable.IsNumber)
            {
                Text(factor.Names[(int)places[f]]);
            }
            else
            {
                Number(factor.IsInterval ? places[f] : factor.Numbers[(int)places[f]], default);
            }
        }

        foreach (StudyQuantity quantity in study.Quantities)
        {
            Comma();
            if (result.Problem is not null)
            {
                continue;
            }

            if (quantity.Number is { } number)
            {
                Number(number(result), "G12");
            }
            else
            {
                Text(quantity.Word!(result));
            }
        }

        Comma();
        Text(result.Problem ?? "");
        Room(2);
        bytes[length++] = (byte)'\r';
        bytes[length++] = (byte)'\n';
        Rows++;
    }

    internal void Clear() => (length, Rows) = (0, 0);

    internal static byte[] Heading(Study study)
    {
        var row = new CsvBytes();
        foreach (StudyColumn column in StudyColumn.Of(study))
        {
            if (row.length > 0)
            {
                row.Comma();
            }

            row.Text(column.Heading);
        }

        return [.. row.Written, (byte)'\r', (byte)'\n'];
    }

    private void Comma()
    {
        Room(1);
        bytes[length++] = (byte)',';
    }

    /// <summary>Twelve digits for results, all digits for inputs; nothing where there is no number.</summary>
    private void Number(double value, ReadOnlySpan<char> format)
    {
        if (double.IsFinite(value))
        {
            Room(32);
            value.TryFormat(bytes.AsSpan(length), out int written, format, CultureInfo.InvariantCulture);
            length += written;
        }
    }

    private void Text(string text)
    {
        Room(6 * text.Length + 2);
        if (text.AsSpan().IndexOfAny(",\"\r\n") < 0)
        {
            length += Encoding.UTF8.GetBytes(text, bytes.AsSpan(length));
            return;
        }

        // A row is a line: breaks inside a text become blanks.
        string quoted = '"' + text.Replace("\"", "\"\"", StringComparison.Ordinal).Replace('\r', ' ').Replace('\n', ' ') + '"';
        length += Encoding.UTF8.GetBytes(quoted, bytes.AsSpan(length));
    }

    private void Room(int more)
    {
        if (length + more > bytes.Length)
        {
            Array.Resize(ref bytes, Math.Max(2 * bytes.Length, length + more));
        }
    }
}
