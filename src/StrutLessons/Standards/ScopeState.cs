namespace StrutLessons.Standards;

/// <summary>How a condition of a rule stands for a strut.</summary>
public enum ScopeState
{
    /// <summary>Checked and met.</summary>
    Met,

    /// <summary>Checked and not met: the rule gives no resistance.</summary>
    NotMet,

    /// <summary>Cannot be seen from the strut's data; the reader must know that it holds.</summary>
    Assumed,
}
