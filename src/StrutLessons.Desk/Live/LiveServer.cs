using System.Net;
using System.Net.Sockets;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Extensions.DependencyInjection;
using StrutLessons.Desk.Live.Pages;
using StrutLessons.Desk.Live.Running;

namespace StrutLessons.Desk.Live;

/// <summary>Serves the lessons as live pages on the loopback address of this machine.</summary>
public sealed class LiveServer : IAsyncDisposable
{
    private readonly WebApplication _web;
    private readonly OpenLessons _lessons;
    private readonly CancellationTokenSource _stop;
    private readonly Gate _gate;

    private LiveServer(WebApplication web, OpenLessons lessons, Gate gate, CancellationTokenSource stop, int port) =>
        (_web, _lessons, _gate, _stop, Address) = (web, lessons, gate, stop, new Uri($"http://127.0.0.1:{port}/"));

    /// <summary>Where the lessons are, for a browser that is in already.</summary>
    public Uri Address { get; }

    /// <summary>An address that lets one browser in, once.</summary>
    public Uri NewVisit() => new(Address, "?key=" + _gate.NewKey());

    /// <summary>Starts serving.</summary>
    /// <exception cref="IOException">The port is taken.</exception>
    public static async Task<LiveServer> StartAsync(LiveSettings settings, CancellationToken cancel = default)
    {
        ArgumentNullException.ThrowIfNull(settings);
        // A free port is chosen first: the door must know it before it opens.
        var port = settings.Port > 0 ? settings.Port : FreePort();
        // The empty builder reads no settings file and no variable: nothing from outside can open another address.
        var builder = WebApplication.CreateEmptyBuilder(new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory });
        builder.WebHost.UseKestrelCore().ConfigureKestrel(kestrel =>
        {
            kestrel.AddServerHeader = false;
            kestrel.Limits.MaxRequestBodySize = 0;
            kestrel.Listen(IPAddress.Loopback, port);
        });
        builder.Services.AddRoutingCore();
        var web = builder.Build();
        var lessons = new OpenLessons(settings);
        var stop = new CancellationTokenSource();
        var gate = new Gate();
        var door = new Door(gate, port);
        web.UseWebSockets(new WebSocketOptions { KeepAliveInterval = TimeSpan.FromSeconds(15), KeepAliveTimeout = TimeSpan.FromSeconds(30) });
        web.Use(door.CheckAsync);
        web.UseRouting();
        new LivePages(lessons, stop.Token).Map(web);
        var server = new LiveServer(web, lessons, gate, stop, port);
        try
        {
            await web.StartAsync(cancel).ConfigureAwait(false);
            return server;
        }
        catch
        {
            await server.DisposeAsync().ConfigureAwait(false);
            throw;
        }
    }

    /// <summary>Ends every kernel process, closes the sockets and stops serving.</summary>
    public async ValueTask DisposeAsync()
    {
        await _stop.CancelAsync().ConfigureAwait(false);
        await _lessons.DisposeAsync().ConfigureAwait(false);
        await _web.DisposeAsync().ConfigureAwait(false);
        _stop.Dispose();
    }

    private static int FreePort()
    {
        using var probe = new TcpListener(IPAddress.Loopback, 0);
        probe.Start();
        return ((IPEndPoint)probe.LocalEndpoint).Port;
    }
}
