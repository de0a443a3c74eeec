using System.Text.RegularExpressions;

namespace StrutLessons.Kernel.Engine;

/// <summary>
/// A notebook made for another host may begin with a line that loads the lessons' library: <c>#r "…/StrutLessons.dll"</c> or
/// <c>#r "nuget: StrutLessons"</c>. Here the library is loaded already; loading it a second time would make two types of each name.
/// </summary>
internal static partial class OwnReferences
{
    /// <summary>The code with such lines left empty, so that the others keep their numbers.</summary>
    internal static string Without(string code) => code.Contains("#r", StringComparison.Ordinal) ? Line().Replace(code, "") : code;

    [GeneratedRegex("""^[ \t]*#r[ \t]+"(nuget:[ \t]*StrutLessons(\.\w+)?[ \t]*(,[^"]*)?|([^"]*[/\\])?StrutLessons(\.\w+)?\.dll)"[ \t]*;?[ \t]*(?=\r?$)""", RegexOptions.Multiline | RegexOptions.IgnoreCase)]
    private static partial Regex Line();
}
