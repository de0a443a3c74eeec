using System.Collections.Concurrent;
using Microsoft.Playwright;

namespace StrutLessons.Desk.Tests.Site;

/// <summary>A page open in the browser, with everything it complained about and everything it asked for.</summary>
internal sealed class OpenPage : IAsyncDisposable
{
    private readonly IBrowserContext _context;

    private OpenPage(IBrowserContext context, IPage page)
    {
        (_context, Page) = (context, page);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                Complaints.Enqueue(message.Text);
            }
        };
        page.PageError += (_, error) => Complaints.Enqueue(error);
        page.Request += (_, request) => Requests.Enqueue(request.Url);
        page.RequestFailed += (_, request) =>
        {
            // Leaving a page cuts its unfinished loads short; a file that is missing fails with another word.
            if (request.Failure != "net::ERR_ABORTED")
            {
                Complaints.Enqueue($"not loaded: {request.Url}, {request.Failure}");
            }
        };
    }

    internal IPage Page { get; }

    // The browser adds to both while a test reads them.
    internal ConcurrentQueue<string> Complaints { get; } = new();

    internal ConcurrentQueue<string> Requests { get; } = new();

    internal static async Task<OpenPage> OpenAsync(
        IBrowser browser, string file, int width = 1280, bool dark = false, bool script = true)
    {
        var context = await browser.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
            JavaScriptEnabled = script,
        });
        var open = new OpenPage(context, await context.NewPageAsync());
        await open.Page.GotoAsync(new Uri(file).AbsoluteUri);
        await open.Page.WaitForLoadStateAsync(LoadState.Load);
        return open;
    }

    public async ValueTask DisposeAsync() => await _context.CloseAsync();
}
