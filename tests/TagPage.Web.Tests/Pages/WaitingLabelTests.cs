using System.Text;
using TagPage.Web.Tests.Cast;
using static TagPage.Web.Tests.Cast.PrintedLabel;

namespace TagPage.Web.Tests.Pages;

/// <summary>The label that is stuck on a bag while its ticket waits.</summary>
public sealed class WaitingLabelTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;
    private readonly long _waiting;

    public WaitingLabelTests()
    {
        _family = _shop.Records.Family();
        _waiting = _shop.Records.Job(_family.Racket);
        _shop.Records.Change("""
            UPDATE job SET promised_for = '2026-11-28' WHERE id = @_waiting;
            INSERT INTO job_request (job_id, asked_in, asked_words, expected) VALUES (@_waiting, 'OwnPage', 'a little softer please', 0);
            """, new { _waiting });
    }

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task It_says_ticket_promise_order_and_wish_and_neither_the_juniors_name_nor_the_benchs_note()
    {
        var page = await _shop.Owner().Open($"/shop/labels/racket/{_family.Racket}?job={_waiting}");

        var words = Says(page);
        foreach (var said in new[] { _shop.Records.Text($"SELECT ticket FROM job WHERE id = {_waiting}"), "Promised", "28 Nov 2026", "52 / 50 lb", "Heron Spin 1.25", "a little softer please", "Racket 1" })
            Assert.Contains(said, words, StringComparison.Ordinal);
        Assert.DoesNotContain("Pim", words, StringComparison.Ordinal);
        Assert.DoesNotContain(OnFile.CanaryNote, words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Its_square_opens_the_rackets_page()
    {
        var owner = _shop.Owner();
        var form = await owner.Open($"/shop/labels/racket/{_family.Racket}?job={_waiting}");

        var link = (await owner.Send(form)).Location!;

        var png = await owner.Get(link.Replace("handler=pdf", "handler=png", StringComparison.Ordinal));
        Assert.Equal($"HTTPS://TAG.EXAMPLE/T/{_family.Tag}", Read(await png.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)));
    }

    [Fact]
    public async Task Household_and_list_of_tickets_print_all_in_one_file_and_a_strung_one_says_what_was_done()
    {
        var second = _shop.Records.Job(_shop.Records.Racket(_family.Player, number: 2));
        var owner = _shop.Owner();

        var household = await owner.Open($"/shop/labels/several?client={_family.Client}");
        Assert.Equal(2, household.Document.QuerySelectorAll(".label-preview").Length);
        var pdf = await owner.Get(household.Document.QuerySelector("main a.primary")!.GetAttribute("href")!);
        Assert.Equal(2, Encoding.Latin1.GetString(await pdf.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)).Split("/Type /Page ").Length - 1);

        var both = await owner.Open($"/shop/labels/several?job={second}&job={_family.Job}");
        Assert.Contains("Strung 1 Nov 2026", Says(both), StringComparison.Ordinal);
        Assert.Contains("nothing to print", (await owner.Open("/shop/labels/several?job=999&racket=77")).Main, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Ticket_that_is_strung_has_no_label_for_the_bag()
    {
        _shop.Records.Change("DELETE FROM job_request; UPDATE job SET state = 'Cancelled' WHERE id = @_waiting", new { _waiting });

        Assert.Contains("No ticket of this racket is waiting", (await _shop.Owner().Open($"/shop/labels/racket/{_family.Racket}?purpose=Waiting")).Main, StringComparison.Ordinal);
    }
}
