namespace StrutLessons;

/// <summary>
/// An input that no strut can have. The message names the field, the value, the allowed range and what to do.
/// </summary>
public sealed class InputException : ArgumentException
{
    /// <summary>Builds the message "field = value unit is not allowed: allowed range. Advice."</summary>
    /// <param name="field">The input's name in words, for example <c>gauge</c>.</param>
    /// <param name="value">The value as given, with its unit.</param>
    /// <param name="allowed">The allowed range in words, for example <c>between 24 and 56 mm</c>.</param>
    /// <param name="advice">What to do, as a sentence.</param>
    public InputException(string field, string value, string allowed, string advice)
        : base($"{field} = {value} is not allowed: it must be {allowed}. {advice}")
    {
        Field = field;
        Value = value;
        Allowed = allowed;
        Advice = advice;
    }

    /// <summary>The input's name in words.</summary>
    public string Field { get; }

    /// <summary>The value as given, with its unit.</summary>
    public string Value { get; }

    /// <summary>The allowed range in words.</summary>
    public string Allowed { get; }

    /// <summary>What to do, as a sentence.</summary>
    public string Advice { get; }
}
