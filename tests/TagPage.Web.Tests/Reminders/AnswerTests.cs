using TagPage.Records.DueDates;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Reminders;

/// <summary>What an answer on the private page does to the bench, the racket and the due list, and how it is taken back.</summary>
public sealed class AnswerTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly Household _home;
    private readonly long _reminder;

    public AnswerTests()
    {
        _home = new Household(_shop);
        _reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
    }

    public void Dispose() => _shop.Dispose();

    private int DueHouseholds => _shop.Get<DueStore>().List(withUnseen: false).Households.Count;

    [Fact]
    public async Task Same_again_is_a_ticket_like_the_last_one_that_waits_to_be_brought()
    {
        var answer = await _home.Answer(_reminder, "Same");

        Assert.Equal(_home.Link(_reminder), answer.Location);
        Assert.Equal("Waiting 52.0 50.0 Lb 2450 1 2026-11-25", _home.Value("""
            SELECT printf('%s %s %s %s %d %d %s', state, mains_tension, crosses_tension, tension_unit, price_minor, expected, received_on) FROM job JOIN job_request ON job_id = id ORDER BY id DESC LIMIT 1
            """));
        Assert.Contains("not brought yet", (await _shop.Owner().Open("/shop")).Main, StringComparison.Ordinal);
        Assert.Equal(0, DueHouseholds);
        Assert.Contains("the same again", (await _shop.Stranger().Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task One_choice_answers_for_all_rackets_but_those_that_have_an_answer_of_their_own()
    {
        var reminder = _shop.Records.Reminder(_home.Client, _home.Racket);
        foreach (var number in (int[])[2, 3])
            Another(number);
        var odalys = _shop.Stranger();
        var page = await odalys.Open(_home.Link(reminder));
        Assert.Contains("One answer for all rackets", page.Main, StringComparison.Ordinal);

        await odalys.Send(page, ("Input.All", "NotYet"), ("Input.AllWeeks", "3"), ("Input.Rackets[1].Answer", "Gone"));

        Assert.Equal("NotYet 3, Gone , NotYet 3", _home.Value("SELECT group_concat(answer || ' ' || COALESCE(weeks, ''), ', ') FROM reminder_racket WHERE reminder_id = (SELECT MAX(id) FROM reminder)"));
        await odalys.Send(await odalys.Open(_home.Link(reminder)), ("Input.All", "Same"), ("Input.Rackets[1].Answer", "Elsewhere"), ("Input.Rackets[1].ElsewhereOn", "2026-11-20"));
        Assert.Equal("Same, Elsewhere, Same", _home.Value("SELECT group_concat(answer, ', ') FROM reminder_racket WHERE reminder_id = (SELECT MAX(id) FROM reminder)"));

        void Another(int number)
        {
            var racket = _shop.Records.Racket(_home.Player, number);
            _shop.Records.Job(racket, strungOn: new(2026, 9, 1));
            _shop.Records.Change("INSERT INTO reminder_racket (reminder_id, racket_id, due) VALUES (@reminder, @racket, '2026-11-20')", new { reminder, racket });
        }
    }

    [Fact]
    public async Task One_racket_is_asked_about_once()
    {
        Assert.DoesNotContain("One answer for all", (await _shop.Stranger().Open(_home.Link(_reminder))).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Something_different_stands_as_a_wish_on_the_ticket_and_at_the_bench()
    {
        await _home.Answer(_reminder, "Different", ("Input.Rackets[0].Strings", "softer <b>please</b>"), ("Input.Rackets[0].Tension", "22 kg"));

        Assert.Equal("strings: softer <b>please</b>\ntension: 22 kg", _home.Value("SELECT asked_words FROM job_request ORDER BY job_id DESC LIMIT 1"));
        var bench = await _shop.Owner().Open("/shop");
        Assert.Contains("softer <b>please</b>", bench.Main, StringComparison.Ordinal);
        Assert.Empty(bench.Document.QuerySelectorAll(".wish b"));
    }

    [Fact]
    public async Task Not_yet_takes_the_racket_off_the_list_until_that_day()
    {
        await _home.Answer(_reminder, "NotYet", ("Input.Rackets[0].Weeks", "3"));

        Assert.Equal("2026-12-16", _home.Value("SELECT not_before FROM racket"));
        Assert.Equal(0, DueHouseholds);
        Assert.Contains("no reminder before 16 Dec 2026", (await _shop.Owner().Open($"/shop/rackets/{_home.Racket}")).Main, StringComparison.Ordinal);
        _shop.Clock.Advance(TimeSpan.FromDays(21));
        Assert.Equal(1, DueHouseholds);
    }

    [Fact]
    public async Task Not_yet_ends_with_new_strings()
    {
        await _home.Answer(_reminder, "NotYet", ("Input.Rackets[0].Weeks", "52"));
        var job = _shop.Records.Job(_home.Racket);

        _shop.Records.Change("UPDATE job SET state = 'Strung', strung_on = '2026-11-26' WHERE id = @job", new { job });

        Assert.Equal("", _home.Value("SELECT not_before FROM racket"));
    }

    [Fact]
    public async Task Strung_elsewhere_counts_from_that_day_with_strings_unknown_on_card_and_tag_page()
    {
        await _home.Answer(_reminder, "Elsewhere", ("Input.Rackets[0].ElsewhereOn", "2026-11-20"));

        Assert.Equal(0, DueHouseholds);
        Assert.Equal("2026-11-20 Unknown", _home.Value("SELECT ended_on || ' ' || ended_how FROM job"));
        var tag = await _shop.Stranger().Open("/t/" + _home.Tag);
        Assert.Contains("Strung elsewhere on 20 Nov 2026", tag.Main, StringComparison.Ordinal);
        Assert.Contains("The last strings", tag.Main, StringComparison.Ordinal);
        // Twice a week: 365 / 2 days, rounded down, from that day (docs/restring-by.md).
        Assert.Contains("21 May 2027", tag.Main, StringComparison.Ordinal);
        Assert.Contains("Strung elsewhere on 20 Nov 2026", (await _shop.Owner().Open($"/shop/rackets/{_home.Racket}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gone_takes_the_racket_out_of_play()
    {
        await _home.Answer(_reminder, "Gone");

        Assert.Equal("Gone", _home.Value("SELECT state FROM racket"));
        Assert.Equal(0, DueHouseholds);
    }

    [Fact]
    public async Task Stop_alone_is_an_answer_and_leaves_the_household_off_the_list()
    {
        var odalys = _shop.Stranger();
        await odalys.Send(await odalys.Open(_home.Link(_reminder)), ("Input.Stop", "true"));

        Assert.Equal("0 2026-11-25", _home.Value("SELECT reminders || ' ' || reminders_changed_on FROM client"));
        var list = _shop.Get<DueStore>().List(withUnseen: false);
        Assert.Empty(list.Households);
        Assert.Equal(1, list.Silent);
        Assert.Contains("1 client who want", (await _shop.Owner().Open("/shop/due")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Page_opened_before_the_stop_does_not_bring_reminders_back()
    {
        var odalys = _shop.Stranger();
        var old = await odalys.Open(_home.Link(_reminder));
        await odalys.Send(await odalys.Open(_home.StopLink(_reminder)));

        await odalys.Send(old, ("Input.Rackets[0].Answer", "Same"));

        Assert.Equal("0", _home.Value("SELECT reminders FROM client"));
    }

    [Fact]
    public async Task Owner_notes_the_same_answers_from_the_phone()
    {
        var runa = _shop.Owner();
        var made = await runa.Send(await runa.Open($"/shop/nudges/new?client={_home.Client}"), ("Input.ByPhone", "true"));
        await runa.Send(await runa.Open(made.Location!), ("Input.Rackets[0].Answer", "Different"), ("Input.Rackets[0].Strings", "softer"));

        Assert.Equal("Different Owner", _home.Value("SELECT answer || ' ' || answered_by FROM reminder_racket ORDER BY reminder_id DESC LIMIT 1"));
        Assert.Equal("strings: softer", _home.Value("SELECT asked_words FROM job_request ORDER BY job_id DESC LIMIT 1"));
    }

    [Fact]
    public async Task Racket_that_was_brought_waits_like_any_other()
    {
        await _home.Answer(_reminder, "Same");
        _shop.Clock.Advance(TimeSpan.FromDays(3));
        var runa = _shop.Owner();
        var job = _home.Value("SELECT job_id FROM job_request WHERE expected = 1");

        await runa.Send(await runa.Open($"/shop/jobs/here/{job}"));

        Assert.Equal("0 2026-11-28 Waiting", _home.Value($"SELECT expected || ' ' || received_on || ' ' || state FROM job JOIN job_request ON job_id = id WHERE id = {job}"));
    }
}
