using System.Collections.Concurrent;
using Microsoft.Playwright;
using StrutLessons.Desk.Live;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>A live lesson open in the browser, in the words of a reader.</summary>
internal sealed class LivePage : IAsyncDisposable
{
    /// <summary>Time for things that wait for a kernel on a busy machine, in ms.</summary>
    internal const float Patience = 90_000;

    private LivePage(IBrowserContext context, IPage page)
    {
        (Context, Page) = (context, page);
        page.SetDefaultTimeout(Patience);
        page.Console += (_, message) =>
        {
            if (message.Type is "error" or "warning")
            {
                Complaints.Enqueue(message.Text);
            }
        };
        page.PageError += (_, error) => Complaints.Enqueue(error);
        page.Request += (_, request) => Requests.Enqueue(request.Url);
    }

    internal IBrowserContext Context { get; }

    internal IPage Page { get; }

    internal ConcurrentQueue<string> Complaints { get; } = new();

    internal ConcurrentQueue<string> Requests { get; } = new();

    internal static async Task<LivePage> OpenAsync(LiveFixture fixture, LiveServer server, string lesson, int width, bool dark)
    {
        var context = await fixture.Browser.NewContextAsync(new BrowserNewContextOptions
        {
            ViewportSize = new ViewportSize { Width = width, Height = 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light,
        });
        var live = new LivePage(context, await context.NewPageAsync());
        await live.Page.GotoAsync(server.NewVisit().AbsoluteUri);
        await live.GoAsync(new Uri(server.Address, lesson + ".html"));
        return live;
    }

    /// <summary>Another tab of the same browser on the same lesson.</summary>
    internal async Task<LivePage> SecondTabAsync()
    {
        var tab = new LivePage(Context, await Context.NewPageAsync());
        await tab.GoAsync(new Uri(Page.Url));
        return tab;
    }

    internal async Task GoAsync(Uri address)
    {
        await Page.GotoAsync(address.AbsoluteUri);
        await ReadyAsync();
    }

    internal async Task ReadyAsync() => await Page.Locator("body.ready").WaitForAsync();

    internal ILocator Cell(string id) => Page.Locator($".live-cell[data-cell='{id}']");

    internal ILocator Editor(string id) => Cell(id).Locator("[contenteditable]");

    internal ILocator Outputs(string id) => Cell(id).Locator(".outputs");

    /// <summary>The text in a cell's editor.</summary>
    internal Task<string> TextAsync(string id) =>
        Cell(id).Locator(".CodeMirror").EvaluateAsync<string>("e => e.CodeMirror.getValue()");

    /// <summary>Types a text in place of the old one, as with keys.</summary>
    internal async Task WriteAsync(string id, string text)
    {
        await Editor(id).FocusAsync();
        await Page.Keyboard.PressAsync("Control+A");
        await Page.Keyboard.PressAsync("Delete");
        await Page.Keyboard.InsertTextAsync(text);
        // The editor reads what was inserted a moment later.
        await Page.WaitForFunctionAsync("([id, text]) => document.querySelector(`.live-cell[data-cell='${id}'] .CodeMirror`).CodeMirror.getValue() === text",
            new[] { id, text.ReplaceLineEndings("\n") });
    }

    internal async Task RunAsync(string id, string state = "done")
    {
        // The state of an earlier run is wiped out, so that only the new one is waited for.
        await Cell(id).EvaluateAsync("e => e.dataset.state = 'asked'");
        await Editor(id).FocusAsync();
        await Page.Keyboard.PressAsync("Control+Enter");
        await StateAsync(id, state);
    }

    internal Task StateAsync(string id, string state) => Page.Locator($".live-cell[data-cell='{id}'][data-state='{state}']").WaitForAsync();

    public async ValueTask DisposeAsync() => await Context.CloseAsync();
}
