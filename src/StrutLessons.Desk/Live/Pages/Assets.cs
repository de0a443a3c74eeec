using System.Collections.Concurrent;
using System.Security.Cryptography;
using Microsoft.AspNetCore.Http;
using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Live.Pages;

/// <summary>Serves the files that pages refer to, out of the program itself.</summary>
internal static class Assets
{
    private static readonly ConcurrentDictionary<string, (byte[] Bytes, string Tag)> Files = new();

    internal static async Task ServeAsync(HttpContext http, string name)
    {
        if (!SiteAssets.Names.Contains(name))
        {
            http.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }
        var (bytes, tag) = Files.GetOrAdd(name, Load);
        // Kept by the browser, asked for again each time: a newer program serves newer files under the same name.
        http.Response.Headers.CacheControl = "no-cache";
        http.Response.Headers.ETag = tag;
        if (http.Request.Headers.IfNoneMatch.Contains(tag))
        {
            http.Response.StatusCode = StatusCodes.Status304NotModified;
            return;
        }
        http.Response.ContentType = Path.GetExtension(name) switch
        {
            ".css" => "text/css; charset=utf-8",
            ".js" => "text/javascript; charset=utf-8",
            ".svg" => "image/svg+xml",
            ".woff2" => "font/woff2",
            _ => "text/plain; charset=utf-8",
        };
        http.Response.ContentLength = bytes.Length;
        await http.Response.Body.WriteAsync(bytes).ConfigureAwait(false);
    }

    private static (byte[] Bytes, string Tag) Load(string name)
    {
        var bytes = SiteAssets.Read(name);
        return (bytes, $"\"{Convert.ToHexStringLower(SHA256.HashData(bytes))[..24]}\"");
    }
}
