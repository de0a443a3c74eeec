using System.Text;

namespace StrutLessons.Desk.Site;

/// <summary>Text inside a page.</summary>
internal static class Html
{
    /// <summary>Escapes the characters that mean something in HTML, in text and in quoted attributes.</summary>
    internal static string Escape(string text)
    {
        var escaped = new StringBuilder(text.Length + 16);
        foreach (var c in text)
        {
            _ = c switch
            {
                '&' => escaped.Append("&amp;"),
                '<' => escaped.Append("&lt;"),
                '>' => escaped.Append("&gt;"),
                '"' => escaped.Append("&quot;"),
                _ => escaped.Append(c),
            };
        }
        return escaped.ToString();
    }
}
