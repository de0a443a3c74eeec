using System.Text.Json;
using StrutLessons.Kernel.Jupyter;
using StrutLessons.Kernel.Notebooks;
using StrutLessons.Tests.Shared;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>The verb <c>jupyter</c>, and what front ends make of the files it writes.</summary>
[Collection("jupyter")]
public sealed class RegistrationTests(JupyterFixture jupyter)
{
    private string Folder => Path.Combine(jupyter.Data, "kernels", KernelSpec.Name);

    [Fact]
    public async Task Jupyter_finds_the_registered_kernel()
    {
        var list = await jupyter.RunAsync(JupyterFixture.Python, "-m", "jupyter_client.kernelspecapp", "list", "--json");
        var entry = JsonElement.Parse(list.Output).GetProperty("kernelspecs").GetProperty(KernelSpec.Name);

        Assert.Equal(Folder, entry.GetProperty("resource_dir").GetString());
        Assert.Equal("StrutLessons (C#)", entry.GetProperty("spec").GetProperty("display_name").GetString());
        Assert.Equal("message", entry.GetProperty("spec").GetProperty("interrupt_mode").GetString());
    }

    [Fact]
    public void The_program_and_the_kernel_are_named_by_their_full_paths()
    {
        var line = JsonElement.Parse(File.ReadAllText(Path.Combine(Folder, "kernel.json"))).GetProperty("argv").EnumerateArray().Select(word => word.GetString()!).ToArray();

        Assert.True(File.Exists(line[0]) && Path.IsPathFullyQualified(line[0]), line[0]);
        Assert.True(File.Exists(line[2]) && Path.IsPathFullyQualified(line[2]), line[2]);
    }

    [Fact]
    public async Task Registering_twice_changes_nothing()
    {
        var before = Snapshot();
        var again = await jupyter.DeskAsync("jupyter");

        Assert.Equal(0, again.Code);
        Assert.Equal(before, Snapshot());
    }

    [Fact]
    public async Task A_removed_kernel_leaves_nothing_and_removing_it_again_is_no_error()
    {
        var elsewhere = Directory.CreateTempSubdirectory().FullName;
        string[] asUser = [$"JUPYTER_DATA_DIR={elsewhere}", "dotnet", "exec", Path.Combine(AppContext.BaseDirectory, "StrutLessons.Desk.dll"), "jupyter"];

        await jupyter.RunAsync("env", asUser);
        Assert.True(Directory.Exists(Path.Combine(elsewhere, "kernels", KernelSpec.Name)));
        var removed = await jupyter.RunAsync("env", [.. asUser, "--remove"]);
        var again = await jupyter.RunAsync("env", [.. asUser, "--remove"]);

        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(elsewhere, "kernels")));
        Assert.Equal((0, 0), (removed.Code, again.Code));
        Assert.Contains("Nothing to remove", again.Output, StringComparison.Ordinal);
        Directory.Delete(elsewhere, recursive: true);
    }

    [Fact]
    public void Every_lesson_asks_for_the_registered_kernel() => Assert.All(NotebookFile.Find(Repository.Notebooks), file =>
    {
        var asked = JsonElement.Parse(File.ReadAllText(file)).GetProperty("metadata").GetProperty("kernelspec");
        Assert.Equal((KernelSpec.Name, KernelSpec.DisplayName), (asked.GetProperty("name").GetString(), asked.GetProperty("display_name").GetString()));
    });

    private (string, string)[] Snapshot() => [.. Directory.GetFiles(Folder).Order().Select(file => (file, File.ReadAllText(file)))];
}
