using System.Text.Json;
using System.Text.Json.Nodes;
using StrutLessons.Kernel.Client;

namespace StrutLessons.Kernel.Jupyter;

/// <summary>
/// The entry by which Jupyter front ends find the kernel: a folder with <c>kernel.json</c> and a logo in the user's data folder.
/// Writing it needs no program but this one.
/// </summary>
public static class KernelSpec
{
    /// <summary>Name of the entry; notebooks ask for their kernel by it.</summary>
    public const string Name = "strut-lessons";

    /// <summary>Name that front ends show.</summary>
    public const string DisplayName = "StrutLessons (C#)";

    /// <summary>The language of the cells.</summary>
    public const string Language = "C#";

    private static readonly JsonSerializerOptions Readable = new() { WriteIndented = true, IndentSize = 2, Encoder = System.Text.Encodings.Web.JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Folder of the entry for the current user, whether it exists or not.</summary>
    public static string Folder => Path.Combine(DataFolder(), "kernels", Name);

    /// <summary>True if the entry is there and starts the kernel that belongs to the running program.</summary>
    public static bool IsRegistered
    {
        get
        {
            try
            {
                return File.ReadAllText(Path.Combine(Folder, "kernel.json")) == Content();
            }
            catch (Exception missing) when (missing is IOException or UnauthorizedAccessException)
            {
                return false;
            }
        }
    }

    /// <summary>Writes the entry, over an earlier one if there is any.</summary>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    public static void Register()
    {
        Directory.CreateDirectory(Folder);
        File.WriteAllText(Path.Combine(Folder, "kernel.json"), Content());
        File.WriteAllText(Path.Combine(Folder, "logo-svg.svg"), Logo);
    }

    /// <summary>Removes the entry. False if there was none.</summary>
    /// <exception cref="IOException">The folder cannot be removed.</exception>
    public static bool Remove()
    {
        if (!Directory.Exists(Folder))
        {
            return false;
        }
        Directory.Delete(Folder, recursive: true);
        return true;
    }

    private static string Content()
    {
        var environment = new JsonObject();
        foreach (var (name, value) in KernelCommandLine.Environment(new KernelSettings()))
        {
            environment[name] = value;
        }
        return new JsonObject
        {
            ["argv"] = new JsonArray(KernelCommandLine.DotnetHost(), "exec", KernelCommandLine.Program, "--connection", "{connection_file}"),
            ["display_name"] = DisplayName,
            ["language"] = Language,
            ["interrupt_mode"] = "message",
            ["env"] = environment,
            ["metadata"] = new JsonObject { ["debugger"] = false },
        }.ToJsonString(Readable) + "\n";
    }

    /// <summary>Where Jupyter keeps the data of a user, by its published rules.</summary>
    private static string DataFolder()
    {
        var home = Environment.GetFolderPath(Environment.SpecialFolder.UserProfile);
        return Set("JUPYTER_DATA_DIR")
            ?? (OperatingSystem.IsWindows() ? Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.ApplicationData), "jupyter")
                : OperatingSystem.IsMacOS() ? Path.Combine(home, "Library", "Jupyter")
                : Path.Combine(Set("XDG_DATA_HOME") ?? Path.Combine(home, ".local", "share"), "jupyter"));

        static string? Set(string variable) => Environment.GetEnvironmentVariable(variable) is { Length: > 0 } path ? Path.GetFullPath(path) : null;
    }

    /// <summary>An angle with the axis about which it buckles.</summary>
    private const string Logo = """
        <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64" width="64" height="64">
          <title>StrutLessons</title>
          <path d="M12 8h9v35h35v9H12z" fill="#0a5fa8"/>
          <path d="M8 28L36 56" stroke="#c2410c" stroke-width="3" stroke-dasharray="6 3"/>
        </svg>

        """;
}
