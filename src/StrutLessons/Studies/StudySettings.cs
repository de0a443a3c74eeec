namespace StrutLessons.Studies;

/// <summary>How far a study has come.</summary>
/// <param name="Done">Cases done, those of an earlier run included.</param>
/// <param name="Total">All cases of this part.</param>
/// <param name="PerSecond">Cases per second of this run.</param>
/// <param name="Remaining">Estimated time to the end.</param>
public readonly record struct StudyProgress(long Done, long Total, double PerSecond, TimeSpan Remaining);

/// <summary>How a study is run. The results do not depend on the number of threads. Immutable.</summary>
public sealed record StudySettings
{
    private readonly int threads = Environment.ProcessorCount;
    private readonly int part = 1, parts = 1;

    /// <summary>All cores, the whole study, no report.</summary>
    public static StudySettings Default { get; } = new();

    /// <summary>Threads at work; all cores unless given.</summary>
    /// <exception cref="InputException">Outside 1 to 1024.</exception>
    public int Threads
    {
        get => threads;
        init => threads = Guard.Within(value, 1, 1024, "threads", "Leave it out to use all cores.");
    }

    /// <summary>Which part of the study is run, from 1; merge the parts with <see cref="StudyFile.Merge"/>.</summary>
    public int Part
    {
        get => part;
        private init => part = value;
    }

    /// <summary>Into how many parts the study is cut.</summary>
    public int Parts
    {
        get => parts;
        private init => parts = value;
    }

    /// <summary>Receives the progress some times a second.</summary>
    public IProgress<StudyProgress>? Progress { get; init; }

    /// <summary>The same settings for one part of several, each a run of neighbouring cases.</summary>
    /// <exception cref="InputException">No such part.</exception>
    public StudySettings ForPart(int part, int parts)
    {
        Guard.Within(parts, 1, 100_000, "parts", "Give the number of parts.");
        return this with { Part = Guard.Within(part, 1, parts, "part", "Parts are numbered from 1."), Parts = parts };
    }

    /// <summary>First case of the part and the one behind its last, from 0.</summary>
    internal (long From, long To) Slice(long count) => ((long)((Int128)count * (Part - 1) / Parts), (long)((Int128)count * Part / Parts));
}
