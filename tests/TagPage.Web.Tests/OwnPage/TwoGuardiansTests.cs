using System.Globalization;
using System.Net;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Security;

namespace TagPage.Web.Tests.OwnPage;

/// <summary>Odalys and Teo, guardians of two households: neither reads or changes anything of the other's, at any address.</summary>
public sealed class TwoGuardiansTests : IDisposable
{
    private static readonly string[] Private = ["Pim", "Odalys", "canary note", "canary words", "finder@canary"];

    /// <summary>All of hers that a page could change.</summary>
    private static readonly string[] OfHers =
    [
        "SELECT group_concat(id || state || number || version || COALESCE(lost_since, '') || lost_note, ';') FROM racket WHERE player_id IN (SELECT id FROM player WHERE client_id = {0})",
        "SELECT group_concat(id || state || COALESCE(asked_words || expected, '-') || version, ';') FROM job LEFT JOIN job_request ON job_id = id WHERE racket_id IN (SELECT r.id FROM racket r JOIN player p ON p.id = r.player_id WHERE p.client_id = {0})",
        "SELECT COUNT(*) FROM feel WHERE job_id = 71",
        "SELECT (SELECT COUNT(*) FROM logged_hours h JOIN racket r ON r.id = h.racket_id JOIN player p ON p.id = r.player_id WHERE p.client_id = {0}) || (SELECT COUNT(*) FROM pause a JOIN player p ON p.id = a.player_id WHERE p.client_id = {0}) || (SELECT COUNT(*) FROM reading WHERE job_id = 71)",
        "SELECT group_concat(id || name || client_id || version, ';') FROM player WHERE client_id = {0}",
        "SELECT id || name || COALESCE(mail, '') || COALESCE(phone, '') || found_choice || version || COALESCE(forget_at, '') FROM client WHERE id = {0}",
        "SELECT group_concat(id || COALESCE(answered_at, ''), ';') FROM found_event WHERE client_id = {0}",
        "SELECT group_concat(t.code || t.state, ';') FROM tag t JOIN racket r ON r.id = t.racket_id JOIN player p ON p.id = r.player_id WHERE p.client_id = {0}",
    ];

    private readonly TestShop _shop = new();
    private readonly long _odalys, _teo;
    private readonly HashSet<long> _hers;

    public TwoGuardiansTests()
    {
        _shop.Records.Shop();
        // Teo's records come first and are more, so that none of hers has a number of his.
        _teo = _shop.Records.Client("Teo Brandt", "+442079460111", "teo@canary.example");
        for (var n = 1; n < 7; n++)
            _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_teo, "Lena Brandt " + n)), strungOn: new(2026, 10, n));
        var (client, player, racket, _, job) = _shop.Records.Family();
        _odalys = client;
        _shop.Records.Change("PRAGMA defer_foreign_keys = 1; UPDATE job SET id = 71 WHERE id = @job; UPDATE charge SET job_id = 71 WHERE job_id = @job", new { job });
        _shop.Records.Change("INSERT INTO found_event (id, code, racket_id, client_id, kind, at, source, form_key, message, contact) VALUES (81, 'X', @racket, @client, 'Message', '2026-11-24T10:00:00.000Z', 's', 'k', 'canary words', 'finder@canary.example')", new { racket, client });
        _shop.Records.Change("UPDATE racket SET lost_since = '2026-11-20', lost_note = 'canary note' WHERE id = @racket", new { racket });
        _shop.Records.Change("INSERT INTO logged_hours (id, racket_id, played_on, hours) VALUES (91, @racket, '2026-11-24', 2)", new { racket });
        var waiting = _shop.Records.Job(_shop.Records.Racket(player, 2));
        _shop.Records.Change("INSERT INTO job_request (job_id, asked_in) VALUES (@waiting, 'OwnPage')", new { waiting });
        _hers = [player, racket, racket + 1, 71, waiting, 81, 91, _odalys];
    }

    public void Dispose() => _shop.Dispose();

    private IEnumerable<string> Hers() =>
        from door in Door.Listed
        where door.ForClients && door.Route.Contains("{id:long}", StringComparison.Ordinal)
        from id in _hers
        select door.Route.Replace("{id:long}", $"{id}", StringComparison.Ordinal);

    [Fact]
    public async Task Teo_opens_nothing_of_Odalys()
    {
        var teo = await _shop.OnOwnPage(_teo);

        foreach (var address in Hers())
        {
            var page = await teo.Open(address);
            Assert.True(page.Status is HttpStatusCode.NotFound or HttpStatusCode.Found or HttpStatusCode.OK, $"{address}: {page.Status}");
            // A number of hers may be one of his as well: then it is his own that he sees.
            Assert.All(Private, c => Assert.DoesNotContain(c, Readable.Of(page.Text), StringComparison.Ordinal));
        }
        Assert.Contains("Pim", (await (await _shop.OnOwnPage(_odalys)).Open("/my")).Text, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", Readable.Of((await teo.Open("/my")).Text), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Teo_changes_nothing_of_Odalys_with_forms_made_up_from_his_own()
    {
        var teo = await _shop.OnOwnPage(_teo);
        var token = (await teo.Open("/my/sign-out")).Document.QuerySelector("[name=__RequestVerificationToken]")!.GetAttribute("value")!;
        var before = HerRecords();

        foreach (var address in Hers())
        {
            using var form = new FormUrlEncodedContent(Everything(token));
            var answer = await teo.Client.PostAsync(new Uri(address, UriKind.Relative), form, TestContext.Current.CancellationToken);
            Assert.True((int)answer.StatusCode < 500, $"{address}: {answer.StatusCode}");
            Assert.Equal(before, HerRecords());
        }
    }

    /// <summary>Whatever some form of the own page asks for.</summary>
    private static Dictionary<string, string> Everything(string token) => new()
    {
        ["__RequestVerificationToken"] = token,
        ["role"] = "Gone",
        ["hours"] = "2",
        ["Input.Value"] = "600",
        ["Input.FormKey"] = "0123456789abcdef0123456789abcdef",
        ["Input.Kind"] = "Same",
        ["Input.Bed"] = "Right",
        ["Input.Note"] = "mallory",
        ["Input.Choice"] = "Shop",
        ["Input.Since"] = "2026-11-24",
        ["Input.Text"] = "mallory",
        ["Input.Name"] = "mallory",
        ["Input.Mail"] = "mallory@canary.example",
    };

    private string HerRecords() => string.Join('\n', OfHers.Select(sql => _shop.Records.Text(string.Format(CultureInfo.InvariantCulture, sql, _odalys))));
}
