using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.ModelBinding;
using TagPage.Records.Frames;
using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>Rackets of a household or a payer that are put on the counter together.</summary>
public sealed class DropOffModel(DropOffStore store, TogetherStore together, JobStore jobs, FrameStore frames, JobChoicesReader choices, PriceListStore prices, StockStore stock, ShopStore shops, ShopClock clock) : TogetherPage(together)
{
    /// <summary>Of more rackets than this, those that are here are chosen first; and no form holds more than that many.</summary>
    private const int MostAtOnce = 12, MostChosen = 40;

    [BindProperty]
    public DropOffInput Input { get; set; } = new();

    [BindProperty(SupportsGet = true, Name = "racket")]
    public List<long> Chosen { get; set; } = [];

    /// <summary>Only work out the price; nothing is saved.</summary>
    [BindProperty]
    public bool Price { get; set; }

    public IReadOnlyList<NewJobStore.RacketRow> Rackets { get; private set; } = [];

    public bool IsChoosing { get; private set; }

    public ShopDetails Shop => shops.Get();

    public PriceList Prices { get; private set; } = new();

    public JobChoices Choices { get; private set; } = default!;

    public NewJobStore.RacketRow Racket(DropOffRacket row) => Rackets.First(racket => racket.Id == row.RacketId);

    protected override TogetherStore.Row? Find(long id)
    {
        if (base.Find(id) is not { } row)
            return null;
        (Rackets, Prices) = (store.Rackets(User.AtShop(), Party), prices.Get());
        Choices = choices.Of([.. Rackets.Select(racket => racket.LastJobId).Distinct().Select(last => last is { } job ? jobs.Get(User.AtShop(), job) : null)]);
        return row;
    }

    public void OnGet()
    {
        IsChoosing = Chosen.Count == 0 && (Rackets.Count > MostAtOnce || !IsClient);
        var shown = Chosen.Count > 0 ? Rackets.Where(racket => Chosen.Contains(racket.Id)).Take(MostChosen) : Rackets;
        Input = IsChoosing ? new() : DropOffFill.Of(shown.Select(racket => (racket, Last(racket))), clock.Today, Shop, Prices);
    }

    public IActionResult OnPost()
    {
        if (Input.Rackets.Any(row => Rackets.All(racket => racket.Id != row.RacketId)))
            return NotFound();
        Look();
        if (Price || !ModelState.IsValid || this.Asks(Oddities, Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Party, Input.ToEntry()), _ => this.GoOn(Home, Said(Input.Rackets.Count(row => row.Ticked)), "Labels for the bags", $"/shop/labels/several?{Whose}={Id}"));
    }

    private static string Said(int count) => count == 1 ? "1 racket is waiting at the bench." : $"{count} rackets are waiting at the bench.";

    /// <summary>Whether something is wrong in the part of a racket's fields that is folded.</summary>
    public bool IsFoldWrong(int index) => FoldedWords.StringFields.Append(nameof(JobInput.Price)).Append(nameof(DropOffRacket.Extras)).Append(nameof(JobInput.Note))
        .Any(field => ModelState.TryGetValue($"{nameof(Input)}.{DropOffInput.Place(index)}.{field}", out var entry) && entry.Errors.Count > 0);

    public static string NameOf(NewJobStore.RacketRow racket) => $"{racket.Player}, racket {racket.Number}";

    /// <summary>The racket a field belongs to.</summary>
    public string? WhoseField(string field) => Input.Rackets.Index().Where(line => field.StartsWith($"{nameof(Input)}.{DropOffInput.Place(line.Index)}.", StringComparison.Ordinal))
        .Select(line => NameOf(Racket(line.Item))).FirstOrDefault();

    /// <summary>What all ticked rows come to, and how many of them have no price yet.</summary>
    public (long Minor, int Without) Sum()
    {
        var all = Input.Rackets.Where(row => row.Ticked).Select(PriceOf).ToList();
        return (all.Sum(price => price ?? 0), all.Count(price => price is null));
    }

    public long? PriceOf(DropOffRacket row) => row.Announced
        ? Racket(row).OpenJobId is { } open ? jobs.Get(User.AtShop(), open)?.PriceMinor : null
        : DropOffFill.Price(row, Racket(row).Sport, Prices, Shop);

    private JobRow? Last(NewJobStore.RacketRow racket) => racket.LastJobId is { } last ? jobs.Get(User.AtShop(), last) : null;

    /// <summary>Notes what is wrong, beside each field of the rackets that are ticked; the others may be as they are.</summary>
    private void Look()
    {
        this.Note(new JobDays { ReceivedOn = Input.ReceivedOn, PromisedFor = Input.PromisedFor }.Faults(clock.Today));
        foreach (var (index, row) in Input.Rackets.Index())
        {
            var place = DropOffInput.Place(index);
            if (!row.Ticked || row.Announced)
                Forgive($"{nameof(Input)}.{place}");
            else
                Look(place, Input.Filled(row));
        }
    }

    private void Forgive(string prefix)
    {
        foreach (var (_, entry) in ModelState.FindKeysWithPrefix(prefix))
        {
            entry.Errors.Clear();
            entry.ValidationState = ModelValidationState.Skipped;
        }
    }

    private void Look(string place, DropOffRacket row)
    {
        List<ValidationResult> results = [];
        Validator.TryValidateObject(row, new ValidationContext(row), results, validateAllProperties: true);
        this.Note(results.Where(result => result.MemberNames.First() != nameof(row.ReceivedOn)).Select(result => new FieldFault($"{place}.{result.MemberNames.First()}", result.ErrorMessage!)));
        this.Note(row.ToOrder().Faults(Racket(row).Sport, Shop).Select(why => why with { Field = $"{place}.{why.Field}" }));
    }

    private IEnumerable<Oddity> Oddities =>
    [
        .. new JobDays { ReceivedOn = Input.ReceivedOn, PromisedFor = Input.PromisedFor }.Oddities(Shop.Opening),
        .. Input.Rackets.Index().Where(line => line.Item is { Ticked: true, Announced: false }).SelectMany(line => OdditiesOf(DropOffInput.Place(line.Index), line.Item)),
    ];

    private IEnumerable<Oddity> OdditiesOf(string place, DropOffRacket row)
    {
        var racket = Racket(row);
        foreach (var odd in store.IsSent(Input.FormKey) ? [] : racket.SecondTicket($"{place}.{nameof(row.Ticked)}"))
            yield return odd;
        foreach (var odd in row.ToOrder().Oddities(racket.Sport, Last(racket), frames.Find(racket.Sport, racket.Frame)))
            yield return odd with { Field = $"{place}.{odd.Field}" };
        foreach (var odd in row.ToOrder().Brought(Last(racket), stock.Sold()))
            yield return odd with { Field = $"{place}.{odd.Field}" };
    }
}
