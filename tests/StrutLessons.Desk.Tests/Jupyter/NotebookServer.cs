using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Microsoft.Playwright;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>A classic Notebook server of the operating system on this machine, with one notebook in its folder.</summary>
internal sealed class NotebookServer : IAsyncDisposable
{
    private const string Token = "for-this-test-only";

    private readonly Process _process;
    private readonly Task<string> _words;

    private NotebookServer(Process process, int port)
    {
        (_process, Port) = (process, port);
        _ = process.StandardOutput.ReadToEndAsync();
        _words = process.StandardError.ReadToEndAsync();
    }

    internal int Port { get; }

    internal static async Task<NotebookServer> StartAsync(JupyterFixture jupyter, string notebook)
    {
        var folder = Directory.CreateDirectory(Path.Combine(jupyter.Home, "notebooks")).FullName;
        File.Copy(notebook, Path.Combine(folder, Path.GetFileName(notebook)), overwrite: true);
        var port = FreePort();
        var server = new NotebookServer(jupyter.Start(
            "/usr/bin/jupyter-notebook", "--no-browser", "--allow-root", "--ip=127.0.0.1", $"--port={port}", "--port-retries=0",
            $"--NotebookApp.token={Token}", $"--notebook-dir={folder}"), port);
        await server.WaitUntilReadyAsync();
        return server;
    }

    /// <summary>Opens a notebook and waits until its kernel is there.</summary>
    internal async Task<IPage> OpenAsync(IBrowserContext browser, string notebook, string kernel)
    {
        var page = await browser.NewPageAsync();
        page.SetDefaultTimeout(60_000);
        await page.GotoAsync($"http://127.0.0.1:{Port}/notebooks/{notebook}?token={Token}");
        await page.WaitForFunctionAsync("() => window.Jupyter && Jupyter.notebook && Jupyter.notebook.kernel && Jupyter.notebook.kernel.is_connected() && Jupyter.notebook.kernel.info_reply.status");
        Assert.Equal(kernel, await page.EvaluateAsync<string>("() => Jupyter.notebook.kernel.name"));
        return page;
    }

    public async ValueTask DisposeAsync()
    {
        // Asked politely the server ends its kernels, and itself.
        using (var end = Process.Start("kill", $"-TERM {_process.Id}"))
        {
            await end.WaitForExitAsync();
        }
        try
        {
            await _process.WaitForExitAsync().WaitAsync(TimeSpan.FromSeconds(20));
        }
        catch (TimeoutException)
        {
            _process.Kill(entireProcessTree: true);
        }
        _process.Dispose();
    }

    private async Task WaitUntilReadyAsync()
    {
        using var client = new HttpClient();
        for (var clock = Stopwatch.StartNew(); clock.Elapsed < TimeSpan.FromSeconds(60); await Task.Delay(200))
        {
            if (_process.HasExited)
            {
                throw new InvalidOperationException(await _words);
            }
            try
            {
                using var answer = await client.GetAsync(new Uri($"http://127.0.0.1:{Port}/api"));
                if (answer.StatusCode == HttpStatusCode.OK)
                {
                    return;
                }
            }
            catch (HttpRequestException)
            {
                // Not yet.
            }
        }
        throw new TimeoutException("The Notebook server did not come up.");
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
