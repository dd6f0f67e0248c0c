using System.Net;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The owner sets Machine 1 up; a helper checks it.</summary>
public sealed class MachineTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _job;

    public MachineTests()
    {
        _shop.Records.Shop();
        var (_, player, _, _, _) = _shop.Records.Family();
        _job = _shop.Records.Job(_shop.Records.Racket(player, number: 2));
    }

    public void Dispose() => _shop.Dispose();

    private async Task<string> Add()
    {
        var owner = _shop.Owner();
        var answer = await owner.Send(await owner.Open("/shop/machines/new"), ("Input.Name", "Machine 1"), ("Input.Kind", "ElectronicPull"));
        return answer.Location!;
    }

    [Fact]
    public async Task Helper_notes_a_check_and_reads_how_far_it_was_off()
    {
        var page = await Add();
        var helper = _shop.Helper();

        var answer = await helper.Send(await helper.Open(page), ("Input.Reference", "50"), ("Input.Measured", "50.6"), ("Input.Note", "spring scale"));

        var log = await helper.Open(answer.Location!);
        Assert.Contains("+1.2 %", log.Document.QuerySelector("td[data-label=Deviation]")!.TextContent, StringComparison.Ordinal);
        Assert.Contains("25 Dec 2026", (await helper.Open("/shop/machines")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.Forbidden, (await helper.Get("/shop/machines/new")).StatusCode);
    }

    [Fact]
    public async Task Earlier_check_that_is_entered_late_is_told_with_its_own_figure()
    {
        var page = await Add();
        var owner = _shop.Owner();
        await owner.Send(await owner.Open(page), ("Input.Reference", "50"), ("Input.Measured", "50.6"));

        await owner.Send(await owner.Open(page), ("Input.Reference", "50"), ("Input.Measured", "49"), ("Input.CheckedOn", "2026-11-01"));

        Assert.Contains("The check is noted: −2.0 %.", (await owner.Open(page)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Overdue_check_stands_on_the_bench_and_where_a_racket_is_marked_as_strung_until_it_is_done()
    {
        var page = await Add();
        var owner = _shop.Owner();
        Assert.DoesNotContain("overdue", (await owner.Open("/shop")).Main, StringComparison.Ordinal);

        _shop.Clock.Advance(TimeSpan.FromDays(31));

        foreach (var path in new[] { "/shop", $"/shop/jobs/strung/{_job}", page })
            Assert.Contains("overdue since 25 Dec 2026", (await owner.Open(path)).Main, StringComparison.Ordinal);
        await owner.Send(await owner.Open(page), ("Input.Reference", "50"), ("Input.Measured", "50"));
        Assert.DoesNotContain("overdue", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tickets_are_offered_the_machines_by_name()
    {
        await Add();

        var options = (await _shop.Owner().Open($"/shop/jobs/strung/{_job}")).Document.QuerySelectorAll("#Input_Machine-list option").Select(o => o.GetAttribute("value"));

        Assert.Contains("Machine 1", options);
    }

    [Theory]
    [InlineData("0", "51", "Enter a tension between 1 and 100.")]
    [InlineData("50", "", "Enter what it pulled.")]
    public async Task Nonsense_is_refused_at_its_field(string reference, string measured, string sentence)
    {
        var page = await Add();
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open(page), ("Input.Reference", reference), ("Input.Measured", measured));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Equal(0, _shop.Records.Count("machine_check"));
    }
}
