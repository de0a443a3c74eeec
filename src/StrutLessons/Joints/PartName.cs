namespace StrutLessons.Joints;

/// <summary>Names of the parts of a joint: hand formula and plate analysis use the same, so that they can be compared part by part.</summary>
internal static class PartName
{
    internal const string Gusset = "gusset";
    internal const string FlangeLocal = "web and flange (local)";
    internal const string WebLocal = "web (local)";
    internal const string Global = "girder (global twist)";
}
