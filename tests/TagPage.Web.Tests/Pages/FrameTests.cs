using System.Text;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Frames;
using TagPage.Records.Import;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Web.Import;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Pages;

/// <summary>The catalogue of frames, and what it says where hands are at work. Pim's racket 1 is a Pellmore Meadow 98.</summary>
public sealed class FrameTests : IDisposable
{
    private const string Caution = "Above what the maker recommends, the frame can crack and the warranty can be void: ask the maker.";

    private readonly TestShop _shop = new();
    private readonly long _racket;

    public FrameTests()
    {
        _shop.Records.Shop();
        (_, _, _racket, _, _) = _shop.Records.Family();
    }

    private FrameStore Store => _shop.Get<FrameStore>();

    private RangeConfirmStore Confirms => _shop.Get<RangeConfirmStore>();

    private static FrameEntry Meadow => new()
    {
        FormKey = FormKey.New(),
        Sport = Sport.Tennis,
        Name = "pellmore meadow 98",
        PatternMains = 16,
        PatternCrosses = 19,
        SkippedHoles = "7T 9T, 7B 9B",
        TieOffs = "mains 6T, crosses 5T 11B",
        LeastTension = 48,
        MostTension = 58,
        TensionUnit = TensionUnit.Lb,
        Note = "narrow throat",
    };

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_writes_a_frame_down_once_and_finds_it_in_the_catalogue_and_beside_racket_forms()
    {
        var owner = _shop.Owner();
        var form = await owner.Open("/shop/frames/new");
        (string, string)[] fields = [("Input.Name", "Heron 100"), ("Input.Sport", "Tennis"), ("Input.LeastTension", "22,5"), ("Input.MostTension", "27"), ("Input.TensionUnit", "Kg"), ("Input.SkippedHoles", "8T 8B")];

        Assert.Equal("/shop/frames", (await owner.Send(form, fields)).Location);
        await owner.Send(form, fields);

        Assert.True(Assert.Single(Store.List()) is { Name: "Heron 100", LeastTension: 22.5m, MostTension: 27, TensionUnit: TensionUnit.Kg, SkippedHoles: "8T 8B" });
        Assert.Contains("22.5 to 27 kg", (await owner.Open("/shop/frames")).Main, StringComparison.Ordinal);
        Assert.NotNull((await owner.Open($"/shop/rackets/edit/{_racket}")).Document.QuerySelector("datalist option[value='Heron 100']"));
        await owner.Send(await owner.Open("/shop/frames/edit/1"), ("Input.MostTension", "26"));
        Assert.Equal(26, Store.Get(1)!.MostTension);
    }

    [Theory]
    [InlineData("Input.Name", "", "Enter the maker and model, as you write it on rackets.")]
    [InlineData("Input.Name", "PELLMORE meadow 98", "The catalogue already has a frame of this name for this sport. Change that one, or enter another name.")]
    [InlineData("Input.Sport", "", "Choose the sport.")]
    [InlineData("Input.MostTension", "40", "The highest tension is below the lowest. Correct one of them.")]
    [InlineData("Input.PatternMains", "4", "A frame has between 8 and 40 mains.")]
    public async Task Nonsense_is_refused_at_its_field(string field, string typed, string sentence)
    {
        Store.Add(Who.Shop, Meadow);
        var owner = _shop.Owner();

        var answer = await owner.Send(await owner.Open("/shop/frames/new"), ("Input.Name", "Heron 100"), ("Input.Sport", "Tennis"), ("Input.LeastTension", "48"), (field, typed));

        Assert.Equal(sentence, Assert.Single(answer.Errors));
        Assert.Single(Store.List());
    }

    [Fact]
    public async Task What_is_known_about_the_frame_stands_on_new_job_ticket_bench_and_strung()
    {
        Store.Add(Who.Shop, Meadow);
        var job = _shop.Records.Job(_racket);
        var owner = _shop.Owner();

        foreach (var address in new[] { $"/shop/jobs/new?racket={_racket}", $"/shop/jobs/{job}", "/shop", $"/shop/jobs/strung/{job}" })
        {
            var page = (await owner.Open(address)).Main;
            Assert.Contains("7T 9T, 7B 9B", page, StringComparison.Ordinal);
            Assert.Contains("mains 6T, crosses 5T 11B", page, StringComparison.Ordinal);
            Assert.Contains("48 to 58 lb", page, StringComparison.Ordinal);
            Assert.Contains("16 × 19", page, StringComparison.Ordinal);
        }
        _shop.Records.Change("UPDATE racket SET frame = 'Heron 100'");
        Assert.DoesNotContain("7T 9T", (await owner.Open($"/shop/jobs/{job}")).Main, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Tension_outside_the_frames_range_shows_the_caution_and_the_job_keeps_that_it_was_confirmed()
    {
        Store.Add(Who.Shop, Meadow);
        var owner = _shop.Owner();
        var before = _shop.Records.Count("job");

        var asked = await owner.Send(await owner.Open($"/shop/jobs/new?racket={_racket}"), ("Input.MainsTension", "60"), ("Input.CrossesTension", "58"));

        Assert.Equal($"60 lb is outside the 48 to 58 lb that your catalogue gives for pellmore meadow 98. {Caution} Correct it, or tick below; the ticket keeps that you confirmed it.", Assert.Single(asked.Errors));
        Assert.Equal(before, _shop.Records.Count("job"));
        var saved = await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        var job = long.Parse(saved.Location!.Split('/')[^1], System.Globalization.CultureInfo.InvariantCulture);
        Assert.True(Assert.Single(Confirms.Of(job)) is { MainsTension: 60, CrossesTension: 58, TensionUnit: TensionUnit.Lb, Least: 48, Most: 58, RangeUnit: TensionUnit.Lb });
        var ticket = await owner.Open($"/shop/jobs/{job}");
        Assert.Contains("60 lb / 58 lb is outside the 48 to 58 lb recommended for this frame. " + Caution, ticket.Main, StringComparison.Ordinal);
        Assert.Contains("60 lb / 58 lb confirmed on 25 Nov 2026, with 48 to 58 lb recommended.", ticket.Main, StringComparison.Ordinal);
        Assert.Contains("outside the frame’s range", (await owner.Open("/shop")).Main, StringComparison.Ordinal);
        // The ticket is saved again as it stands: it was confirmed, and nothing is asked twice.
        await owner.Send(await owner.Open($"/shop/jobs/edit/{job}"), ("Input.Note", "checked"));
        Assert.Equal("checked", _shop.Records.Text($"SELECT note FROM job WHERE id = {job}"));
        Assert.Single(Confirms.Of(job));
    }

    [Fact]
    public async Task Another_tension_outside_is_asked_about_again_and_both_confirmations_are_kept()
    {
        Store.Add(Who.Shop, Meadow);
        var job = _shop.Records.Job(_racket);
        var owner = _shop.Owner();
        foreach (var tension in new[] { "62", "63" })
        {
            var asked = await owner.Send(await owner.Open($"/shop/jobs/edit/{job}"), ("Input.MainsTension", tension), ("Input.CrossesTension", ""));
            await owner.Send(asked, ("Input.Confirmed", asked.Document.QuerySelector("[name='Input.Confirmed']")!.GetAttribute("value")!));
        }

        Assert.Equal([63m, 62m], Confirms.Of(job).Select(confirmed => confirmed.MainsTension));
    }

    [Fact]
    public async Task Inside_the_range_nothing_is_asked_whatever_is_usual_in_the_sport()
    {
        Store.Add(Who.Shop, Meadow with { LeastTension = 20, MostTension = 30 });
        var owner = _shop.Owner();

        var saved = await owner.Send(await owner.Open($"/shop/jobs/new?racket={_racket}"), ("Input.MainsTension", "24"), ("Input.CrossesTension", ""));

        Assert.StartsWith("/shop/jobs/", saved.Location, StringComparison.Ordinal);
        Assert.Equal(0, _shop.Records.Count("range_confirm"));
    }

    [Fact]
    public async Task Ticket_that_no_form_asked_about_is_confirmed_on_the_ticket()
    {
        Store.Add(Who.Shop, Meadow with { MostTension = 50 });
        var job = _shop.Records.Job(_racket);
        var owner = _shop.Owner();
        var ticket = await owner.Open($"/shop/jobs/{job}");

        await owner.Send(ticket, ticket.Form($"/shop/jobs/{job}?handler=Range"));
        await owner.Send(ticket, ticket.Form($"/shop/jobs/{job}?handler=Range"));

        Assert.True(Assert.Single(Confirms.Of(job)) is { MainsTension: 52, CrossesTension: 50, Most: 50 });
        Assert.False((await owner.Open($"/shop/jobs/{job}")).HasForm($"/shop/jobs/{job}?handler=Range"));
    }

    [Fact]
    public async Task Catalogue_that_was_taken_out_comes_into_an_empty_one_identically()
    {
        Store.Add(Who.Shop, Meadow with { Name = "=Meadow, \"98\"", SkippedHoles = "-7T; 9T", Note = "narrow\nthroat" });
        Store.Add(Who.Shop, Meadow with { FormKey = FormKey.New(), Sport = Sport.Squash, Name = "Ötzi 125", PatternMains = null, LeastTension = null, MostTension = 12.5m, TensionUnit = TensionUnit.Kg, TieOffs = "" });
        var before = Rows();
        var response = await _shop.Owner().Get("/shop/frames?handler=Csv");
        var file = await response.Content.ReadAsByteArrayAsync(TestContext.Current.CancellationToken);
        Assert.Contains("'=Meadow", Encoding.UTF8.GetString(file), StringComparison.Ordinal);
        _shop.Records.Change("DELETE FROM frame");
        Assert.True(response.Content.Headers.ContentDisposition is { FileName: "frames.csv" });

        Assert.Equal("2 frames", Import(file).Summary);

        Assert.Equal(before, Rows());
        Assert.Equal("2 frames", Import(file).AlreadyThere);
        Assert.Equal(before, Rows());
    }

    [Theory]
    [InlineData("Heron,tennis,58,48", "frames.csv:2:most_tension: The highest tension is below the lowest. Correct one of them.")]
    [InlineData("Heron,tennis,48,58\nHERON,tennis,48,58", "frames.csv:3:frame: Line 2 already has this frame. Remove one of them.")]
    [InlineData("Heron,golf,48,58", "frames.csv:2:sport: Enter tennis, badminton or squash, not “golf”.")]
    public void Impossible_lines_are_named_and_nothing_comes_in(string lines, string problem)
    {
        var report = Import(Encoding.UTF8.GetBytes($"frame,sport,least_tension,most_tension\n{lines}\n"));

        Assert.Equal(problem, Assert.Single(report.Problems).ToString());
        Assert.Empty(Store.List());
    }

    private ImportReport Import(byte[] file)
    {
        var files = new ImportFiles();
        files.TryAdd(FrameSheetName, file);
        return _shop.Get<Importer>().Import(files, new ImportChoices(), FormKey.New());
    }

    private const string FrameSheetName = "frames.csv";

    private List<string> Rows() => [.. Store.List().Select(frame => $"{frame with { Id = 0, Version = 0 }}")];
}
