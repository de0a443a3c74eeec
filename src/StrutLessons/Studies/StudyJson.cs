using System.Globalization;
using System.Text.Json;

namespace StrutLessons.Studies;

/// <summary>Tables of studies as JSON: the columns with unit and description, then the rows.</summary>
public static class StudyJson
{
    /// <summary>The words that every table carries.</summary>
    public const string Caution = "Teaching aid, not a design check; local codes and licensed practice decide.";

    private static readonly JsonWriterOptions Pretty = new() { Indented = true, NewLine = "\n" };

    /// <summary>
    /// Writes a table of comma-separated values as JSON, row by row: <c>{"caution": …, "columns": [{"name", "unit", "description"}], "rows": [[…], …]}</c>.
    /// A number that does not exist is null.
    /// </summary>
    /// <param name="table">File that a study wrote.</param>
    /// <param name="path">File to write.</param>
    /// <exception cref="InputException">The file is not such a table.</exception>
    public static void Write(string table, string path)
    {
        using var reader = new StreamReader(table);
        using var file = new FileStream(path, FileMode.Create, FileAccess.Write, FileShare.None, 1 << 20);
        using var json = new Utf8JsonWriter(file);
        StudyColumn[]? columns = null;
        json.WriteStartObject();
        json.WriteString("caution", Caution);
        foreach (IReadOnlyList<string> row in CsvRows.Read(reader))
        {
            if (columns is null)
            {
                columns = [.. StudyColumn.Read(row)];
                Columns(json, columns);
                json.WriteStartArray("rows");
                continue;
            }

            json.WriteStartArray();
            for (int c = 0; c < columns.Length; c++)
            {
                Field(json, columns[c], c < row.Count ? row[c] : "");
            }

            json.WriteEndArray();
            if (json.BytesPending > 1 << 18)
            {
                json.Flush();
            }
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    /// <summary>What the columns of a study mean, and how its cases were chosen.</summary>
    internal static byte[] Description(Study study)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream, Pretty))
        {
            json.WriteStartObject();
            json.WriteString("caution", Caution);
            json.WriteString("sampling", ChoiceWords.Of(study.Sampling.ToString()));
            json.WriteNumber("cases", study.Count);
            if (study.Sampling != StudySampling.Grid)
            {
                json.WriteNumber("key", study.Key);
            }

            Columns(json, StudyColumn.Of(study));
            json.WriteEndObject();
        }

        return [.. stream.ToArray(), (byte)'\n'];
    }

    private static void Columns(Utf8JsonWriter json, IReadOnlyList<StudyColumn> columns)
    {
        json.WriteStartArray("columns");
        foreach (StudyColumn column in columns)
        {
            json.WriteStartObject();
            json.WriteString("name", column.Name);
            json.WriteString("unit", column.Unit);
            json.WriteString("description", column.Description);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Field(Utf8JsonWriter json, StudyColumn column, string text)
    {
        if (!column.IsNumber)
        {
            json.WriteStringValue(text);
        }
        else if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && double.IsFinite(value))
        {
            json.WriteNumberValue(value);
        }
        else
        {
            json.WriteNullValue();
        }
    }
}
