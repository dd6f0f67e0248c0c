using System.Net;
using System.Text;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using SkiaSharp;
using TagPage.Core.Rackets;
using TagPage.Records.Condition;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>What a racket looks like when it comes in, in words and in photos.</summary>
public sealed class ConditionTests : IDisposable
{
    private readonly TestShop _shop = new();
    private readonly long _racket, _job;

    public ConditionTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _job) = _shop.Records.Family();
    }

    public void Dispose() => _shop.Dispose();

    private string Address => $"/shop/jobs/condition/{_job}";

    private static (string Field, string Name, byte[] Bytes) Photo(string name = "racket.jpg", string field = "Input.Photos")
    {
        using var bitmap = new SKBitmap(640, 480);
        bitmap.Erase(SKColors.Teal);
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);
        return (field, name, data.ToArray());
    }

    private static (string, string, byte[]) Text(string text, string name, string field = "Input.Photos") => (field, name, Encoding.UTF8.GetBytes(text));

    /// <summary>The form as it is, with files.</summary>
    private static async Task<WebPage> Send(Visitor visitor, WebPage page, (string Field, string Name, byte[] Bytes)[] files, params (string Name, string Value)[] fields)
    {
        var form = page.Document.QuerySelector<IHtmlFormElement>("main form[enctype]")!;
        var values = FormValues.Of(form);
        foreach (var (name, value) in fields)
            values.Set(name, value);
        using var content = new MultipartFormDataContent();
        foreach (var (name, value) in values.Pairs.Where(pair => !pair.Key.EndsWith(".Photos", StringComparison.Ordinal) && !pair.Key.EndsWith(".Camera", StringComparison.Ordinal)))
            content.Add(new StringContent(value), name);
        foreach (var (field, name, bytes) in files)
            content.Add(new ByteArrayContent(bytes), field, name);
        var action = form.GetAttribute("action") is { Length: > 0 } given ? given : page.Path.Split("&again")[0].Split("?again")[0];
        return await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri(action, UriKind.Relative), content, TestContext.Current.CancellationToken), action));
    }

    private ConditionRow Row(long? job = null) => _shop.Get<ConditionStore>().OfJob(Who.Shop, job ?? _job)!;

    [Fact]
    public async Task Condition_and_photos_stand_on_the_ticket_where_it_is_strung_and_on_the_card()
    {
        var owner = _shop.Owner();

        var answer = await Send(owner, await owner.Open(Address), [Photo(), Photo("taken.jpg", "Input.Camera")], ("Input.Grommets", "Damaged"), ("Input.GrommetsWords", "two split"));

        Assert.Equal($"/shop/jobs/{_job}", answer.Location);
        Assert.Equal((PartState.Damaged, 2), (Row().Grommets, Row().Photos.Count));
        foreach (var address in new[] { $"/shop/jobs/{_job}", $"/shop/jobs/strung/{_job}", $"/shop/rackets/{_racket}" })
        {
            var page = await owner.Open(address);
            Assert.Contains("grommets damaged: two split", page.Main, StringComparison.Ordinal);
            Assert.Equal(2, page.Document.QuerySelectorAll("main .photos img[src*='small=true'][alt]").Length);
        }
    }

    [Fact]
    public async Task Picture_is_served_to_whoever_is_signed_in_and_may_do_nothing_there()
    {
        var owner = _shop.Owner();
        await Send(owner, await owner.Open(Address), [Photo()]);
        var picture = $"/shop/jobs/picture/{Row().Photos[0].Id}";

        foreach (var visitor in new[] { _shop.Owner(), _shop.Helper() })
        {
            using var answer = await visitor.Get(picture);
            Assert.Equal((HttpStatusCode.OK, "image/jpeg"), (answer.StatusCode, answer.Content.Headers.ContentType!.ToString()));
            Assert.Equal("default-src 'none'; sandbox; frame-ancestors 'none'", Assert.Single(answer.Headers.GetValues("Content-Security-Policy")));
            Assert.Equal("nosniff", Assert.Single(answer.Headers.GetValues("X-Content-Type-Options")));
            Assert.True(answer.Headers.CacheControl!.NoStore);
            using var seen = SKBitmap.Decode(await answer.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
            Assert.Equal((640, 480), (seen.Width, seen.Height));
            using var small = SKBitmap.Decode(await (await visitor.Get(picture + "?small=true")).Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken));
            Assert.Equal(320, small.Width);
        }
        foreach (var visitor in new[] { _shop.Stranger(), await _shop.OnOwnPage(1) })
            Assert.Equal(HttpStatusCode.Found, (await visitor.Get(picture)).StatusCode);
        Assert.Equal(HttpStatusCode.NotFound, (await _shop.Owner().Get("/shop/jobs/picture/99")).StatusCode);
    }

    [Fact]
    public async Task Helper_at_the_bench_adds_a_photo_and_takes_it_off_again()
    {
        var helper = _shop.Helper();
        await Send(helper, await helper.Open(Address), [Photo()]);
        var photo = await helper.Open($"/shop/jobs/photo/{Row().Photos[0].Id}");

        var answer = await helper.Send(photo);

        Assert.Equal(($"/shop/jobs/{_job}", 0L), (answer.Location, _shop.Records.Count("photo")));
        Assert.Equal(HttpStatusCode.NotFound, (await helper.Get(photo.Path)).StatusCode);
    }

    [Theory]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' onload='alert(1)'/>", "drawing.jpg")]
    [InlineData("<!doctype html><script>alert(1)</script>", "page.jpg")]
    [InlineData("nothing of the kind", "notes.jpg")]
    [InlineData("", "empty.jpg")]
    public async Task What_is_no_photo_is_named_and_all_else_is_saved(string text, string name)
    {
        var owner = _shop.Owner();

        var page = await Send(owner, await owner.Open(Address), [Photo(), Text(text, name)], ("Input.Grip", "Worn"), ("Input.GripWords", "slippery"));

        Assert.Equal($"“{name}” is not kept. It is no photo that can be read. Send a JPEG, PNG or WebP. All else is saved.", Assert.Single(page.Errors));
        Assert.Equal((PartState.Worn, "slippery", 1), (Row().Grip, Row().GripWords, Row().Photos.Count));
        Assert.Equal("slippery", page.Document.QuerySelector<IHtmlInputElement>("[name='Input.GripWords']")!.Value);

        await Send(owner, page, [Photo()], ("Input.GripWords", "slippery, wants a new one"));

        Assert.Equal(("slippery, wants a new one", 2), (Row().GripWords, Row().Photos.Count));
    }

    [Fact]
    public async Task Words_that_are_too_long_lose_no_photo()
    {
        var owner = _shop.Owner();

        var page = await Send(owner, await owner.Open(Address), [Photo()], ("Input.FrameWords", new string('x', 121)));

        Assert.Equal("Keep this within 120 characters.", Assert.Single(page.Errors));
        Assert.Equal((0, 1), (Row().Version, Row().Photos.Count));
        await Send(owner, page, [], ("Input.FrameWords", "a crack at three o’clock"));
        Assert.Equal(("a crack at three o’clock", 1), (Row().FrameWords, Row().Photos.Count));
    }

    [Fact]
    public async Task Sent_twice_by_a_double_click_photos_come_once()
    {
        var owner = _shop.Owner();
        var page = await owner.Open(Address);
        var files = new[] { Photo() };

        await Send(owner, page, files, ("Input.Grip", "Worn"));
        var again = await Send(owner, page, files, ("Input.Grip", "Worn"));

        Assert.Single(Row().Photos);
        Assert.Equal(($"/shop/jobs/{_job}", 1), (again.Location, Row().Version));
    }

    [Fact]
    public async Task Too_many_photos_are_refused_and_the_rest_is_saved()
    {
        var owner = _shop.Owner();

        var page = await Send(owner, await owner.Open(Address), [.. Enumerable.Range(0, 13).Select(_ => Photo())], ("Input.Grip", "Worn"));

        Assert.Equal("These are 13 photos. Send up to 12. All else is saved.", Assert.Single(page.Errors));
        Assert.Equal((PartState.Worn, 0), (Row().Grip, Row().Photos.Count));
    }

    [Fact]
    public async Task Condition_and_photos_come_in_with_a_new_job()
    {
        var owner = _shop.Owner();
        var page = await owner.Open($"/shop/jobs/new?racket={_racket}");
        Assert.Contains("Condition not noted yet", string.Join(' ', page.Main.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)), StringComparison.Ordinal);

        var answer = await Send(owner, page, [Photo(field: "Input.Condition.Photos")], ("Input.Condition.Bumper", "Worn"));

        var job = long.Parse(answer.Location!.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal((PartState.Worn, 1), (Row(job).Bumper, Row(job).Photos.Count));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(_shop.Folder, "uploads")));
        Assert.Contains("bumper guard worn · 1 photo", (await owner.Open($"/shop/jobs/new?racket={_racket}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task New_job_that_is_refused_or_asked_about_keeps_its_photos_until_it_is_saved()
    {
        var owner = _shop.Owner();
        var page = await owner.Open($"/shop/jobs/new?racket={_racket}");

        page = await Send(owner, page, [Photo(field: "Input.Condition.Photos"), Text("<svg/>", "drawing.svg", "Input.Condition.Photos")], ("Input.MainsTension", ""), ("Input.Note", "softer, please"));
        Assert.Contains("“drawing.svg” is not kept. It is no photo that can be read. Send a JPEG, PNG or WebP.", page.Errors);
        Assert.Contains("1 photo arrived and will be saved with the job.", page.Main, StringComparison.Ordinal);
        Assert.Equal("softer, please", page.Document.QuerySelector<IHtmlTextAreaElement>("[name='Input.Note']")!.Value);
        Assert.Equal(0, _shop.Records.Count("photo"));

        page = await Send(owner, page, [Photo(field: "Input.Condition.Camera")], ("Input.MainsTension", "79"));
        Assert.Contains("2 photos arrived", page.Main, StringComparison.Ordinal);

        var answer = await Send(owner, page, [], ("Input.Confirmed", page.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));

        Assert.Equal((HttpStatusCode.Redirect, 2L), (answer.Status, _shop.Records.Count("photo")));
        Assert.Equal("softer, please", _shop.Records.Text("SELECT note FROM job ORDER BY id DESC LIMIT 1"));
        Assert.Empty(Directory.EnumerateFileSystemEntries(Path.Combine(_shop.Folder, "uploads")));
    }

    [Fact]
    public async Task Photos_of_a_form_that_lay_about_for_an_hour_are_asked_for_again()
    {
        var owner = _shop.Owner();
        var page = await Send(owner, await owner.Open($"/shop/jobs/new?racket={_racket}"), [Photo(field: "Input.Condition.Photos")], ("Input.MainsTension", ""));
        _shop.Clock.Advance(TimeSpan.FromMinutes(61));

        page = await Send(owner, page, [], ("Input.MainsTension", "52"));

        Assert.Equal("Photos that were sent before are kept for an hour, and that is over. Choose them again.", Assert.Single(page.Errors));
        Assert.Equal(1, _shop.Records.Count("job"));
        Assert.Equal(HttpStatusCode.Redirect, (await Send(owner, page, [Photo(field: "Input.Condition.Photos")], ("Input.MainsTension", "52"))).Status);
        Assert.Equal(1, _shop.Records.Count("photo"));
    }
}
