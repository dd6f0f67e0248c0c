using TagPage.Core.Jobs;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class EditJobTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _job;
    private readonly long _old;

    public EditJobTests()
    {
        var family = _shop.Records.Family();
        (_old, _job) = (family.Job, _shop.Records.Job(family.Racket));
    }

    private string Address => $"/shop/jobs/edit/{_job}";

    private JobRow Job(long id) => _shop.Get<JobStore>().Get(Who.Shop, id)!;

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Form_saved_as_it_opens_changes_nothing()
    {
        var (owner, before) = (_shop.Owner(), Job(_old));

        await owner.Send(await owner.Open($"/shop/jobs/edit/{_old}"));

        Assert.Equal(before, Job(_old));
    }

    [Theory]
    [InlineData("Client", "Shop", "Its price stays £24.50; by the price list its strings cost £10.00 more now.")]
    [InlineData("Shop", "Client", "Its price stays £24.50; by the price list its strings cost £10.00 less now.")]
    public async Task Whoever_strings_come_from_is_changed_and_what_becomes_of_the_price_is_said(string was, string now, string says)
    {
        _shop.Records.Change("""
            INSERT INTO money_setting (id, labour_minor) VALUES (1, 1800);
            INSERT INTO string_price (string_id, set_minor) SELECT id, 1000 FROM string_kind;
            UPDATE job SET mains_supplied_by = @was, crosses_supplied_by = @was
            """, new { was });
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address), ("Input.MainsSuppliedBy", now));
        if (answer.Document.QuerySelector("[name='Input.Confirmed']")?.GetAttribute("value") is { Length: > 0 } asked)
            answer = await owner.Send(answer, ("Input.Confirmed", asked));

        var ticket = await owner.Open(answer.Location!);
        Assert.Contains(says, ticket.Main, StringComparison.Ordinal);
        var list = await owner.Open(ticket.Document.QuerySelector(".said a")!.GetAttribute("href")!);
        Assert.Equal(now == "Shop" ? ["18", "10"] : ["18"], list.Document.QuerySelectorAll("[name$=Amount]").Select(field => field.GetAttribute("value")).Where(value => !string.IsNullOrEmpty(value)));
        Assert.Equal(2450, Job(_job).PriceMinor);
    }

    [Fact]
    public async Task Old_job_typed_in_with_its_days_is_collected_and_has_ended_with_the_next_strings()
    {
        var owner = _shop.Owner();

        await owner.Send(await owner.Open(Address), ("Input.ReceivedOn", "2026-09-01"), ("Input.PromisedFor", ""),
            ("Input.StrungOn", "2026-09-02"), ("Input.CollectedOn", "2026-09-03"));

        var job = Job(_job);
        Assert.Equal((JobState.Collected, new DateOnly(2026, 9, 2), new DateOnly(2026, 9, 3)), (job.State, job.StrungOn, job.CollectedOn));
        Assert.Equal((new DateOnly(2026, 11, 1), BedEnd.Unknown), (job.EndedOn, job.EndedHow));
    }

    [Theory]
    [InlineData("Input.StrungOn", "2026-11-20", "Enter a day on or after the day it came in, 24 Nov 2026.")]
    [InlineData("Input.CollectedOn", "2026-11-25", "Enter the day of stringing too, since it was collected.")]
    [InlineData("Input.CollectedOn", "2027-01-01", "This day is in the future; today is 25 Nov 2026.")]
    [InlineData("Input.EndedHow", "Wear", "Enter the day these strings ended.")]
    [InlineData("Input.EndedOn", "2026-11-25", "Enter the day of stringing too, since these strings have ended.")]
    public async Task Days_out_of_order_are_refused_at_their_field(string field, string typed, string sentence)
    {
        var (owner, before) = (_shop.Owner(), Job(_job));

        var answer = await owner.Send(await owner.Open(Address), (field, typed));

        Assert.Contains(sentence, answer.Errors);
        Assert.Equal(before, Job(_job));
    }

    [Fact]
    public async Task Day_on_which_other_strings_went_into_the_racket_is_asked_about()
    {
        var (owner, before) = (_shop.Owner(), Job(_job));
        (string, string)[] days = [("Input.ReceivedOn", "2026-10-31"), ("Input.PromisedFor", ""), ("Input.StrungOn", "2026-11-01")];

        var asked = await owner.Send(await owner.Open(Address), days);

        Assert.StartsWith($"Ticket {Job(_old).Ticket} was strung on 1 Nov 2026 too, so its strings would not have lasted a day.", Assert.Single(asked.Errors), StringComparison.Ordinal);
        Assert.Equal(before, Job(_job));
        await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("#Input_Confirmed")!.GetAttribute("value")!));
        Assert.Equal(new DateOnly(2026, 11, 1), Job(_job).StrungOn);
        await owner.Send(await owner.Open(Address), ("Input.Note", "saved again without a question"));
        Assert.Equal("saved again without a question", Job(_job).Note);
    }

    [Fact]
    public async Task Year_that_leaves_the_promise_far_behind_is_refused_with_both_days()
    {
        _shop.Records.Change("UPDATE job SET promised_for = '2026-11-26' WHERE id = @_job", new { _job });

        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address), ("Input.ReceivedOn", "2020-11-24"), ("Input.StrungOn", "2020-11-24"));

        Assert.Contains("It came in on 24 Nov 2020 and is promised for 26 Nov 2026, more than a year later. Check both years.", answer.Errors);
    }

    [Fact]
    public async Task Strings_do_not_end_before_they_were_strung()
    {
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open($"/shop/jobs/edit/{_old}"), ("Input.EndedOn", "2026-10-30"), ("Input.EndedHow", "Wear"));

        Assert.Contains("Enter a day on or after the day they were strung, 1 Nov 2026.", answer.Errors);
        Assert.Null(Job(_old).EndedOn);
    }

    [Fact]
    public async Task Second_of_two_people_editing_a_ticket_is_told_and_nothing_is_overwritten()
    {
        var (first, second) = (_shop.Owner(), _shop.Owner());
        var (firstForm, secondForm) = (await first.Open(Address), await second.Open(Address));
        await first.Send(firstForm, ("Input.MainsTension", "54"));

        var told = await second.Send(secondForm, ("Input.MainsTension", "50"));

        Assert.Contains("Somebody else saved this record", told.Main, StringComparison.Ordinal);
        Assert.Equal(54, Job(_job).MainsTension);
    }

    [Fact]
    public async Task Edit_form_open_while_the_ticket_is_strung_does_not_undo_it()
    {
        var owner = _shop.Owner();
        var form = await owner.Open(Address);
        _shop.Get<MoveStore>().MarkStrung(Who.Shop, _job, new StrungEntry { StrungOn = TestShop.Today });

        await owner.Send(form, ("Input.Note", "loose grommet"));

        Assert.Equal(JobState.Strung, Job(_job).State);
    }

    [Fact]
    public async Task Cancelled_ticket_is_not_strung_behind_its_back()
    {
        _shop.Get<MoveStore>().Cancel(Who.Shop, _job);
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(Address), ("Input.StrungOn", "2026-11-25"));

        Assert.Contains("This ticket is cancelled. Take it back to waiting first.", answer.Errors);
    }
}
