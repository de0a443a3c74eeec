using System.Text.Json;

namespace StrutLessons.Desk.Tests.Jupyter;

/// <summary>The Jupyter messaging protocol, version 5.3, as jupyter_client of the operating system speaks it. See facts.py for the questions.</summary>
[Collection("jupyter")]
public sealed class ProtocolTests(JupyterFixture jupyter)
{
    [Fact]
    public async Task The_kernel_says_which_protocol_and_language_it_speaks()
    {
        var info = await Fact("info");

        Assert.Equal("5.3", Text(info, "protocol_version"));
        Assert.Equal("C#", Text(info.GetProperty("language_info"), "name"));
        Assert.Equal(".cs", Text(info.GetProperty("language_info"), "file_extension"));
    }

    [Fact]
    public async Task A_cell_is_announced_answered_and_framed_by_busy_and_idle()
    {
        var run = await Fact("result");

        Assert.Equal(["status", "execute_input", "execute_result", "status"], Types(run));
        Assert.Equal("42", Text(Content(run, "execute_result").GetProperty("data"), "text/plain"));
        Assert.Equal("ok", Text(run.GetProperty("reply"), "status"));
        Assert.Equal(1, run.GetProperty("reply").GetProperty("execution_count").GetInt32());
        Assert.Equal(1, Content(run, "execute_result").GetProperty("execution_count").GetInt32());
    }

    [Fact]
    public async Task Console_text_goes_to_its_stream_in_the_order_written()
    {
        var streams = Contents(await Fact("streams"), "stream").Select(stream => (Text(stream, "name"), Text(stream, "text")));

        Assert.Equal([("stdout", "ab\n"), ("stderr", "c")], streams);
    }

    [Fact]
    public async Task A_shown_value_is_replaced_where_it_stands_even_by_a_later_cell()
    {
        var cell = await Fact("shown");
        var later = await Fact("updated later");
        var id = Id(Content(cell, "display_data"));

        Assert.Equal("one", Text(Content(cell, "display_data").GetProperty("data"), "text/plain"));
        Assert.Equal((id, "two"), (Id(Content(cell, "update_display_data")), Text(Content(cell, "update_display_data").GetProperty("data"), "text/plain")));
        Assert.Equal((id, "three"), (Id(Content(later, "update_display_data")), Text(Content(later, "update_display_data").GetProperty("data"), "text/plain")));

        static string Id(JsonElement shown) => Text(shown.GetProperty("transient"), "display_id");
    }

    [Fact]
    public async Task A_drawing_comes_as_a_picture_and_a_chart_as_a_picture_and_as_data()
    {
        var drawing = Content(await Fact("shown"), "execute_result").GetProperty("data");
        var chart = Content(await Fact("chart"), "execute_result").GetProperty("data");

        Assert.Contains("<svg", Text(drawing, "image/svg+xml"), StringComparison.Ordinal);
        Assert.Contains("<svg", Text(chart, "image/svg+xml"), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Object, chart.GetProperty("application/vnd.plotly.v1+json").ValueKind);
    }

    [Theory]
    [InlineData("not understood", "CS0103", "var b = unknown;")]
    [InlineData("thrown", "DivideByZeroException", "1 / zero")]
    public async Task An_error_names_its_line_and_no_frame_of_the_program_around_the_cell(string fact, string name, string line)
    {
        var run = await Fact(fact);
        var error = Content(run, "error");
        var lines = string.Join('\n', error.GetProperty("traceback").EnumerateArray().Select(text => text.GetString()));

        Assert.Equal((name, name), (Text(error, "ename"), Text(run.GetProperty("reply"), "ename")));
        Assert.Equal("error", Text(run.GetProperty("reply"), "status"));
        Assert.Matches($@" > \d \| {System.Text.RegularExpressions.Regex.Escape(line)}", lines);
        Assert.DoesNotContain("   at ", lines, StringComparison.Ordinal);
        Assert.DoesNotContain("Microsoft.", lines, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_silent_cell_runs_unseen_and_uncounted()
    {
        var silent = await Fact("silent");
        var after = await Fact("after silent");
        var uncounted = await Fact("not counted");

        Assert.Equal(["status", "status"], Types(silent));
        Assert.Equal("11", Text(Content(after, "execute_result").GetProperty("data"), "text/plain"));
        Assert.Equal(Count(silent) + 1, Count(after));
        Assert.Equal(Count(after), Count(uncounted));

        static int Count(JsonElement run) => run.GetProperty("reply").GetProperty("execution_count").GetInt32();
    }

    [Fact]
    public async Task Expressions_are_evaluated_after_the_cell()
    {
        var values = (await Fact("expressions")).GetProperty("user_expressions");

        Assert.Equal("6", Text(values.GetProperty("double").GetProperty("data"), "text/plain"));
        Assert.Equal("error", Text(values.GetProperty("wrong"), "status"));
    }

    [Fact]
    public async Task Lines_that_load_the_library_in_other_hosts_are_harmless_and_keep_the_numbers_of_the_others()
    {
        var error = Content(await Fact("own reference"), "error");

        Assert.Equal("CS0103", Text(error, "ename"));
        Assert.Contains("in line 4", error.GetProperty("traceback")[0].GetString(), StringComparison.Ordinal);
        Assert.Equal("5", Text(Content(await Fact("own reference runs"), "execute_result").GetProperty("data"), "text/plain"));
    }

    [Fact]
    public async Task Cells_waiting_behind_one_that_fails_do_not_run_unless_the_front_end_says_so()
    {
        Assert.Equal(["error", "aborted", "aborted"], Strings(await Fact("stopped")));
        Assert.Equal(["error", "ok", "ok"], Strings(await Fact("not stopped")));
        Assert.Equal("ok", (await Fact("after the stop")).GetString());
    }

    [Theory]
    [InlineData("completion", 12, 14)]
    // The front end counts the sign 𝜎 once, .NET twice.
    [InlineData("completion behind a long sign", 17, 19)]
    public async Task Completion_offers_members_and_says_what_they_replace(string fact, int start, int end)
    {
        var answer = await Fact(fact);

        Assert.Contains("Length", Strings(answer.GetProperty("matches")));
        Assert.Equal((start, end), (answer.GetProperty("cursor_start").GetInt32(), answer.GetProperty("cursor_end").GetInt32()));
    }

    [Fact]
    public async Task Inspection_shows_the_documentation_and_is_honest_about_nothing()
    {
        Assert.Contains("The angle to scale", Text((await Fact("inspection")).GetProperty("data"), "text/plain"), StringComparison.Ordinal);
        Assert.Contains("Find(string designation)", Text((await Fact("inspection of a call")).GetProperty("data"), "text/plain"), StringComparison.Ordinal);
        Assert.False((await Fact("inspection of nothing")).GetProperty("found").GetBoolean());
    }

    [Theory]
    [InlineData("1 + 1", "complete")]
    [InlineData("if (true) {", "incomplete")]
    [InlineData("var x = ;", "invalid")]
    public async Task Typed_code_is_told_complete_incomplete_or_invalid(string code, string status) =>
        Assert.Equal(status, Text((await Fact("complete")).GetProperty(code), "status"));

    [Fact]
    public async Task The_history_holds_the_cells_of_this_session()
    {
        Assert.Equal("var arm = new Planar(1, 2);", (await Fact("history")).GetProperty("history")[0][2].GetString());
        Assert.Equal("var side = 3;", Assert.Single((await Fact("search")).GetProperty("history").EnumerateArray())[2].GetString());
    }

    [Fact]
    public async Task A_live_view_is_moved_by_comm_messages()
    {
        var moved = Assert.Single((await Fact("comm moved")).EnumerateArray()).GetProperty("content");
        var refused = Assert.Single((await Fact("comm refused")).EnumerateArray()).GetProperty("content").GetProperty("data");
        var empty = Assert.Single((await Fact("comm without positions")).EnumerateArray()).GetProperty("content").GetProperty("data");

        Assert.Empty((await Fact("comm opened")).EnumerateArray());
        Assert.Equal("strutlessons.live", Text((await Fact("comm listed")).GetProperty("mine"), "target_name"));
        Assert.Equal("mine", Text(moved, "comm_id"));
        Assert.Equal("30 m", Text(moved.GetProperty("data").GetProperty("shown")[0], "text/plain"));
        Assert.Contains("between 1 m and 3 m", Text(refused, "error"), StringComparison.Ordinal);
        Assert.Contains("one number for each", Text(empty, "error"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_comm_with_an_unknown_target_is_closed()
    {
        var closed = Assert.Single((await Fact("comm of another target")).EnumerateArray());

        Assert.Equal(("comm_close", "other"), (Text(closed, "type"), Text(closed.GetProperty("content"), "comm_id")));
    }

    [Fact]
    public async Task A_message_with_a_wrong_signature_is_ignored()
    {
        Assert.Equal(0, (await Fact("answers to a forged message")).GetInt32());
        Assert.Equal("CS0103", Text(await Fact("forged code"), "ename"));
    }

    [Fact]
    public async Task A_message_that_comes_twice_is_answered_once() =>
        Assert.Equal(1, (await Fact("answers to a message sent twice")).GetInt32());

    [Fact]
    public async Task The_kernel_listens_on_the_loopback_address_alone()
    {
        var addresses = Strings(await Fact("listening"));

        // 127.0.0.1 as /proc/net/tcp writes it; five sockets of the protocol.
        Assert.Equal(5, addresses.Length);
        Assert.All(addresses, address => Assert.Equal("0100007F", address));
    }

    [Fact]
    public async Task No_message_names_an_address()
    {
        var messages = (await Fact("messages")).GetString()!;

        Assert.DoesNotContain("127.0.0.1", messages, StringComparison.Ordinal);
        Assert.DoesNotContain("://", messages.Replace("http://www.w3.org/", "", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("interrupt")]
    [InlineData("signal")]
    public async Task An_endless_loop_stops_when_asked_and_what_was_defined_stays(string fact)
    {
        var stopped = await Fact(fact);

        Assert.Equal("Interrupt", Text(stopped.GetProperty("reply"), "ename"));
        Assert.InRange(stopped.GetProperty("seconds").GetDouble(), 0, 5);
        Assert.Equal("ok", Text(stopped, "then"));
    }

    [Fact]
    public async Task A_restarted_kernel_is_a_new_process_that_knows_nothing_of_before()
    {
        var restarted = await Fact("restarted");

        Assert.Equal("CS0103", Text(restarted, "kept"));
        Assert.Equal(2, restarted.GetProperty("count").GetInt32());
        Assert.True(restarted.GetProperty("new process").GetBoolean());
    }

    [Fact]
    public async Task A_kernel_asked_to_shut_down_ends_by_itself()
    {
        var end = await Fact("shut down");

        Assert.Equal(0, end.GetProperty("exit code").GetInt32());
        Assert.InRange(end.GetProperty("seconds").GetDouble(), 0, 5);
    }

    private async Task<JsonElement> Fact(string name) => (await jupyter.FactsAsync()).GetProperty(name);

    private static string Text(JsonElement json, string name) => json.GetProperty(name).GetString()!;

    private static string[] Strings(JsonElement list) => [.. list.EnumerateArray().Select(text => text.GetString()!)];

    private static string[] Types(JsonElement run) => [.. run.GetProperty("published").EnumerateArray().Select(message => Text(message, "type"))];

    private static IEnumerable<JsonElement> Contents(JsonElement run, string type) =>
        run.GetProperty("published").EnumerateArray().Where(message => Text(message, "type") == type).Select(message => message.GetProperty("content"));

    private static JsonElement Content(JsonElement run, string type) => Contents(run, type).First();
}
