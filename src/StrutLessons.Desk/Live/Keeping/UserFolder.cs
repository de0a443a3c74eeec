using System.Security.Cryptography;
using System.Text;

namespace StrutLessons.Desk.Live.Keeping;

/// <summary>The user's own folder. Edits, progress and files that cells write go there and nowhere else.</summary>
/// <param name="path">Full path; made when something is first kept.</param>
public sealed class UserFolder(string path)
{
    /// <summary>The environment variable that names another folder.</summary>
    public const string Variable = "STRUTLESSONS_FOLDER";

    /// <summary>The folder's full path.</summary>
    public string Path { get; } = System.IO.Path.GetFullPath(path);

    /// <summary>
    /// The usual place for a program's data of this user: the variable if it is set, else what the system says
    /// (<c>XDG_DATA_HOME</c> or <c>~/.local/share</c>, <c>~/Library/Application Support</c>, <c>%LOCALAPPDATA%</c>).
    /// </summary>
    public static string Usual()
    {
        if (Environment.GetEnvironmentVariable(Variable) is { Length: > 0 } chosen)
        {
            return chosen;
        }
        var data = Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify);
        return System.IO.Path.Combine(data.Length > 0 ? data : System.IO.Path.GetTempPath(), "StrutLessons");
    }

    /// <summary>The file in which the edits of a lesson are kept.</summary>
    /// <param name="notebook">The shipped lesson. Lessons of the course are known by name, wherever the course lies.</param>
    /// <param name="isOfCourse">False for a notebook from elsewhere; its place then is part of the name.</param>
    internal string FileFor(string notebook, bool isOfCourse)
    {
        var name = System.IO.Path.GetFileNameWithoutExtension(notebook);
        var place = isOfCourse ? "" : "-" + Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(System.IO.Path.GetFullPath(notebook))))[..10];
        return System.IO.Path.Combine(Path, "edits", name + place + ".json");
    }

    /// <summary>The folder in which cells run. Should it not be possible to make it, cells run in the system's temporary folder.</summary>
    internal string FilesFolder()
    {
        var files = System.IO.Path.Combine(Path, "files");
        try
        {
            Make(files);
            return files;
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return System.IO.Path.GetTempPath();
        }
    }

    /// <summary>Makes a folder that only its owner may read.</summary>
    internal static void Make(string folder)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(folder);
        }
        else
        {
            Directory.CreateDirectory(folder, UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute);
        }
    }
}
