using System.Text;

namespace StrutLessons.Studies;

/// <summary>Reads comma-separated values after RFC 4180 row by row: quoted fields may hold commas, quotes and line breaks.</summary>
public static class CsvRows
{
    private const int LongestRow = 1_000_000;

    /// <summary>The rows of a text, each a list of its fields; empty lines are left out.</summary>
    /// <param name="reader">The text; it is read as the rows are asked for.</param>
    /// <exception cref="InputException">A quote that is not closed, text behind a closing quote, or a row of more than a million characters.</exception>
    public static IEnumerable<IReadOnlyList<string>> Read(TextReader reader)
    {
        ArgumentNullException.ThrowIfNull(reader);
        return ReadAll(reader);
    }

    private static IEnumerable<IReadOnlyList<string>> ReadAll(TextReader reader)
    {
        List<string> row = [];
        var field = new StringBuilder();
        int number = 1, length = 0;
        bool quoted = false, closed = false;
        for (int c = reader.Read(); c >= 0; c = reader.Read())
        {
            if (++length > LongestRow)
            {
                throw Wrong(number, "more than a million characters", "shorter", "A quote may not be closed.");
            }

            if (quoted)
            {
                if (c != '"')
                {
                    field.Append((char)c);
                }
                else if (reader.Peek() == '"')
                {
                    field.Append((char)reader.Read());
                }
                else
                {
                    (quoted, closed) = (false, true);
                }
            }
            else if (c is ',' or '\n' or '\r')
            {
                row.Add(field.ToString());
                field.Clear();
                closed = false;
                if (c != ',')
                {
                    if (c == '\r' && reader.Peek() == '\n')
                    {
                        reader.Read();
                    }

                    if (row.Count > 1 || row[0].Length > 0)
                    {
                        yield return row;
                    }

                    (row, length) = ([], 0);
                    number++;
                }
            }
            else if (c == '"' && field.Length == 0 && !closed)
            {
                quoted = true;
            }
            else
            {
                field.Append(closed ? throw Wrong(number, "text behind a closing quote", "a comma there", "Double a quote that belongs to the text.") : (char)c);
            }
        }

        if (quoted)
        {
            throw Wrong(number, "a quote that is not closed", "closed with a second quote", "The file may be cut off.");
        }

        if (field.Length > 0 || row.Count > 0)
        {
            row.Add(field.ToString());
            yield return row;
        }
    }

    private static InputException Wrong(int row, string value, string allowed, string advice) => new($"row {row}", value, allowed, advice);
}
