namespace StrutLessons.Studies;

/// <summary>Names of choices as words: <c>GirderFlange</c> reads "girder flange".</summary>
internal static class ChoiceWords
{
    internal static string Of(string name) =>
        string.Concat(name.Select((c, i) => char.IsUpper(c) ? (i > 0 ? " " : "") + char.ToLowerInvariant(c) : c.ToString()));

    /// <exception cref="InputException">No choice has these words.</exception>
    internal static object Read<T>(string text, string field) where T : struct, Enum
    {
        foreach (T value in Enum.GetValues<T>())
        {
            if (Of(value.ToString()) == text)
            {
                return value;
            }
        }

        throw new InputException(field, $"'{text}'", "one of " + string.Join(", ", Enum.GetNames<T>().Select(Of)), "Choose one of these words.");
    }
}
