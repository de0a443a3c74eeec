using System.CommandLine;
using StrutLessons.Kernel.Jupyter;

namespace StrutLessons.Desk.Commands;

/// <summary><c>jupyter</c>: lets Jupyter front ends of the current user find the lessons' kernel, or takes it away from them.</summary>
internal static class JupyterCommand
{
    internal static Command Build()
    {
        var remove = new Option<bool>("--remove") { Description = "Take the kernel away again." };
        var command = new Command("jupyter", "Registers the lessons' kernel with Jupyter for the current user: writes files, needs no Python.") { remove };
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(remove))
            {
                Console.WriteLine(KernelSpec.Remove() ? $"Removed: {KernelSpec.Folder}" : $"Nothing to remove: {KernelSpec.Folder} does not exist.");
                return;
            }
            KernelSpec.Register();
            Console.WriteLine($"Registered: {KernelSpec.Folder}");
            Console.WriteLine($"Open a lesson in JupyterLab or Notebook, or choose \"{KernelSpec.DisplayName}\" as its kernel.");
            Console.WriteLine("Should this program move to another folder, call it once more from there.");
        });
        return command;
    }
}
