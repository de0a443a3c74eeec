using System.Text;

namespace StrutLessons;

/// <summary>Reads tables in the form of RFC 4180: commas between fields, double quotes around a field that holds a comma.</summary>
internal static class CsvText
{
    /// <summary>The rows of an embedded table as dictionaries from column name to text, without the heading row.</summary>
    internal static IReadOnlyList<IReadOnlyDictionary<string, string>> Resource(string fileName)
    {
        using Stream stream = typeof(CsvText).Assembly.GetManifestResourceStream(fileName)
            ?? throw new InvalidOperationException($"The table '{fileName}' is not embedded in the library.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        var rows = new List<IReadOnlyDictionary<string, string>>();
        List<string>? heading = null;
        while (reader.ReadLine() is { } line)
        {
            if (line.Length == 0)
            {
                continue;
            }

            List<string> fields = Fields(line);
            if (heading is null)
            {
                heading = fields;
            }
            else
            {
                rows.Add(heading.Zip(fields).ToDictionary(p => p.First, p => p.Second));
            }
        }

        return rows;
    }

    /// <summary>The fields of one line.</summary>
    internal static List<string> Fields(string line)
    {
        var fields = new List<string>();
        var field = new StringBuilder();
        bool quoted = false;
        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (quoted && c == '"' && i + 1 < line.Length && line[i + 1] == '"')
            {
                field.Append('"');
                i++;
            }
            else if (c == '"')
            {
                quoted = !quoted;
            }
            else if (c == ',' && !quoted)
            {
                fields.Add(field.ToString());
                field.Clear();
            }
            else
            {
                field.Append(c);
            }
        }

        fields.Add(field.ToString());
        return fields;
    }
}
