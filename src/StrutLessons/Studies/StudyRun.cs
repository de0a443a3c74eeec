using System.Diagnostics;

namespace StrutLessons.Studies;

/// <summary>Receives the rows of a chunk, one after another.</summary>
internal interface IStudyRows
{
    void Add(Study study, long index, ReadOnlySpan<double> places, StudyResult result);
}

/// <summary>Cuts a study into chunks, solves them in parallel, and hands their rows on in order.</summary>
internal static class StudyRun
{
    internal static StudyTable ToTable(Study study, StudySettings settings, CancellationToken cancel)
    {
        var table = new TableRows(study);
        (long from, long to) = settings.Slice(study.Checked().Count);
        if (to - from > 20_000_000)
        {
            throw Guard.Fail(to - from, "number of cases", "", "at most 20 million in memory", "Write the study to a file with Write(path), or run it in parts.");
        }

        Run(study, settings, from, to, () => new TableRows(study), table.Append, cancel);
        return table.ToTable();
    }

    /// <summary>Solves the cases from … to − 1.</summary>
    /// <param name="study">The study.</param>
    /// <param name="settings">Threads and progress.</param>
    /// <param name="from">First case, from 0.</param>
    /// <param name="to">The case behind the last.</param>
    /// <param name="chunk">Makes what collects the rows of one chunk.</param>
    /// <param name="take">Receives the chunks in order, one at a time.</param>
    /// <param name="cancel">Stops the run.</param>
    internal static void Run<T>(Study study, StudySettings settings, long from, long to, Func<T> chunk, Action<T> take, CancellationToken cancel)
        where T : class, IStudyRows
    {
        if (from >= to)
        {
            return;
        }

        int size = ChunkSize(study);
        long total = to - settings.Slice(study.Count).From, before = total - (to - from), done = 0;
        var clock = Stopwatch.StartNew();
        TimeSpan told = TimeSpan.FromSeconds(-1);
        new OrderedChunks<T>(0, (to - from + size - 1) / size, settings.Threads, _ => Worker(), Take, cancel).Run();

        Func<long, T> Worker()
        {
            var solver = new StudySolver(study.Needs, study.Rules);
            var places = new double[study.Factors.Length];
            return number =>
            {
                T rows = chunk();
                long end = Math.Min(to, from + (number + 1) * size);
                for (long index = from + number * size; index < end; index++)
                {
                    Row(study, solver, index, places, rows);
                }

                return rows;
            };
        }

        void Take(T rows)
        {
            take(rows);
            done = Math.Min(done + size, to - from);
            if (settings.Progress is { } progress && (clock.Elapsed - told > TimeSpan.FromSeconds(0.2) || done == to - from))
            {
                told = clock.Elapsed;
                double perSecond = done / Math.Max(told.TotalSeconds, 1e-6);
                progress.Report(new(before + done, total, perSecond, TimeSpan.FromSeconds((to - from - done) / perSecond)));
            }
        }
    }

    /// <summary>Solves one case and adds its row, unless a filter leaves it out.</summary>
    internal static void Row(Study study, StudySolver solver, long index, Span<double> places, IStudyRows rows)
    {
        study.Places(index, places);
        StudyStrut strut;
        try
        {
            strut = study.At(places);
        }
        catch (InputException wrong)
        {
            solver.Result.Problem = wrong.Message;
            rows.Add(study, index, places, solver.Result);
            return;
        }

        if (study.Keeps(strut))
        {
            solver.Solve(strut);
            rows.Add(study, index, places, solver.Result);
        }
    }

    /// <summary>About ten milliseconds of work: long enough to forget the cost of handing over, short enough to stop at once.</summary>
    private static int ChunkSize(Study study)
    {
        bool plates = study.Strut.Method == JointMethod.Plates || study.Factors.Any(f => f.Variable == StudyVariable.Method);
        return study.Needs.HasFlag(StudyAnalyses.Reference) ? 1 : plates || study.Needs.HasFlag(StudyAnalyses.Roll) ? 4 : study.Rules.Count > 0 ? 128 : 1024;
    }
}
