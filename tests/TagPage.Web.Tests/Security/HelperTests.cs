using System.Net;
using System.Text.RegularExpressions;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Dapper;
using TagPage.Records.Audit;
using TagPage.Records.Outbox;
using TagPage.Records.Storage;
using TagPage.Web.Mail;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security;

/// <summary>Helpers' accounts, from the invitation to the end.</summary>
public sealed partial class HelperTests : IAsyncLifetime
{
    private readonly TestShop _shop = new();
    private long _odalys, _pim;

    public async ValueTask InitializeAsync()
    {
        await _shop.OwnedByRuna();
        _shop.Records.Shop();
        (_odalys, _pim, _, _, _) = _shop.Records.Family();
    }

    public ValueTask DisposeAsync() => _shop.DisposeAsync();

    [Fact]
    public async Task Invited_helper_chooses_a_password_and_works_at_the_bench()
    {
        var bram = _shop.Stranger();

        var answer = await bram.Accept(await _shop.Owner().Invites());

        Assert.Equal("/shop", answer.Location);
        Assert.Equal(HttpStatusCode.OK, (await bram.Get("/shop")).StatusCode);
        Assert.Equal(HttpStatusCode.Forbidden, (await bram.Get("/shop/money")).StatusCode);
        Assert.Equal("/shop", (await _shop.Stranger().SignIn(Bram.Name, Bram.Password)).Location);
        Assert.Contains("signed in last on 25 Nov 2026", (await _shop.Owner().Open("/shop/people")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Invitation_works_once_and_a_newer_one_voids_it()
    {
        var owner = _shop.Owner();
        var first = await owner.Invites();
        var page = await owner.Open(await owner.PageOf());
        var second = Bram.LinkOn(await owner.Send(page, page.Document.QuerySelector<IHtmlFormElement>("form[action$='handler=Link']")!));

        Assert.Contains("no longer works", (await _shop.Stranger().Open(first)).Main, StringComparison.Ordinal);
        await _shop.Stranger().Accept(second);
        var before = _shop.Database.Dump();
        Assert.Contains("no longer works", (await _shop.Stranger().Open(second)).Main, StringComparison.Ordinal);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Invitation_dies_after_three_days()
    {
        var link = await _shop.Owner().Invites();

        _shop.Clock.Advance(TimeSpan.FromDays(3));

        Assert.Contains("no longer works", (await _shop.Stranger().Open(link)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Password_of_a_helper_keeps_to_the_same_rules()
    {
        var answer = await _shop.Stranger().Accept(await _shop.Owner().Invites(), "short");

        Assert.Equal("Use at least 12 characters. Four words that do not belong together are easy to remember.", Assert.Single(answer.Errors));
    }

    [Fact]
    public async Task Before_the_link_is_used_nobody_signs_in()
    {
        await _shop.Owner().Invites();

        Assert.Null((await _shop.Stranger().SignIn(Bram.Name, "")).Location);
        Assert.Null((await _shop.Stranger().SignIn(Bram.Name, Bram.Password)).Location);
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_helper_and_shows_the_same_link()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/people/invite");

        var (first, second) = (await owner.Send(form, ("Input.Name", "Bram")), await owner.Send(form, ("Input.Name", "Bram")));

        Assert.Equal(Bram.LinkOn(first), Bram.LinkOn(second));
        Assert.Equal(2, _shop.Records.Count("account"));
    }

    [Fact]
    public async Task Name_that_somebody_signs_in_by_is_refused()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/people/invite"), ("Input.Name", "RUNA"));

        Assert.Equal("Somebody else signs in by this name. Choose another one.", Assert.Single(answer.Errors));
        Assert.Equal(1, _shop.Records.Count("account"));
    }

    [Fact]
    public async Task Access_taken_away_ends_at_once_and_the_name_is_free()
    {
        var (owner, bram) = (_shop.Owner(), await _shop.BramAtBench());
        var page = await owner.PageOf();

        var answer = await owner.Send(await owner.Open(page.Replace("people/", "people/end/", StringComparison.Ordinal)));

        Assert.Equal("/shop/people", answer.Location);
        Assert.False(await bram.IsSignedIn());
        Assert.Null((await _shop.Stranger().SignIn(Bram.Name, Bram.Password)).Location);
        Assert.Contains("Bram, helped until 25 Nov 2026", (await owner.Open("/shop/people")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get(page)).StatusCode);
        await owner.Invites();
        Assert.Equal(3, _shop.Records.Count("account"));
    }

    [Fact]
    public async Task Owner_signs_a_helper_out_everywhere()
    {
        var (owner, bram) = (_shop.Owner(), await _shop.BramAtBench());
        var page = await owner.Open(await owner.PageOf());

        await owner.Send(page, page.Document.QuerySelector<IHtmlFormElement>("form[action$='handler=SignOut']")!);

        Assert.False(await bram.IsSignedIn());
        Assert.Equal("/shop", (await bram.SignIn(Bram.Name, Bram.Password)).Location);
    }

    [Fact]
    public async Task Renamed_helper_signs_in_by_the_new_name_and_stays_signed_in()
    {
        var (owner, bram) = (_shop.Owner(), await _shop.BramAtBench());

        await owner.Send(await owner.Open(await owner.PageOf()), ("Input.Name", "Bram Otten"));

        Assert.True(await bram.IsSignedIn());
        Assert.Equal("/shop", (await _shop.Stranger().SignIn("bram otten", Bram.Password)).Location);
    }

    [Fact]
    public async Task Owners_own_account_is_changed_nowhere_there()
    {
        var owner = _shop.Owner();
        var runa = _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT id FROM account"));
        var before = _shop.Database.Dump();

        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/people/" + runa)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/people/end/" + runa)).StatusCode);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Helper_without_a_second_step_is_led_to_it_before_anything_else_where_the_owner_wants_one()
    {
        var (owner, bram) = (_shop.Owner(), await _shop.BramAtBench());
        await owner.Send(await owner.Open("/shop/people"), ("Input.Demanded", "true"));

        foreach (var path in new[] { "/shop", "/shop/jobs/1", "/shop/find", "/desk/1" })
            Assert.Equal("/account/second-step", (await bram.Get(path)).Headers.Location?.ToString());
        Assert.Contains("more than a password", (await bram.Open("/account/second-step")).Main, StringComparison.Ordinal);

        _shop.Database.Write(c => c.Execute("UPDATE account SET two_factor = 1, authenticator_key = 'sealed' WHERE role = 'Bench'"));
        Assert.Equal(HttpStatusCode.OK, (await bram.Get("/shop")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await owner.Get("/shop")).StatusCode);
    }

    [Fact]
    public async Task Helper_is_told_of_a_new_browser_at_their_own_address()
    {
        await _shop.BramAtBench(Bram.Mail);
        await _shop.Stranger().SignIn(Bram.Name, Bram.Password);

        var mails = _shop.Database.Read(c => c.Query<(string Subject, string? To)>("SELECT subject, to_address FROM outbox ORDER BY id").AsList());

        Assert.Equal([("A new browser signed in", Bram.Mail), ("A new browser signed in", Bram.Mail)], mails);
    }

    [Fact]
    public async Task Invitation_waits_in_the_outbox_without_its_link_and_leaves_with_it()
    {
        var link = await _shop.Owner().Invites(mail: Bram.Mail);

        Assert.Equal(Bram.Mail, _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT to_address FROM outbox")));
        Assert.DoesNotContain(link.Split('/')[^1], _shop.Database.Dump(), StringComparison.Ordinal);
        var mail = _shop.Get<MailWriter>().Write(_shop.Get<OutboxStore>().Claim(MailLane.AllElse)!);
        Assert.Contains("https://tag.example" + link, mail.TextBody, StringComparison.Ordinal);
        Assert.Equal(Bram.Mail, Assert.Single(mail.To.Mailboxes).Address);
    }

    [Fact]
    public async Task Nothing_a_helper_is_shown_leads_to_a_refusal()
    {
        var helper = _shop.Helper();
        var tag = _shop.Database.Read(c => c.ExecuteScalar<string>("SELECT code FROM tag WHERE state = 'Live'"))!;
        var seen = new HashSet<string>(StringComparer.Ordinal);

        foreach (var door in Door.Listed.Where(d => d.ForBench).Select(d => d.Address(tag)))
        {
            var page = await helper.Open(door);
            foreach (var link in page.Document.QuerySelectorAll("a[href^='/'], form[action^='/']").Select(Leads).Where(seen.Add))
                Assert.True((await helper.Get(link)).StatusCode != HttpStatusCode.Forbidden, $"{door} leads to {link}");
        }

        Assert.True(seen.Count > 60, $"{seen.Count} were followed.");
        Assert.DoesNotContain("Money", (await helper.Open("/shop")).Document.QuerySelector("nav")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Ticket_and_what_happened_say_who_it_was_and_the_household_is_not_told()
    {
        var job = _shop.Records.Job(_shop.Records.Racket(_pim, number: 2));
        var bram = await _shop.BramAtBench();
        var ticket = await bram.Open($"/shop/jobs/{job}");
        Assert.Null(ticket.Document.QuerySelector("#who"));

        await bram.Send(ticket, ticket.Document.QuerySelector<IHtmlFormElement>($"form[action='/shop/jobs/start/{job}']")!);

        var owner = _shop.Owner();
        Assert.Contains("StartedBram, 25 Nov 2026, 10:00", Spaces().Replace((await owner.Open($"/shop/jobs/{job}")).Main, " "), StringComparison.Ordinal);
        Assert.Contains("Signed in, by a one-time link, Bram", (await owner.Open("/shop/audit")).Main, StringComparison.Ordinal);
        Assert.Contains("Bram", (await bram.Open($"/shop/jobs/strung/{job}")).Document.QuerySelector("[name='Input.StrungBy']")!.GetAttribute("value"), StringComparison.Ordinal);
        Assert.DoesNotContain("Bram", (await (await _shop.OnOwnPage(_odalys)).Open("/my")).Text, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"\s+")]
    private static partial Regex Spaces();

    private static string Leads(IElement element) => element.GetAttribute("href") ?? element.GetAttribute("action")!;

    [Fact]
    public async Task Invitations_and_ends_stand_under_what_happened()
    {
        var owner = _shop.Owner();
        await _shop.BramAtBench();
        await owner.Send(await owner.Open((await owner.PageOf()).Replace("people/", "people/end/", StringComparison.Ordinal)));

        var events = _shop.Get<AuditStore>().Page(Who.Shop, long.MaxValue).Select(line => (line.Event, line.Detail)).ToList();

        Assert.Contains((AuditEvent.HelperInvited, "Bram"), events);
        Assert.Contains((AuditEvent.AccessEnded, "Bram"), events);
    }
}
