using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Net.WebSockets;
using StrutLessons.Desk.Live;

namespace StrutLessons.Desk.Tests.Live;

/// <summary>Who is let in, and who is not.</summary>
[Collection("live")]
public sealed class DoorTests(LiveFixture live)
{
    private const string Lesson = "02-a-lesson-to-change";

    [Theory]
    [InlineData("")]
    [InlineData("index.html")]
    [InlineData("assets/live.js")]
    [InlineData(Lesson + ".html")]
    [InlineData(Lesson + ".ipynb")]
    [InlineData("?key=")]
    [InlineData("?key=AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA")]
    public async Task Without_a_key_nothing_is_shown(string path)
    {
        using var client = live.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
        Assert.DoesNotContain("key=", await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_key_is_good_for_one_visit_and_leads_to_an_address_without_it()
    {
        using var client = live.Client();
        var visit = live.Server.NewVisit();

        using var first = await client.GetAsync(visit);
        using var second = await client.GetAsync(visit);

        Assert.Equal(HttpStatusCode.SeeOther, first.StatusCode);
        Assert.Equal("/", first.Headers.Location!.OriginalString);
        var cookie = first.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=strict", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Equal(HttpStatusCode.Forbidden, second.StatusCode);
        Assert.False(second.Headers.Contains("Set-Cookie"));
    }

    [Theory]
    [InlineData("GET", "Host", "lessons.example:80")]
    [InlineData("GET", "Host", "127.0.0.1")]
    [InlineData("GET", "Host", "127.0.0.1.example.org")]
    [InlineData("GET", "Origin", "http://example.org")]
    [InlineData("GET", "Origin", "null")]
    [InlineData("GET", "Sec-Fetch-Site", "cross-site")]
    [InlineData("GET", "Sec-Fetch-Site", "same-site")]
    [InlineData("POST", "X-Nothing", "without an origin")]
    [InlineData("POST", "Origin", "http://127.0.0.1:1")]
    public async Task Even_with_a_session_a_foreign_host_or_origin_is_refused(string method, string header, string value)
    {
        using var client = live.Client();
        using var request = new HttpRequestMessage(new HttpMethod(method), "");
        request.Headers.Add("Cookie", await live.CookieAsync());
        request.Headers.TryAddWithoutValidation(header, value);
        using var answer = await client.SendAsync(request);

        Assert.Equal(HttpStatusCode.Forbidden, answer.StatusCode);
    }

    [Fact]
    public async Task With_a_session_every_page_is_there_and_keeps_to_itself()
    {
        using var client = live.Client();
        client.DefaultRequestHeaders.Add("Cookie", await live.CookieAsync());
        using var answer = await client.GetAsync(new Uri(Lesson + ".html", UriKind.Relative));

        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        var policy = answer.Headers.GetValues("Content-Security-Policy").Single();
        Assert.Contains("default-src 'none'; script-src 'self';", policy, StringComparison.Ordinal);
        Assert.Contains("frame-ancestors 'none'", policy, StringComparison.Ordinal);
        Assert.Equal("nosniff", answer.Headers.GetValues("X-Content-Type-Options").Single());
        Assert.Equal("no-referrer", answer.Headers.GetValues("Referrer-Policy").Single());
    }

    [Theory]
    [InlineData("../README.html")]
    [InlineData("..%2FREADME.html")]
    [InlineData("nothing.html")]
    [InlineData("assets/../StrutLessons.sln")]
    [InlineData("assets/nothing.js")]
    public async Task What_is_not_part_of_the_course_is_not_served(string path)
    {
        using var client = live.Client();
        client.DefaultRequestHeaders.Add("Cookie", await live.CookieAsync());
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));

        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
    }

    [Fact]
    public async Task A_socket_needs_the_session_the_host_and_the_origin()
    {
        var (server, cookie) = (live.Server.Address, await live.CookieAsync());
        var own = $"http://{server.Authority}";
        (string? Cookie, string? Origin, string? Host)[] refused =
            [(null, own, null), ("strutlessons=none", own, null), (cookie, null, null), (cookie, "http://example.org", null), (cookie, own + "0", null), (cookie, own, "example.org")];

        foreach (var (itsCookie, origin, host) in refused)
        {
            await Assert.ThrowsAsync<WebSocketException>(() => RawTab.ConnectAsync(server, Lesson, itsCookie, origin, host));
        }
        await using var tab = await RawTab.ConnectAsync(server, Lesson, cookie, own);
        Assert.NotNull(await tab.HearAsync("all"));
    }

    [Fact]
    public async Task Other_addresses_of_this_machine_do_not_answer()
    {
        var others = NetworkInterface.GetAllNetworkInterfaces().SelectMany(one => one.GetIPProperties().UnicastAddresses)
            .Select(one => one.Address).Where(address => !address.Equals(IPAddress.Loopback)).ToArray();

        foreach (var address in others)
        {
            using var client = new TcpClient(address.AddressFamily);
            await Assert.ThrowsAnyAsync<SocketException>(() => client.ConnectAsync(address, live.Server.Address.Port));
        }
    }

    [Fact]
    public void Of_many_keys_that_nobody_uses_the_oldest_are_forgotten()
    {
        var gate = new Gate();
        string[] keys = [.. Enumerable.Range(0, 20).Select(_ => gate.NewKey())];

        Assert.Equal(20, keys.Distinct().Count());
        Assert.All(keys, key => Assert.Equal(43, key.Length));
        Assert.Null(gate.Open(keys[0]));
        var session = gate.Open(keys[^1]);
        Assert.True(gate.Knows(session));
        Assert.False(gate.Knows(keys[^1]));
        Assert.False(gate.Knows(null));
    }
}
