using System.Text.Json;
using StrutLessons.Studies;

namespace StrutLessons.Tests.Studies;

/// <summary>Files of studies: the same bytes whatever the threads, nothing lost when stopped, parts that fit together.</summary>
public sealed class StudyFileTests : IDisposable
{
    private static readonly Study Grid = Study.Of(new StudyStrut())
        .Vary(StudyVariable.Section, "L 50x50x5", "L 80x80x8", "L 150x150x15")
        .Range(StudyVariable.GussetThickness, 6, 20, 8)
        .Range(StudyVariable.Slenderness, 0.4, 2.6, 300)
        .Where(s => s.GussetThickness < 20 || s.Slenderness < 2.5);

    private readonly string folder = Directory.CreateTempSubdirectory().FullName;

    public void Dispose() => Directory.Delete(folder, true);

    [Fact]
    public void The_same_study_gives_the_same_bytes_on_one_two_and_five_threads()
    {
        byte[] one = Bytes(Grid, "one", 1);
        Assert.True(one.AsSpan().SequenceEqual(Bytes(Grid, "two", 2)));
        Assert.True(one.AsSpan().SequenceEqual(Bytes(Grid, "five", 5)));
        Study sample = Grid.Sample(3000, key: 42);
        Assert.True(Bytes(sample, "s1", 1).AsSpan().SequenceEqual(Bytes(sample, "s2", 2)));
        Assert.False(Bytes(Grid.Sample(3000, key: 43), "s3", 2).AsSpan().SequenceEqual(Bytes(sample, "s4", 2)));
    }

    [Fact]
    public void A_combination_that_no_strut_can_have_stays_as_a_row_with_the_reason()
    {
        StudyTable table = Grid.Run();
        int[] small = [.. Enumerable.Range(0, table.RowCount).Where(i => table.Words("section")[i] == "L 50x50x5")];
        Assert.Equal(table.ProblemCount, small.Length);
        Assert.All(small, i => Assert.Contains("smaller bolts", table.Words("problem")[i], StringComparison.Ordinal));
        Assert.All(small, i => Assert.True(double.IsNaN(table.Numbers("capacity")[i])));
        Assert.DoesNotContain(table.Solved().Words("section"), s => s == "L 50x50x5");
    }

    [Fact]
    public void A_filter_leaves_rows_out_and_keeps_the_numbers_of_the_others()
    {
        StudyTable table = Grid.Run();
        Assert.True(table.RowCount < Grid.Count);
        Assert.All(Enumerable.Range(0, table.RowCount), i => Assert.True(table.Numbers("gusset thickness")[i] < 20 || table.Numbers("slenderness")[i] < 2.5));
        Assert.Equal(Grid.Count - 14, table.Numbers("case")[^1]); // 14 of the 300 slendernesses reach 2.5
    }

    [Fact]
    public void A_stopped_study_keeps_what_is_done_and_goes_on_to_the_same_bytes()
    {
        byte[] whole = Bytes(Grid, "whole", 2);
        string path = At("stopped");
        using var stop = new CancellationTokenSource();
        var settings = new StudySettings { Threads = 2, Progress = new Reports(p => stop.Cancel()) };
        Assert.ThrowsAny<OperationCanceledException>(() => Grid.Write(path, settings, stop.Token));
        byte[] half = File.ReadAllBytes(path);
        Assert.InRange(half.Length, 1000, whole.Length - 1);
        Assert.True(whole.AsSpan().StartsWith(half));
        Grid.Write(path, new StudySettings { Threads = 2 });
        Assert.True(whole.AsSpan().SequenceEqual(File.ReadAllBytes(path)));
    }

    [Fact]
    public void A_row_cut_off_by_a_crash_is_written_again()
    {
        byte[] whole = Bytes(Grid, "whole", 2);
        foreach (int length in new[] { 0, 5, 200, whole.Length / 2, whole.Length - 1, whole.Length })
        {
            string path = At("cut" + length);
            File.WriteAllBytes(path, whole[..length]);
            long rows = Grid.Write(path);
            Assert.True(whole.AsSpan().SequenceEqual(File.ReadAllBytes(path)), $"cut at {length}");
            Assert.Equal(whole.Count(b => b == '\n') - 1, rows);
        }
    }

    [Fact]
    public void A_file_of_another_study_is_refused_and_stays_as_it_is()
    {
        byte[] before = Bytes(Grid, "other", 2);
        Study other = Study.Of(new StudyStrut { FreeLength = 80 }).Vary(StudyVariable.Section, "L 50x50x5", "L 80x80x8", "L 150x150x15")
            .Range(StudyVariable.GussetThickness, 6, 20, 8).Range(StudyVariable.Slenderness, 0.4, 2.6, 300);
        Assert.Contains("Choose another name", Assert.Throws<InputException>(() => other.Write(At("other"))).Message, StringComparison.Ordinal);
        Assert.Equal(before, File.ReadAllBytes(At("other")));
    }

    [Fact]
    public void Parts_put_together_are_the_whole()
    {
        byte[] whole = Bytes(Grid, "whole", 2);
        string[] parts = [.. Enumerable.Range(1, 3).Select(i => At("part" + i))];
        for (int i = 1; i <= 3; i++)
        {
            Grid.Write(parts[i - 1], StudySettings.Default.ForPart(i, 3));
        }

        long rows = StudyFile.Merge([parts[2], parts[0], parts[1]], At("merged"));
        Assert.True(whole.AsSpan().SequenceEqual(File.ReadAllBytes(At("merged"))));
        Assert.Equal(whole.Count(b => b == '\n') - 1, rows);
        Assert.Throws<InputException>(() => StudyFile.Merge([parts[0], parts[0]], At("twice")));
    }

    [Fact]
    public void A_file_reads_back_as_the_table_in_memory()
    {
        Bytes(Grid, "back", 2);
        StudyTable read = StudyTable.Read(At("back")), kept = Grid.Run();
        Assert.Equal(kept.Columns.ToArray(), read.Columns.ToArray());
        Assert.Equal(kept.Words("problem").ToArray(), read.Words("problem").ToArray());
        foreach (StudyColumn column in kept.Columns.Where(c => c.IsNumber))
        {
            Assert.All(kept.Numbers(column.Name).Zip(read.Numbers(column.Name)), p =>
            {
                Assert.Equal(double.IsNaN(p.First), double.IsNaN(p.Second));
                Closeness.Relative(double.IsNaN(p.First) ? 0 : p.First, double.IsNaN(p.Second) ? 0 : p.Second, 1e-11, column.Name);
            });
        }
    }

    [Fact]
    public void Every_column_has_a_unit_or_holds_words_and_is_described()
    {
        Bytes(Grid.Find([.. StudyQuantity.All.Where(q => q != StudyQuantity.Reference && q != StudyQuantity.WithRoll)]).Sample(3, 1), "described", 1);
        Assert.All(StudyTable.Read(At("described")).Columns, c => Assert.NotEmpty(c.Description));
        using JsonDocument described = JsonDocument.Parse(File.ReadAllBytes(StudyFile.DescriptionOf(At("described"))));
        Assert.All(described.RootElement.GetProperty("columns").EnumerateArray(), c => Assert.NotEmpty(c.GetProperty("description").GetString()!));
        Assert.Contains("not a design check", described.RootElement.GetProperty("caution").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_json_form_holds_the_same_rows()
    {
        Bytes(Grid, "json", 2);
        StudyJson.Write(At("json"), At("rows.json"));
        using JsonDocument json = JsonDocument.Parse(File.ReadAllBytes(At("rows.json")));
        StudyTable table = StudyTable.Read(At("json"));
        JsonElement[] rows = [.. json.RootElement.GetProperty("rows").EnumerateArray()];
        Assert.Equal(table.RowCount, rows.Length);
        int capacity = table.Columns.IndexOf(table.Column("capacity"));
        Assert.Equal(JsonValueKind.Null, rows[0][capacity].ValueKind);
        Assert.Equal(table.Numbers("capacity")[^1], rows[^1][capacity].GetDouble());
    }

    [Theory]
    [InlineData("a,b\r\n\"x, \"\"y\"\"\",2\r\n", "x, \"y\"")]
    [InlineData("a,b\n\"two\nlines\",2", "two\nlines")]
    public void Quoted_fields_hold_commas_quotes_and_line_breaks(string text, string field) =>
        Assert.Equal(field, CsvRows.Read(new StringReader(text)).ElementAt(1)[0]); // RFC 4180, 2.5 to 2.7

    private byte[] Bytes(Study study, string name, int threads)
    {
        study.Write(At(name), new StudySettings { Threads = threads });
        return File.ReadAllBytes(At(name));
    }

    private string At(string name) => Path.Combine(folder, name);

    private sealed class Reports(Action<StudyProgress> on) : IProgress<StudyProgress>
    {
        public void Report(StudyProgress value) => on(value);
    }
}
