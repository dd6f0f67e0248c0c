using System.Net;
using Dapper;
using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class NewJobTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;

    public NewJobTests() => _family = _shop.Records.Family();

    private string Address => $"/shop/jobs/new?racket={_family.Racket}";

    private JobRow Job(long id) => _shop.Get<JobStore>().Get(Who.Shop, id)!;

    private int Jobs => _shop.Database.Read(c => c.ExecuteScalar<int>("SELECT COUNT(*) FROM job"));

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Form_saved_as_it_opens_is_the_last_job_again_received_today()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address));

        var (last, job) = (Job(_family.Job), Job(Id(answer)));
        Assert.Equal(
            (last.MainsId, last.CrossesId, last.Mains, last.Crosses, last.PriceMinor, last.Pieces, last.MainsSuppliedBy),
            (job.MainsId, job.CrossesId, job.Mains, job.Crosses, job.PriceMinor, job.Pieces, job.MainsSuppliedBy));
        Assert.Equal((JobState.Waiting, last.Ticket + 1, TestShop.Today, TestShop.Today.AddDays(2)), (job.State, job.Ticket, job.ReceivedOn, job.PromisedFor!.Value));
        Assert.Equal("", job.Note);
    }

    [Fact]
    public async Task Same_as_last_time_is_one_press_whatever_was_typed_and_pressed_twice_it_is_one_job()
    {
        var owner = _shop.Owner();
        var form = await owner.Open(Address);
        Assert.Contains("Same as last time", form.Main, StringComparison.Ordinal);
        var same = form.Form($"{Address}&handler=Same");

        var answer = await owner.Send(form, same, ("Input.MainsTension", "99"));
        await owner.Send(form, same);

        var (last, job) = (Job(_family.Job), Job(Id(answer)));
        Assert.Equal((last.MainsId, last.CrossesId, last.Mains, last.Crosses, last.PriceMinor), (job.MainsId, job.CrossesId, job.Mains, job.Crosses, job.PriceMinor));
        Assert.Equal(2, Jobs);
    }

    [Fact]
    public async Task String_the_shop_sells_that_is_said_to_come_from_the_client_is_asked_about()
    {
        var own = _shop.Records.Kind("Own Gut", "NaturalGut", 1.30m);
        _shop.Records.Change("""
            INSERT INTO money_setting (id, labour_minor) VALUES (1, 1800);
            INSERT INTO string_price (string_id, set_minor) SELECT id, 1000 FROM string_kind WHERE name = 'Heron Spin';
            UPDATE string_kind SET offered = 0 WHERE id = @own;
            UPDATE job SET mains_id = @own, crosses_id = @own, mains_supplied_by = 'Client', crosses_supplied_by = 'Client'
            """, new { own });
        var owner = _shop.Owner();
        var form = await owner.Open(Address);
        Assert.Contains("unusual: from the client", form.Main, StringComparison.Ordinal);

        var asked = await owner.Send(form, ("Input.MainsId", $"{_shop.Records.Kind()}"));

        Assert.Equal(["You sell this string, but it is said to come from the client: then it costs nothing and takes nothing from the stock. Choose the shop, or tick below to keep it."], asked.Errors);
        Assert.Equal(1, Jobs);
        Assert.Equal(2800, Job(Id(await owner.Send(asked, ("Input.MainsSuppliedBy", "Shop")))).PriceMinor);
    }

    [Fact]
    public async Task Second_ticket_while_the_first_is_open_is_asked_about_first()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(Address));

        var asked = await owner.Send(await owner.Open(Address));
        Assert.Contains("on the bench already, with ticket", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(2, Jobs);

        var page = await owner.Open(Address);
        asked = await owner.Send(page, page.Form($"{Address}&handler=Same"));
        Assert.Single(asked.Errors);
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal(3, Jobs);
    }

    [Fact]
    public async Task Ticket_while_another_is_still_to_be_collected_is_asked_about_first()
    {
        var owner = _shop.Owner();
        _shop.Records.Change("UPDATE job SET state = 'Strung', collected_on = NULL WHERE id = @Job", new { _family.Job });

        var asked = await owner.Send(await owner.Open(Address));

        Assert.Contains("still ready to collect", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(1, Jobs);
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        Assert.Equal(2, Jobs);
    }

    [Fact]
    public async Task New_racket_is_filled_in_from_the_players_other_one()
    {
        var second = _shop.Records.Racket(_family.Player, number: 2);

        var form = await _shop.Owner().Open($"/shop/jobs/new?racket={second}");

        Assert.Contains("Pim Ferran’s racket 1", form.Main, StringComparison.Ordinal);
        Assert.Equal("52", form.Document.QuerySelector("[name='Input.MainsTension']")!.GetAttribute("value"));
        Assert.Null(form.Document.QuerySelector("[name='Input.OldEndedHow']"));
    }

    [Fact]
    public async Task Form_sent_twice_makes_one_job()
    {
        var owner = _shop.Owner();
        var form = await owner.Open(Address);

        var (first, second) = (await owner.Send(form), await owner.Send(form));

        Assert.Equal(first.Location, second.Location);
        Assert.Equal(2, Jobs);
    }

    [Fact]
    public async Task Tension_above_the_usual_range_is_asked_about_once_and_then_saved()
    {
        var owner = _shop.Owner();
        var form = await owner.Open(Address);

        var asked = await owner.Send(form, ("Input.MainsTension", "68"));

        Assert.Equal(HttpStatusCode.OK, asked.Status);
        Assert.Contains("ask the maker", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(1, Jobs);
        var meant = asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!;
        var saved = await owner.Send(asked, ("Input.Confirmed", meant));
        Assert.Equal(68, Job(Id(saved)).MainsTension);
    }

    [Fact]
    public async Task Unusual_tension_of_the_last_job_is_not_asked_about_again()
    {
        _shop.Database.Write(c => c.Execute("UPDATE job SET mains_tension = 68, crosses_tension = 66"));
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address));

        Assert.Equal((68m, 66m), (Job(Id(answer)).MainsTension, Job(Id(answer)).CrossesTension));
    }

    [Theory]
    [InlineData("Input.MainsTension", "240", "No machine pulls that. Enter a tension between 5 and 100 lb.")]
    [InlineData("Input.MainsTension", "", "Enter the tension of the mains.")]
    [InlineData("Input.CrossesTension", "1", "No machine pulls that. Enter a tension between 5 and 100 lb.")]
    [InlineData("Input.MainsId", "", "Choose the string of the mains, or write a new one below.")]
    [InlineData("Input.NewString.Name", "Marram", "Choose what the new string is made of.")]
    [InlineData("Input.MainsPreStretch", "7.5", "Enter a whole number here, like 16.")]
    [InlineData("Input.Price", "24.505", "Enter the price in GBP like 24.50.")]
    [InlineData("Input.Price", "-3", "Enter the price in GBP like 24.50.")]
    [InlineData("Input.Price", "79228162514264337593543950335", "Enter the price in GBP like 24.50.")]
    [InlineData("Input.ReceivedOn", "2026-11-26", "This day is in the future; today is 25 Nov 2026.")]
    [InlineData("Input.ReceivedOn", "0026-11-25", "Check the year.")]
    [InlineData("Input.PromisedFor", "2026-11-01", "The promised day is before the day it came in, 25 Nov 2026.")]
    public async Task Nonsense_is_refused_at_its_field_and_nothing_is_saved(string field, string typed, string sentence)
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address), ("Input.Note", "blue grommets"), (field, typed));

        Assert.Equal(HttpStatusCode.OK, answer.Status);
        Assert.Contains(sentence, answer.Errors);
        Assert.Equal("blue grommets", answer.Document.QuerySelector("[name='Input.Note']")!.TextContent);
        Assert.Equal(1, Jobs);
    }

    [Theory]
    [InlineData("/shop/jobs/new?racket={0}")]
    [InlineData("/shop/jobs/edit/{1}")]
    public async Task One_piece_is_not_two_strings(string form)
    {
        var crosses = _shop.Records.Kind("Marram Soft", "Multifilament", 1.3m);
        var (owner, before) = (_shop.Owner(), Job(_family.Job));
        var address = string.Format(System.Globalization.CultureInfo.InvariantCulture, form, _family.Racket, _family.Job);

        var answer = await owner.Send(await owner.Open(address), ("Input.CrossesId", $"{crosses}"), ("Input.Pieces", "1"));

        Assert.Equal("One piece is one string. Choose two pieces, or the mains’ string for the crosses too.", Assert.Single(answer.Errors));
        Assert.NotNull(answer.Document.QuerySelector("select[name='Input.Pieces'][aria-invalid]"));
        Assert.Equal((1, before), (Jobs, Job(_family.Job)));
    }

    [Fact]
    public async Task One_piece_with_a_new_string_for_one_half_is_refused_and_for_both_it_is_not()
    {
        var owner = _shop.Owner();
        (string, string)[] marram = [("Input.NewString.Name", "Marram"), ("Input.NewString.Material", "Aramid"), ("Input.NewString.GaugeMm", "1.2"), ("Input.Pieces", "1")];

        foreach (var place in new[] { "Mains", "Crosses" })
            Assert.Single((await owner.Send(await owner.Open(Address), [.. marram, ("Input.CrossesId", $"{Job(_family.Job).CrossesId}"), ("Input.NewString.Place", place)])).Errors);
        Assert.Equal((1, 1), (Jobs, _shop.Records.Count("string_kind")));

        await owner.Send(await owner.Open(Address), [.. marram, ("Input.NewString.Place", "Both")]);
        Assert.Equal(2, Jobs);
    }

    [Fact]
    public async Task Pre_stretch_belongs_to_each_string_wherever_it_is_read()
    {
        var owner = _shop.Owner();
        await owner.Send(await owner.Open($"/shop/jobs/edit/{_family.Job}"), ("Input.MainsPreStretch", "10"), ("Input.CrossesPreStretch", "0"));

        Assert.Contains("pre-stretch 10 / 0 %", (await owner.Open($"/shop/jobs/{_family.Job}")).Main, StringComparison.Ordinal);
        Assert.Contains("pre-stretched 10 / 0 %", (await owner.Open($"/shop/rackets/{_family.Racket}")).Main, StringComparison.Ordinal);
        Assert.Contains("pre-stretched 10 / 0 %", (await _shop.Stranger().Open($"/t/{_family.Tag}")).Main, StringComparison.Ordinal);
        var again = await owner.Send(await owner.Open(Address));
        Assert.Contains("pre-stretch 10 / 0 %", (await owner.Open(again.Location!)).Main, StringComparison.Ordinal);

        await owner.Send(await owner.Open($"/shop/jobs/edit/{_family.Job}"), ("Input.CrossesPreStretch", ""));
        Assert.Contains("pre-stretch 10 %", (await owner.Open($"/shop/jobs/{_family.Job}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Price_typed_with_a_comma_is_the_same_price()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address), ("Input.Price", "24,50"));

        Assert.Equal(2450, Job(Id(answer)).PriceMinor);
    }

    [Fact]
    public async Task A_word_about_arms_stands_with_a_juniors_tension_only()
    {
        var adult = _shop.Records.Racket(_shop.Records.Player(_family.Client, "Odalys Ferran"));
        var owner = _shop.Owner();

        Assert.Contains("clinician", (await owner.Open(Address)).Main, StringComparison.Ordinal);
        Assert.DoesNotContain("clinician", (await owner.Open($"/shop/jobs/new?racket={adult}")).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/shop/jobs/new?racket=99")]
    [InlineData("/shop/jobs/new")]
    [InlineData("/shop/jobs/99")]
    [InlineData("/shop/jobs/edit/99")]
    [InlineData("/shop/jobs/strung/99")]
    public async Task Unknown_ids_are_not_found(string path) =>
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get(path)).StatusCode);

    private static long Id(WebPage answer)
    {
        Assert.StartsWith("/shop/jobs/", answer.Location, StringComparison.Ordinal);
        return long.Parse(answer.Location!["/shop/jobs/".Length..], System.Globalization.CultureInfo.InvariantCulture);
    }
}
