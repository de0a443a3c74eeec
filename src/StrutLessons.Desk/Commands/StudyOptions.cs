using System.CommandLine;

namespace StrutLessons.Desk.Commands;

/// <summary>Options that several verbs about studies share.</summary>
internal static class StudyOptions
{
    internal static Option<int> Threads()
    {
        var option = new Option<int>("--threads") { Description = "Threads at work; all cores unless given.", DefaultValueFactory = _ => Environment.ProcessorCount, HelpName = "number" };
        option.Validators.Add(result =>
        {
            if (result.GetValueOrDefault<int>() is < 1 or > 1024)
            {
                result.AddError("--threads takes a number from 1 to 1024.");
            }
        });
        return option;
    }
}
