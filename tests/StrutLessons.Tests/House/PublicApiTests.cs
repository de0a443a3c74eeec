using PublicApiGenerator;
using StrutLessons.Sections;

namespace StrutLessons.Tests.House;

/// <summary>
/// The public surface of the mechanics is under lock: a difference to PublicApi.approved.txt fails. After a wanted change run
/// <c>APPROVE_API=1 dotnet test tests/StrutLessons.Tests --filter PublicApi</c> and read the difference before committing it.
/// </summary>
public class PublicApiTests
{
    [Fact]
    public void The_public_api_is_the_approved_one()
    {
        string actual = typeof(AngleSection).Assembly.GeneratePublicApi(new ApiGeneratorOptions { IncludeAssemblyAttributes = false })
            .ReplaceLineEndings("\n");
        string file = Path.Combine(Tree.Root, "tests", "StrutLessons.Tests", "House", "PublicApi.approved.txt");
        if (Environment.GetEnvironmentVariable("APPROVE_API") == "1")
        {
            File.WriteAllText(file, actual);
        }

        string approved = File.ReadAllText(file).ReplaceLineEndings("\n");
        string[] have = actual.Split('\n'), want = approved.Split('\n');
        Assert.True(actual == approved,
            "The public API differs from the approved one.\nNew:\n  " + string.Join("\n  ", have.Except(want).Take(20))
            + "\nGone:\n  " + string.Join("\n  ", want.Except(have).Take(20)));
    }
}
