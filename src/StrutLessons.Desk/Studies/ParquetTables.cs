using System.Globalization;
using Parquet;
using Parquet.Schema;
using StrutLessons.Studies;

namespace StrutLessons.Desk.Studies;

/// <summary>Writes tables of studies as Parquet, some ten thousand rows at a time. Names carry the units; the descriptions are in the file's metadata.</summary>
internal static class ParquetTables
{
    private const int GroupRows = 50_000;

    internal static async Task WriteAsync(string table, string path, CancellationToken cancel)
    {
        var columns = Columns(table);
        var schema = new ParquetSchema(columns.Select(c => c.IsNumber ? (Field)new DataField<double?>(c.Heading) : new DataField<string>(c.Heading)));
        await using var file = new FileStream(path, FileMode.Create, FileAccess.ReadWrite, FileShare.None, 1 << 16);
        await using var writer = await ParquetWriter.CreateAsync(schema, file, cancellationToken: cancel).ConfigureAwait(false);
        writer.CustomMetadata = columns.ToDictionary(c => c.Heading, c => c.Description).Append(new("caution", StudyJson.Caution)).ToDictionary();
        using var reader = new StreamReader(table);
        foreach (var rows in CsvRows.Read(reader).Skip(1).Chunk(GroupRows))
        {
            using var group = writer.CreateRowGroup();
            for (var c = 0; c < columns.Length; c++)
            {
                if (columns[c].IsNumber)
                {
                    ReadOnlyMemory<double?> numbers = rows.Select(r => NumberOf(r[c])).ToArray();
                    await group.WriteAsync<double>(schema.DataFields[c], numbers, null, null, cancel).ConfigureAwait(false);
                }
                else
                {
                    IReadOnlyCollection<string> words = [.. rows.Select(r => r[c])];
                    await group.WriteAsync(schema.DataFields[c], words).ConfigureAwait(false);
                }
            }
        }
    }

    /// <summary>A column with a unit holds numbers; words have none.</summary>
    private static StudyColumn[] Columns(string table)
    {
        using var reader = new StreamReader(table);
        return [.. StudyColumn.Read(CsvRows.Read(reader).First())];
    }

    private static double? NumberOf(string text) => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;
}
