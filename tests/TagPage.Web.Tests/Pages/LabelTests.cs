using System.Net;
using System.Text;
using TagPage.Records.Labels;
using TagPage.Web.Tests.Cast;
using static TagPage.Web.Tests.Cast.PrintedLabel;

namespace TagPage.Web.Tests.Pages;

public sealed class LabelTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly (long Client, long Player, long Racket, Core.Tags.TagCode Tag, long Job) _family;

    public LabelTests() => _family = _shop.Records.Family();

    private string Page => $"/shop/labels/racket/{_family.Racket}";

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Place_that_no_sheet_has_is_refused_with_how_many_there_are()
    {
        var owner = _shop.Owner();

        var refused = await owner.Send(await owner.Open(Page), ("Input.Pages", "Sheet"), ("Input.FirstFree", "799"));

        Assert.Matches("A sheet has [0-9]+ places", Assert.Single(refused.Errors));
        refused = await owner.Send(await owner.Open(Page), ("Input.Pages", "Sheet"), ("Input.Fold", "true"));
        Assert.Contains("is not folded over", Assert.Single(refused.Errors), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Owner_prints_what_was_done_and_the_square_leads_to_the_racket()
    {
        var owner = _shop.Owner();
        _shop.Records.Change("UPDATE job SET label_date = '2027-01-14'");
        var form = await owner.Open(Page);
        Assert.Contains("52 / 50 lb", Says(form), StringComparison.Ordinal);
        Assert.Contains("Heron Spin 1.25", Says(form), StringComparison.Ordinal);
        Assert.Contains($"Restring by {TagPage.Web.Words.Formats.Day(DateOnly.Parse(_shop.Records.Text("SELECT label_date FROM job"), System.Globalization.CultureInfo.InvariantCulture))}", Says(form), StringComparison.Ordinal);
        Assert.Contains("Strung 1 Nov 2026", Says(form), StringComparison.Ordinal);

        var answer = await owner.Send(form);

        Assert.StartsWith(Page + "?handler=pdf&", answer.Location, StringComparison.Ordinal);
        var pdf = await owner.Get(answer.Location!);
        Assert.Equal("application/pdf", pdf.Content.Headers.ContentType!.MediaType);
        var png = await owner.Get(answer.Location!.Replace("handler=pdf", "handler=png", StringComparison.Ordinal));
        Assert.Equal($"HTTPS://TAG.EXAMPLE/T/{_family.Tag}", Read(await png.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken)));
    }

    [Theory]
    [InlineData("http://localhost:5080")]
    [InlineData("https://127.0.0.1:5443")]
    public async Task Address_that_only_this_machine_knows_is_warned_of_although_somebody_set_it(string address)
    {
        using var shop = new TestShop { Settings = { ["TagPage:Address"] = address } };
        var racket = shop.Records.Family().Racket;
        var owner = shop.Owner();

        foreach (var page in new[] { $"/shop/rackets/{racket}", $"/shop/labels/racket/{racket}" })
            Assert.Contains($"it leads to {address}, which only this machine knows", (await owner.Open(page)).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Label_of_older_strings_says_the_date_of_today()
    {
        Assert.Equal("", _shop.Records.Text("SELECT label_date FROM job"));

        var due = DateOnly.Parse(_shop.Records.Text("SELECT due_on FROM racket"), System.Globalization.CultureInfo.InvariantCulture);

        Assert.Contains($"Restring by {TagPage.Web.Words.Formats.Day(due)}", Says(await _shop.Owner().Open(Page)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Reprint_is_the_same_file()
    {
        var owner = _shop.Owner();
        var link = (await owner.Send(await owner.Open(Page))).Location!;

        var first = await Bytes(owner, link);
        var second = await Bytes(owner, link);

        Assert.Equal(first, second);
        Assert.StartsWith("%PDF-1.7", Encoding.ASCII.GetString(first[..8]), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Juniors_label_says_racket_and_ticket_and_the_form_says_why()
    {
        var form = await _shop.Owner().Open(Page);

        Assert.DoesNotContain("Pim", Says(form), StringComparison.Ordinal);
        Assert.Contains("Racket 1, no. ", Says(form), StringComparison.Ordinal);
        Assert.Contains("without the guardian’s yes", form.Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Guardian_may_agree_to_a_nickname_but_not_to_a_family_name()
    {
        var owner = _shop.Owner();
        var refused = await owner.Send(await owner.Open(Page), ("Input.AgreedName", "Pim Ferran"));
        Assert.Contains("a family name can lead to the child", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Equal("", _shop.Records.Text("SELECT label_name FROM player"));

        await owner.Send(await owner.Open(Page), ("Input.AgreedName", "Pimmy"));

        Assert.Equal("Pimmy 2026-11-25", _shop.Records.Text("SELECT label_name || ' ' || label_name_on FROM player"));
        Assert.Contains("Pimmy", Says(await owner.Open(Page)), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Label_of_what_it_measures_says_a_juniors_racket_once_and_the_balance_in_mm_as_everywhere()
    {
        _shop.Records.Change($"INSERT INTO spec (racket_id, measured_on, balance, weight, strung, grip_on, dampener_on) VALUES ({_family.Racket}, '2026-11-20', 324.5, 312, 1, 1, 0)");

        var words = Says(await _shop.Owner().Open(Page + "?purpose=Measures"));

        Assert.Contains("balance 324.5 mm", words, StringComparison.Ordinal);
        Assert.Contains("weight 312 g", words, StringComparison.Ordinal);
        Assert.Single(words.Split("Racket 1").Skip(1));
        Assert.DoesNotContain("no. ", words, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Racket_without_tag_or_job_or_spec_is_told_what_is_missing()
    {
        var bare = _shop.Records.Racket(_family.Player, number: 2);
        var owner = _shop.Owner();

        Assert.Contains("has no tag yet", (await owner.Open($"/shop/labels/racket/{bare}")).Main, StringComparison.Ordinal);
        Assert.Contains("has not been strung here yet", (await owner.Open($"/shop/labels/racket/{bare}?purpose=Done")).Main, StringComparison.Ordinal);
        Assert.Contains("has not been measured", (await owner.Open($"/shop/labels/racket/{bare}?purpose=Measures")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"/shop/labels/racket/{bare}?handler=pdf&purpose=Done")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get($"{Page}?job=999")).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/labels/racket/999")).StatusCode);
    }

    [Fact]
    public async Task Retired_tag_is_not_printed_again()
    {
        _shop.Records.Change("UPDATE tag SET state = 'Retired', retired_at = '2026-11-02T09:00:00.000Z'");
        var owner = _shop.Owner();

        Assert.DoesNotContain(_family.Tag.Display, Says(await owner.Open(Page)), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get(Page + "?handler=pdf&purpose=Return")).StatusCode);
    }

    [Fact]
    public async Task All_that_was_strung_today_is_printed_in_one_go()
    {
        var owner = _shop.Owner();
        Assert.Contains("Nothing was strung today", (await owner.Open("/shop/labels/today")).Main, StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await owner.Get("/shop/labels/today?handler=pdf")).StatusCode);
        _shop.Records.Job(_family.Racket, strungOn: TestShop.Today);
        _shop.Records.Job(_shop.Records.Racket(_family.Player, number: 2), strungOn: TestShop.Today);

        var page = await owner.Open("/shop/labels/today");

        Assert.Equal(2, page.Document.QuerySelectorAll(".label-preview svg").Length);
        Assert.Equal(2, Occurrences(await Bytes(owner, "/shop/labels/today?handler=pdf"), "/Type /Page "));
        Assert.Equal(1, Occurrences(await Bytes(owner, "/shop/labels/today?handler=pdf&pages=Strip"), "/Type /Page "));
    }

    [Fact]
    public async Task Desk_pair_and_any_words_answer_with_the_file_and_keep_nothing()
    {
        var owner = _shop.Owner();
        var before = _shop.Database.Dump();

        var pair = await owner.Send(await owner.Open("/shop/labels/desk"), ("Input.Number", "117"), ("Input.Tension", "24 lb"), ("Input.Name", "Odalys"));
        Assert.Equal("application/pdf", pair.Response.Content.Headers.ContentType!.MediaType);
        Assert.Equal(2, Occurrences(Encoding.Latin1.GetBytes(pair.Text), "/Type /Page "));
        var words = await owner.Send(await owner.Open("/shop/labels/free"), ("Input.First", "Good luck"), ("Input.Copies", "3"));
        Assert.Equal(3, Occurrences(Encoding.Latin1.GetBytes(words.Text), "/Type /Page "));
        var refused = await owner.Send(await owner.Open("/shop/labels/desk"), ("Input.Number", "many"));
        Assert.Equal(2, refused.Errors.Count);
        Assert.Equal(before, _shop.Database.Dump());
    }

    [Fact]
    public async Task Logo_is_read_checked_and_stands_on_the_label()
    {
        var owner = _shop.Owner();
        var refused = await SendLogo(owner, "<svg onload='alert(1)'/>"u8.ToArray());
        Assert.Contains("cannot be read or shows nothing", Assert.Single(refused.Errors), StringComparison.Ordinal);
        Assert.Null(_shop.Get<LogoStore>().Get());
        using var bitmap = new SkiaSharp.SKBitmap(40, 40);
        bitmap.Erase(SkiaSharp.SKColors.Black);
        using var data = bitmap.Encode(SkiaSharp.SKEncodedImageFormat.Png, 100);

        var answer = await SendLogo(owner, data.ToArray());

        Assert.Equal("/shop/labels/logo", answer.Location);
        Assert.Single((await owner.Open("/shop/labels/logo")).Document.QuerySelectorAll(".label-preview svg"));
        Assert.Equal(128, _shop.Get<LogoStore>().Get()!.Threshold);
    }

    private static async Task<WebPage> SendLogo(Visitor owner, byte[] file)
    {
        var page = await owner.Open("/shop/labels/logo");
        using var form = new MultipartFormDataContent
        {
            { new StringContent(page.Document.QuerySelector("main [name=__RequestVerificationToken]")!.GetAttribute("value")!), "__RequestVerificationToken" },
            { new StringContent("128"), "Input.Threshold" },
            { new ByteArrayContent(file), "Input.File", "logo.png" },
        };
        return await owner.Follow(await WebPage.Of(await owner.Client.PostAsync(new Uri("/shop/labels/logo", UriKind.Relative), form, TestContext.Current.CancellationToken), "/shop/labels/logo"));
    }

    [Fact]
    public async Task Settings_move_the_limits_and_refuse_what_cannot_be()
    {
        var owner = _shop.Owner();
        var page = await owner.Open("/shop/labels/settings");
        Assert.Contains("33 characters", page.Main, StringComparison.Ordinal);
        Assert.Contains("The address is for life", page.Main, StringComparison.Ordinal);

        var refused = await owner.Send(page, ("Input.SheetColumns", "9"), ("Input.MarginMm", "5"), ("Input.SmallestModuleMm", "0.9"));
        Assert.Equal(3, refused.Errors.Count);
        Assert.Equal(new LabelSettings(), _shop.Get<LabelSettingsStore>().Get());

        await owner.Send(page, ("Input.TapeMm", "24"), ("Input.Dpi", "360"));
        Assert.Equal((24m, 360), (_shop.Get<LabelSettingsStore>().Get().TapeMm, _shop.Get<LabelSettingsStore>().Get().Dpi));
        var stale = await owner.Send(page, ("Input.TapeMm", "18"));
        Assert.Contains("Somebody else saved", stale.Main, StringComparison.Ordinal);
        Assert.Equal(24m, _shop.Get<LabelSettingsStore>().Get().TapeMm);
    }

    private static async Task<byte[]> Bytes(Visitor owner, string path)
    {
        var answer = await owner.Get(path);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
    }

    private static int Occurrences(byte[] file, string text) => Encoding.Latin1.GetString(file).Split(text).Length - 1;
}
