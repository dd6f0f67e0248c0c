using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>Pim's racket was strung on 1 November and read 62 right after; today is the 25th.</summary>
public sealed class ReadingTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket, _job;

    public ReadingTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _job) = _shop.Records.Family();
        _shop.Records.Reading(_job, 62);
        _shop.Records.Change("INSERT INTO instrument (name, scale) VALUES ('phone', 'Hertz')");
    }

    public void Dispose() => _shop.Dispose();

    private long Later => _shop.Records.Count("reading", "first = 0");

    [Fact]
    public async Task Owner_adds_a_reading_and_the_card_says_what_was_lost_and_learned()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "52.7"), ("Input.TakenOn", "2026-11-22"), ("Input.TakenAt", "9:30"), ("Input.Note", "check-up"));

        // 24 hours past the 1st, three hours a week: 21 days are 9 hours.
        Assert.Equal("2026-11-22 09:30 52.7 9.0", _shop.Records.Text("SELECT taken_on || ' ' || taken_at || ' ' || value || ' ' || hours FROM reading WHERE first = 0"));
        var card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("15 %", card.Main, StringComparison.Ordinal);
        Assert.Contains("Learned from 1 reading", card.Main, StringComparison.Ordinal);
        Assert.Contains("15 % of tension lost", (await owner.Open($"/shop/jobs/{_job}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Slip_is_asked_about_drawn_hollow_when_kept_and_counted_with_a_press()
    {
        var owner = _shop.Owner();
        var asked = await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "26.9"), ("Input.TakenOn", "2026-11-22"));
        Assert.StartsWith("62 before, 26.9 now: is that right?", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(0, Later);

        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        var card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("Doubtful, not counted.", card.Main, StringComparison.Ordinal);
        Assert.Contains("Estimate from typical values", card.Main, StringComparison.Ordinal);
        Assert.Single(card.Document.QuerySelectorAll("circle.doubtful"));

        await owner.Send(card, card.Form("/shop/readings/count/2"));
        card = await owner.Open($"/shop/rackets/{_racket}");
        Assert.Contains("Learned from 1 reading", card.Main, StringComparison.Ordinal);
        Assert.Empty(card.Document.QuerySelectorAll("circle.doubtful"));
    }

    [Theory]
    [InlineData("Input.Value", "65", "more tension than right after stringing")]
    [InlineData("Input.Value", "12", "less tension than right after stringing")]
    [InlineData("Input.InstrumentId", "2", "Two instruments cannot be compared")]
    [InlineData("Input.TakenOn", "2026-10-30", "before these strings went in")]
    [InlineData("Input.TakenOn", "2026-12-01", "is in the future")]
    public async Task Nonsense_is_asked_about_and_kept_when_ticked(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "55"), (field, typed));

        Assert.Contains(sentence, Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(0, Later);
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        Assert.Equal(1, Later);
    }

    [Theory]
    [InlineData("Input.Value", "", "Enter the number the instrument shows.")]
    [InlineData("Input.Value", "0", "Enter the number the instrument shows, above 0 and below 5000.")]
    [InlineData("Input.InstrumentId", "", "Choose the instrument it was read on.")]
    [InlineData("Input.TakenAt", "25:00", "Enter the time as 14:30, or leave it empty.")]
    [InlineData("Input.TakenOn", "", "Enter the day it was read.")]
    public async Task What_cannot_be_is_refused_and_nothing_is_lost(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "55"), ("Input.Note", "kept"), ("Input.Confirmed", "x"), (field, typed));
        if (answer.Document.QuerySelector("#Input_Confirmed") is { } tick)
            answer = await owner.Send(answer, ("Input.Confirmed", tick.GetAttribute("value")!));

        Assert.Contains(sentence, answer.Errors);
        Assert.Equal("kept", answer.Document.QuerySelector("[name='Input.Note']")!.GetAttribute("value"));
        Assert.Equal(0, Later);
    }

    /// <summary>The same instrument read 588 Hz on another racket.</summary>
    [Theory]
    [InlineData("/shop/readings/new/{0}", "Input.Value", "Input.InstrumentId")]
    [InlineData("/shop/jobs/strung/{1}", "Input.Reading", "Input.InstrumentId")]
    [InlineData("/shop/jobs/edit/{0}", "Input.Reading", "Input.InstrumentId")]
    [InlineData("/shop/jobs/new?racket={2}", "Input.OldReading", "Input.OldInstrumentId")]
    public async Task Number_far_from_all_others_of_the_instrument_is_asked_about_on_every_form_and_kept_when_ticked(string form, string field, string on)
    {
        var other = _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ewan Lockyer"), "Bo Lockyer")), strungOn: new(2026, 11, 2));
        _shop.Records.Change("INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES (@other, 1, '2026-11-02', 2, 588)", new { other });
        var address = string.Format(System.Globalization.CultureInfo.InvariantCulture, form, _job, _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ada"), "Ada"))), _racket);
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open(address), (field, "31"), (on, "2"));

        Assert.Contains(asked.Errors, error => error.StartsWith("31 is far from 588, which is usual on phone", StringComparison.Ordinal));
        Assert.Equal(0, _shop.Records.Count("reading", "value = 31"));
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        Assert.Equal(1, _shop.Records.Count("reading", "value = 31"));
    }

    [Fact]
    public async Task First_number_of_a_sport_is_compared_with_all_others_of_the_instrument()
    {
        var tennis = _shop.Records.Job(_shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ewan Lockyer"), "Bo Lockyer")), strungOn: new(2026, 11, 2));
        _shop.Records.Change("INSERT INTO reading (job_id, first, taken_on, instrument_id, value) VALUES (@tennis, 1, '2026-11-02', 2, 588)", new { tennis });
        var squash = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Ada"), "Ada"));
        _shop.Records.Change("UPDATE racket SET sport = 'Squash', pattern_mains = 14 WHERE id = @squash", new { squash });
        var form = $"/shop/jobs/edit/{_shop.Records.Job(squash, strungOn: new(2026, 11, 20))}";
        var owner = _shop.Owner();

        var asked = await owner.Send(await owner.Open(form), ("Input.Reading", "31"), ("Input.InstrumentId", "2"));

        Assert.StartsWith("31 is far from 588, which is usual on phone", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("reading", "value = 31"));
        await owner.Send(await owner.Open(form), ("Input.Reading", "1102"), ("Input.InstrumentId", "2"));
        Assert.Equal(1, _shop.Records.Count("reading", "value = 1102"));
    }

    [Fact]
    public async Task First_reading_far_from_what_was_read_later_on_the_same_strings_is_asked_about()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "55"), ("Input.TakenOn", "2026-11-22"));

        var asked = await owner.Send(await owner.Open($"/shop/jobs/edit/{_job}"), ("Input.Reading", "26"));

        Assert.StartsWith("26 is far from 55, which was read on this racket", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal("62", _shop.Records.Text("SELECT value FROM reading WHERE first = 1"));
        asked = await owner.Send(await owner.Open($"/shop/jobs/edit/{_job}"), ("Input.Reading", "45"));
        Assert.StartsWith("These strings read 55 later, which would be more tension than right after stringing", Assert.Single(asked.Errors), StringComparison.Ordinal);
        await owner.Send(await owner.Open($"/shop/jobs/edit/{_job}"), ("Input.Reading", "63"));
        Assert.Equal("63", _shop.Records.Text("SELECT value FROM reading WHERE first = 1"));
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_reading()
    {
        var owner = _shop.Owner();
        var page = await owner.Open($"/shop/readings/new/{_job}");

        await owner.Send(page, ("Input.Value", "55"));
        await owner.Send(page, ("Input.Value", "55"));

        Assert.Equal(1, Later);
    }

    [Fact]
    public async Task Reading_taken_away_moves_the_date_back_and_the_first_one_stays()
    {
        var owner = _shop.Owner();
        _shop.Records.Change("UPDATE job SET label_date = (SELECT due_on FROM racket)");
        var before = _shop.Records.Text("SELECT due_on || due_because FROM racket");
        await owner.Send(await owner.Open($"/shop/readings/new/{_job}"), ("Input.Value", "49"), ("Input.TakenOn", "2026-11-10"));
        Assert.NotEqual(before, _shop.Records.Text("SELECT due_on || due_because FROM racket"));
        Assert.Contains("The label says", (await owner.Open($"/shop/rackets/{_racket}")).Main, StringComparison.Ordinal);

        await owner.Send(await owner.Open("/shop/readings/remove/2"));

        Assert.Equal(before, _shop.Records.Text("SELECT due_on || due_because FROM racket"));
        Assert.DoesNotContain("The label says", (await owner.Open($"/shop/rackets/{_racket}")).Main, StringComparison.Ordinal);
        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await owner.Open("/shop/readings/remove/1")).Status);
        Assert.Equal(1, _shop.Records.Count("reading"));
    }

    [Fact]
    public async Task Strings_that_were_never_put_in_cannot_be_measured()
    {
        var waiting = _shop.Records.Job(_racket);

        Assert.Equal(System.Net.HttpStatusCode.NotFound, (await _shop.Owner().Open($"/shop/readings/new/{waiting}")).Status);
    }

    [Fact]
    public async Task Next_drop_off_asks_for_a_reading_before_cutting_out()
    {
        var owner = _shop.Owner();
        var page = await owner.Open($"/shop/jobs/new?racket={_racket}");
        Assert.Contains("Right after stringing: 62", page.Main, StringComparison.Ordinal);

        var asked = await owner.Send(page, ("Input.OldReading", "70"), ("Input.OldEndedHow", "CutOut"));
        Assert.Contains("more tension than right after stringing", string.Concat(asked.Errors), StringComparison.Ordinal);
        Assert.Equal((0, 1), (Later, _shop.Records.Count("job")));

        await owner.Send(await owner.Open($"/shop/jobs/new?racket={_racket}"), ("Input.OldReading", "50"), ("Input.OldEndedHow", "CutOut"));
        Assert.Equal("2026-11-25 50.0", _shop.Records.Text("SELECT taken_on || ' ' || value FROM reading WHERE first = 0"));
        Assert.Equal("CutOut", _shop.Records.Text($"SELECT ended_how FROM job WHERE id = {_job}"));
        Assert.NotEqual("", _shop.Records.Text($"SELECT hours_played FROM job WHERE id = {_job}"));
    }

    [Fact]
    public async Task Strings_that_stay_in_can_be_read_at_a_drop_off_too()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open($"/shop/jobs/new?racket={_racket}"), ("Input.OldReading", "50"));

        Assert.Equal((1, 1), (Later, _shop.Records.Count("job", "strung_on IS NOT NULL AND ended_on IS NULL")));
    }
}
