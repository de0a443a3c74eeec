using Microsoft.AspNetCore.Http;
using StrutLessons.Desk.Site;

namespace StrutLessons.Desk.Live;

/// <summary>Looks at every request before anything answers it: address, origin, key or session. Adds the headers that keep a page to itself.</summary>
/// <param name="gate">Keys and sessions.</param>
/// <param name="port">The port that this program serves.</param>
internal sealed class Door(Gate gate, int port)
{
    // Cookies do not tell ports apart: two programs on one machine need two names.
    private readonly string _cookie = $"strutlessons-{port}";
    private readonly string[] _hosts = [$"127.0.0.1:{port}", $"localhost:{port}"];

    internal async Task CheckAsync(HttpContext http, RequestDelegate next)
    {
        var request = http.Request;
        var host = request.Host.Value ?? "";
        AddHeaders(http.Response.Headers, _hosts.Contains(host) ? host : _hosts[0]);
        // A foreign name that leads to this machine, or a page of another origin, must not reach the lessons.
        if (!_hosts.Contains(host) || !IsOwnOrigin(request, host))
        {
            await RefuseAsync(http, "This address is not the one under which the lessons are served.").ConfigureAwait(false);
            return;
        }
        var isKnown = gate.Knows(request.Cookies[_cookie]);
        var isForeignLink = request.Headers["Sec-Fetch-Site"].ToString() is "cross-site" or "same-site";
        if (request.Query.ContainsKey("key") && HttpMethods.IsGet(request.Method))
        {
            if (!isKnown && gate.Open(request.Query["key"].ToString()) is { } session)
            {
                http.Response.Cookies.Append(_cookie, session, new CookieOptions { HttpOnly = true, SameSite = SameSiteMode.Strict, Path = "/", IsEssential = true });
                isKnown = true;
            }
            await (isKnown ? LeadOnAsync(http, isForeignLink) : RefuseAsync(http, "This address has been used already, or its key is wrong.")).ConfigureAwait(false);
            return;
        }
        if (!isKnown || isForeignLink)
        {
            await RefuseAsync(http, "The lessons are open to the browser that was let in with the key only.").ConfigureAwait(false);
            return;
        }
        if (!HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method))
        {
            http.Response.StatusCode = StatusCodes.Status405MethodNotAllowed;
            return;
        }
        await next(http).ConfigureAwait(false);
    }

    private static bool IsOwnOrigin(HttpRequest request, string host)
    {
        var given = request.Headers.Origin;
        var mustSay = !HttpMethods.IsGet(request.Method) && !HttpMethods.IsHead(request.Method)
            || request.HttpContext.WebSockets.IsWebSocketRequest;
        return given.Count == 0 ? !mustSay : given.Count == 1 && given[0] == $"http://{host}";
    }

    private static void AddHeaders(IHeaderDictionary headers, string host)
    {
        // Style attributes belong to formulas, drawings and charts; scripts come from files of this program alone.
        headers.ContentSecurityPolicy = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; "
            + $"font-src 'self'; connect-src 'self' ws://{host}; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "no-referrer";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers.CacheControl = "no-store";
    }

    /// <summary>
    /// On to the same page without the key. A browser that came by a link on another site's page would keep the new cookie back
    /// through a redirection; a page of our own that leads on is a fresh start.
    /// </summary>
    private static async Task LeadOnAsync(HttpContext http, bool isForeignLink)
    {
        var target = http.Request.Path.Value is { Length: > 0 } path && !path.StartsWith("//", StringComparison.Ordinal) ? path : "/";
        if (!isForeignLink)
        {
            http.Response.StatusCode = StatusCodes.Status303SeeOther;
            http.Response.Headers.Location = target;
            return;
        }
        http.Response.ContentType = "text/html; charset=utf-8";
        await http.Response.WriteAsync(
            $"<!doctype html><meta charset=\"utf-8\"><meta http-equiv=\"refresh\" content=\"0;url={Html.Escape(target)}\"><title>StrutLessons</title><a href=\"{Html.Escape(target)}\">To the lessons</a>").ConfigureAwait(false);
    }

    private static async Task RefuseAsync(HttpContext http, string reason)
    {
        http.Response.StatusCode = StatusCodes.Status403Forbidden;
        http.Response.ContentType = "text/html; charset=utf-8";
        http.Response.Headers.Connection = "close";
        await http.Response.WriteAsync($"""
            <!doctype html>
            <html lang="en"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><meta name="color-scheme" content="light dark"><title>Not open · StrutLessons</title></head>
            <body style="font:1.1rem/1.6 system-ui,sans-serif;max-width:40rem;margin:3rem auto;padding:0 1rem"><h1>This door is closed</h1>
            <p>{reason}</p><p>Press Enter in the terminal where StrutLessons runs: it shows a fresh address, good for one visit.</p></body></html>
            """).ConfigureAwait(false);
    }
}
