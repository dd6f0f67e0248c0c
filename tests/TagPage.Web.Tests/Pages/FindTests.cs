using System.Net;
using Dapper;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

public sealed class FindTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;

    public FindTests() => _family = _shop.Records.Family();

    private Task<WebPage> Find(string typed) => _shop.Owner().Open("/shop/find?q=" + Uri.EscapeDataString(typed));

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("Pim")]
    [InlineData("pim fer")]
    [InlineData("FERRAN pim")]
    [InlineData("Odalys")]
    [InlineData("pellmore mead")]
    [InlineData("0958")]
    [InlineData("946 0958")]
    [InlineData("020 7946 0958")]
    [InlineData("+44 20 7946 0958")]
    [InlineData("1001")]
    [InlineData("#1001")]
    public async Task One_answer_lands_on_the_racket(string typed) =>
        Assert.Equal($"/shop/rackets/{_family.Racket}", (await Find(typed)).Location);

    [Fact]
    public async Task Tag_lands_on_its_racket_however_it_is_typed_or_scanned()
    {
        var code = _family.Tag;
        string[] typings = [code.ToString(), code.Display, code.Display.ToLowerInvariant(), $" {code} ", $"https://tag.example/t/{code}", $"HTTPS://TAG.EXAMPLE/T/{code}?x=1"];

        foreach (var typed in typings)
            Assert.Equal($"/shop/rackets/{_family.Racket}", (await Find(typed)).Location);
    }

    [Fact]
    public async Task Names_are_found_without_their_accents()
    {
        var racket = _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Želimír Ångström"), "Zoë"));

        foreach (var typed in new[] { "zelimir", "Ångstr", "angstrom", "zoe" })
            Assert.Equal($"/shop/rackets/{racket}", (await Find(typed)).Location);
    }

    [Fact]
    public async Task Worn_tag_is_found_by_the_beginning_of_its_code()
    {
        var (live, blank, retired) = (_family.Tag, _shop.Records.BlankTag(), _shop.Records.RetiredTag(_family.Racket));

        foreach (var (code, address) in new[] { (live, $"/shop/rackets/{_family.Racket}"), (blank, $"/shop/tags/link/{blank}"), (retired, $"/shop/rackets/{_family.Racket}") })
        {
            var page = await Find(code.Display[..7].ToLowerInvariant());

            Assert.Equal(code.Display, page.Document.QuerySelector($"main a[href='{address}']")?.TextContent);
        }
    }

    [Fact]
    public async Task Word_of_a_note_leads_to_its_ticket_and_for_a_job_to_its_racket()
    {
        _shop.Records.Change("UPDATE job SET note = 'mind the <b>grommets</b>' WHERE id = @Job", new { _family.Job });

        var page = await Find("grommet");
        var forJob = await _shop.Owner().Open("/shop/find?for=job&q=grommet");

        Assert.Equal($"/shop/jobs/{_family.Job}", page.Document.QuerySelector("[aria-labelledby=notes] a")?.GetAttribute("href"));
        Assert.Contains("mind the <b>grommets</b>", page.Main, StringComparison.Ordinal);
        Assert.DoesNotContain("Nothing found", page.Main, StringComparison.Ordinal);
        Assert.Equal($"/shop/jobs/new?racket={_family.Racket}", forJob.Document.QuerySelector("[aria-labelledby=notes] a")?.GetAttribute("href"));
    }

    [Fact]
    public async Task Blank_tag_asks_to_be_linked_and_a_retired_one_says_where_it_was()
    {
        var (blank, retired) = (_shop.Records.BlankTag(), _shop.Records.RetiredTag(_family.Racket));

        Assert.Equal($"/shop/tags/link/{blank}", (await Find(blank.Display)).Location);
        var page = await Find(retired.Display);
        Assert.Contains("no longer in use", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector($"main a[href='/shop/rackets/{_family.Racket}']"));
    }

    [Fact]
    public async Task Several_answers_are_told_apart_by_client_and_phone()
    {
        _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Odalys Brook", "+442079460123"), "Mara"));

        var page = await Find("odalys");

        Assert.Equal(HttpStatusCode.OK, page.Status);
        Assert.Contains("+44 20 7946 0958", page.Main, StringComparison.Ordinal);
        Assert.Contains("+44 20 7946 0123", page.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Client_with_two_rackets_lands_on_the_client()
    {
        _shop.Records.Racket(_family.Player, number: 2);

        Assert.Equal($"/shop/clients/{_family.Client}", (await Find("odalys")).Location);
    }

    [Fact]
    public async Task Sold_racket_does_not_stand_in_the_way_of_the_one_in_play()
    {
        _shop.Records.Racket(_family.Player, number: 2, state: "Sold");

        Assert.Equal($"/shop/rackets/{_family.Racket}", (await Find("odalys")).Location);
    }

    [Fact]
    public async Task Number_that_is_a_ticket_here_and_a_phone_there_shows_both()
    {
        _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Mara Brook", "+442079461001"), "Mara"));

        var page = await Find("1001");

        Assert.Contains("Ticket 1001", page.Main, StringComparison.Ordinal);
        Assert.Contains("Mara Brook", page.Main, StringComparison.Ordinal);
        Assert.Equal($"/shop/rackets/{_family.Racket}", (await Find("#1001")).Location);
    }

    [Fact]
    public async Task Nothing_found_says_what_was_searched_and_offers_a_first_visit()
    {
        var page = await Find("Nobody of that name");

        Assert.Contains("Nothing found for “Nobody of that name”", page.Main, StringComparison.Ordinal);
        Assert.NotNull(page.Document.QuerySelector("main a[href='/shop/clients/first-visit']"));
    }

    [Fact]
    public async Task Mistyped_tag_is_asked_to_be_looked_at_again()
    {
        var typed = _family.Tag.ToString();
        var slipped = typed[..^1] + (typed[^1] == '7' ? '8' : '7');

        Assert.Contains("Check the tag again", (await Find(slipped)).Main, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"")]
    [InlineData("pim\" OR \"a")]
    [InlineData("pim AND")]
    [InlineData("NOT pim NEAR(")]
    [InlineData("words:pim^2 *")]
    [InlineData("'; DROP TABLE client; --")]
    [InlineData("%%%")]
    [InlineData("💥\u0000\uFFFF")]
    [InlineData("99999999999999999999999999")]
    [InlineData("<script>alert(1)</script>")]
    public async Task Hostile_words_are_only_words(string typed)
    {
        var page = await Find(typed);

        Assert.True(page.Status is HttpStatusCode.OK or HttpStatusCode.Redirect, page.Text);
        Assert.DoesNotContain("<script>alert", page.Text, StringComparison.Ordinal);
        Assert.Equal(1, _shop.Database.Read(c => c.ExecuteScalar<int>("SELECT COUNT(*) FROM client")));
    }

    [Fact]
    public async Task Endless_text_is_answered_like_any_other_that_fits_nothing() =>
        Assert.Contains("Nothing found for", (await Find(new string('a', 3000))).Main, StringComparison.Ordinal);

    [Fact]
    public async Task Nothing_typed_asks_which_racket() =>
        Assert.Contains("Which racket?", (await _shop.Owner().Open("/shop/find")).Main, StringComparison.Ordinal);

    [Theory]
    [InlineData("Pim")]
    [InlineData("0958")]
    [InlineData("#1001")]
    public async Task New_job_from_the_bench_keeps_its_purpose_through_the_search(string typed)
    {
        var way = (await _shop.Owner().Open("/shop")).Document.QuerySelectorAll("main a").First(a => a.TextContent == "New job").GetAttribute("href")!;
        var ask = await _shop.Owner().Open(way);
        var kept = ask.Document.QuerySelectorAll("main form.big-find input[type=hidden]").Select(i => $"&{i.GetAttribute("name")}={i.GetAttribute("value")}");

        var answer = await _shop.Owner().Open($"/shop/find?q={Uri.EscapeDataString(typed)}{string.Concat(kept)}");

        Assert.Equal($"/shop/jobs/new?racket={_family.Racket}", answer.Location);
    }

    [Fact]
    public async Task Tag_scanned_for_a_new_job_leads_to_it() =>
        Assert.Equal($"/shop/jobs/new?racket={_family.Racket}", (await _shop.Owner().Open($"/shop/find?for=job&q={_family.Tag}")).Location);

    [Fact]
    public async Task Among_a_clients_rackets_the_one_for_a_new_job_is_chosen_in_the_search()
    {
        var second = _shop.Records.Racket(_family.Player, number: 2);
        var sold = _shop.Records.Racket(_family.Player, number: 3, state: "Sold");

        var page = await _shop.Owner().Open("/shop/find?for=job&q=odalys");

        Assert.NotNull(page.Document.QuerySelector($"main a[href='/shop/jobs/new?racket={_family.Racket}']"));
        Assert.NotNull(page.Document.QuerySelector($"main a[href='/shop/jobs/new?racket={second}']"));
        Assert.Null(page.Document.QuerySelector($"main a[href='/shop/jobs/new?racket={sold}']"));
        Assert.NotNull(page.Document.QuerySelector("main form.big-find input[name=for][value=job]"));
    }

    [Fact]
    public async Task Ticket_among_several_answers_leads_to_a_new_job_for_its_racket()
    {
        _shop.Records.Racket(_shop.Records.Player(_shop.Records.Client("Mara Brook", "+442079461001"), "Mara"));

        var page = await _shop.Owner().Open("/shop/find?for=job&q=1001");

        Assert.Equal($"/shop/jobs/new?racket={_family.Racket}", page.Document.QuerySelectorAll("main a").First(a => a.TextContent == "Ticket 1001").GetAttribute("href"));
    }
}
