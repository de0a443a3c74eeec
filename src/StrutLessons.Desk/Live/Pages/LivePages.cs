using System.Net.Mime;
using System.Text;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using StrutLessons.Desk.Live.Running;
using StrutLessons.Desk.Site;
using StrutLessons.Kernel.Notebooks;

namespace StrutLessons.Desk.Live.Pages;

/// <summary>What is served under which address.</summary>
/// <param name="lessons">The course.</param>
/// <param name="stop">Ends sockets when the program ends.</param>
internal sealed class LivePages(OpenLessons lessons, CancellationToken stop)
{
    internal void Map(IEndpointRouteBuilder routes)
    {
        routes.MapGet("/", List);
        routes.MapGet("/index.html", List);
        routes.MapGet("/assets/{**name}", (HttpContext http, string name) => Assets.ServeAsync(http, name));
        routes.MapGet("/{name}.html", Lesson);
        routes.MapGet("/{name}.ipynb", Download);
        routes.MapGet("/{name}/socket", SocketAsync);
    }

    private Task List(HttpContext http)
    {
        var entries = Readable().Select(notebook => (Link: Link(notebook), Card: LessonCard.Of(notebook), Progress: lessons.ProgressOf(notebook).Html)).ToArray();
        return HtmlAsync(http, IndexPage.Write([.. entries.Select(entry => (entry.Link, entry.Card))],
            link => $"<p class=\"time\">{entries.First(entry => entry.Link == link).Progress}</p>\n",
            "<link rel=\"stylesheet\" href=\"assets/live.css\">\n"));
    }

    private Task Lesson(HttpContext http, string name)
    {
        try
        {
            if (lessons.Open(name) is { } lesson)
            {
                OutlineEntry[] outline = [.. Readable().Select(notebook => new OutlineEntry(LessonCard.Of(notebook).Number, Link(notebook), lessons.ProgressOf(notebook).Html))];
                return HtmlAsync(http, LivePage.Write(lesson.Notebook, lesson.Views(), outline));
            }
        }
        catch (NotebookException unreadable)
        {
            return MissingAsync(http, unreadable.Message);
        }
        return MissingAsync(http, "There is no lesson under this address.");
    }

    private Task Download(HttpContext http, string name)
    {
        if (!lessons.Names.Contains(name) || lessons.Open(name) is not { } lesson)
        {
            return MissingAsync(http, "There is no lesson under this address.");
        }
        http.Response.ContentType = "application/x-ipynb+json";
        http.Response.Headers.ContentDisposition = new ContentDisposition { FileName = name + ".ipynb" }.ToString();
        return http.Response.WriteAsync(lesson.ToNotebook().ToJson());
    }

    private async Task SocketAsync(HttpContext http, string name)
    {
        if (!http.WebSockets.IsWebSocketRequest || !lessons.Names.Contains(name) || lessons.Open(name) is not { } lesson)
        {
            http.Response.StatusCode = StatusCodes.Status404NotFound;
            return;
        }
        using var socket = await http.WebSockets.AcceptWebSocketAsync().ConfigureAwait(false);
        using var tab = new Tab(socket);
        lesson.Join(tab);
        try
        {
            await tab.ServeAsync(ask => lesson.Answer(ask, tab), stop).ConfigureAwait(false);
        }
        finally
        {
            lesson.Leave(tab);
        }
    }

    /// <summary>The lessons that can be read; a broken file must not close the door to the others.</summary>
    private IEnumerable<NotebookFile> Readable()
    {
        foreach (var name in lessons.Names)
        {
            NotebookFile? notebook = null;
            try
            {
                notebook = lessons.Shipped(name);
            }
            catch (NotebookException)
            {
                // Its page says what is wrong.
            }
            if (notebook is not null)
            {
                yield return notebook;
            }
        }
    }

    private static PageLink Link(NotebookFile notebook) => new(notebook.Name + ".html", notebook.Title);

    private static Task HtmlAsync(HttpContext http, string html)
    {
        http.Response.ContentType = "text/html; charset=utf-8";
        return http.Response.WriteAsync(html, Encoding.UTF8);
    }

    private static Task MissingAsync(HttpContext http, string words)
    {
        http.Response.StatusCode = StatusCodes.Status404NotFound;
        return HtmlAsync(http, new PageFrame("Not found · StrutLessons", words).Wrap(
            $"<div class=\"page\"><main id=\"main\" tabindex=\"-1\"><h1>Not found</h1><p>{Html.Escape(words)}</p><p><a href=\"index.html\">All lessons</a></p></main></div>"));
    }
}
