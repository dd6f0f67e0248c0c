using System.Net.Http.Headers;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>
/// Everything private about Odalys and Pim is put on file, then every public address is asked; not one of these strings
/// may come back, in bodies or headers.
/// </summary>
public sealed class PublicCanaryTests : IDisposable
{
    private static readonly string[] Canaries =
    [
        "canary", "Odalys", "Pim", "Ferran", "7946 0958", "79460958", "7946-0958", "Pellmore", "junior", "24.50", "2450", "Runa",
        "lockout", "68.58", "grip five", "hours a week", "times a week", "times played", "1.5 h", "3 h", "cut out", "broke", "side door",
    ];

    private readonly TestShop _shop = new();
    private readonly TagCode _code, _retired, _blank;

    public PublicCanaryTests()
    {
        _shop.Records.Shop(homeMarkdown: "Hello.");
        var (_, _, racket, code, job) = _shop.Records.Family();
        (_code, _retired, _blank) = (code, _shop.Records.RetiredTag(racket), _shop.Records.BlankTag());
        _shop.Records.Job(racket, new(2026, 8, 1));
        _shop.Records.Reading(job, 62);
        _shop.Records.Change("INSERT INTO payer (name, note) VALUES ('canary payer', 'canary')");
        _shop.Records.Change("UPDATE client SET payer_id = 1");
        _shop.Records.Change("""
            INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
            VALUES ('one', 'canary owner', 'ONE', '', '', '', 'Owner', '2026-11-01'), ('two', 'canary helper', 'TWO', '', '', '', 'Bench', '2026-11-01');
            INSERT INTO job_deed (job_id, deed, made_at, made_by) SELECT id, 'Strung', '2026-11-01', 'two' FROM job;
            """);
        _shop.Records.Change("""
            INSERT INTO condition (job_id, frame, frame_words, grip_words) SELECT id, 'Damaged', 'canary crack', 'canary' FROM job;
            INSERT INTO photo (job_id, made_at, width, height, small, picture) SELECT id, '2026-11-01', 4, 3, x'FFD8FF63616E617279', x'FFD8FF63616E617279' FROM job;
            """);
        _shop.Records.Change("UPDATE racket SET length_cm = 68.58, grip = 'grip five', own_date = '2026-12-20', own_date_note = 'canary', lost_since = '2026-11-20'");
        _shop.Records.Change("UPDATE job SET machine = 'lockout', received_where = 'canary club'");
        _shop.Records.Change("UPDATE instrument SET name = 'canary gauge'");
        _shop.Records.Change("UPDATE string_kind SET note = 'canary'");
        _shop.Records.Change("INSERT INTO spec (racket_id, measured_on, weight, strung, grip_on, dampener_on, note) VALUES (@racket, '2026-10-01', 287.3, 1, 1, 0, 'canary')", new { racket });
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Stranger_sees_history_but_no_name_phone_number_mail_frame_or_note()
    {
        var page = await Everything("/t/" + _code);

        Assert.Contains("1 Aug 2026", page, StringComparison.Ordinal);
        Assert.Contains("because the shop chose this date", page, StringComparison.Ordinal);
        AssertClean(page);
    }

    [Fact]
    public async Task Nothing_else_that_is_public_tells_more()
    {
        string[] addresses =
        [
            "/", "/t", "/t?code=hello", "/t/7K2M9Q4TXAW", "/t/7K2M9Q4TXAV", $"/t/{_retired}", $"/t/{_blank}", $"/t/{_code}/restring.ics",
            $"/t/{_retired}/restring.ics", $"/t/{_code}/found", "/nothing/here", "/accent.css", "/my.webmanifest", "/shop.webmanifest", "/healthz/ready", "/shop/rackets/1", "/shop/jobs/picture/1", "/shop/jobs/photo/1", "/account/sign-in",
        ];
        foreach (var address in addresses)
            AssertClean(await Everything(address));
    }

    [Theory]
    [InlineData("UPDATE job SET ended_on = '2026-11-20', ended_how = 'Wear'")]
    [InlineData("UPDATE racket SET state = 'Damaged'")]
    [InlineData("UPDATE racket SET state = 'Gone', own_date = NULL")]
    [InlineData("UPDATE racket SET own_date = '2026-01-01'")]
    [InlineData("DELETE FROM job")]
    public async Task No_state_tells_more_than_another(string change)
    {
        _shop.Records.Change(change);

        AssertClean(await Everything("/t/" + _code));
    }

    [Fact]
    public async Task Childs_racket_and_an_adults_get_the_same_page()
    {
        var junior = await Everything("/t/" + _code);
        _shop.Records.Change("UPDATE player SET junior = 0, name = 'Grown Up'");

        Assert.Equal(junior, await Everything("/t/" + _code));
    }

    /// <summary>Headers and body in one text.</summary>
    private async Task<string> Everything(string address)
    {
        var answer = await _shop.Stranger().Get(address);
        Assert.False(address.StartsWith("/t", StringComparison.Ordinal) && answer.Headers.Contains("Set-Cookie"));
        return Lines(answer.Headers) + Lines(answer.Content.Headers) + await answer.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
    }

    private static string Lines(HttpHeaders headers) => string.Concat(headers.Select(h => $"{h.Key}: {string.Join(", ", h.Value)}\n"));

    private static void AssertClean(string answer)
    {
        var readable = Readable.Of(answer);
        Assert.All(Canaries, canary => Assert.DoesNotContain(canary, readable, StringComparison.OrdinalIgnoreCase));
    }
}
