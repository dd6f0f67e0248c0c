using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.Rendering;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Stops;
using TagPage.Records.Storage;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Asks for a restring.</summary>
public sealed class OrderModel(ClientOnFileStore clients, OwnPageRacketStore rackets, OrderStore orders, StopStore stops, ShopStore shops, ShopClock clock) : OwnRecordPage<OwnPageRacket>(clients)
{
    [BindProperty]
    public OrderInput Input { get; set; } = new();

    /// <summary>What is under way is shown instead of the form; what was sent meanwhile stays in the form.</summary>
    public bool IsUnderWay { get; private set; }

    /// <summary>Where rackets can be left besides at the shop.</summary>
    public IReadOnlyList<StopRow> Stops => stops.InUse();

    public IReadOnlyList<SelectListItem> Places => [new SelectListItem(shops.Get().Name, ""), .. Stops.Select(stop => new SelectListItem(stop.Name, $"{stop.Id}"))];

    public string Player => GivenNames.Of(rackets.OfClient(Me.Id).Select(r => r.Player))[Saved.Player];

    /// <summary>What "the same again" is, with its price where this client pays it; null before the first stringing.</summary>
    public string? SameAgain
    {
        get
        {
            var words = new TagWords(Spoken.Language);
            return rackets.Stringings(Me.Id, Id, 1) is [var last]
                ? string.Join(" · ", [words.Tensions(last), words.Strings(last), .. rackets.LastPrice(Me.Id, Id) is { } price ? [Names.Money(price, shops.Get())] : Array.Empty<string>()])
                : null;
        }
    }

    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public void OnGet()
    {
        IsUnderWay = Names.Job(Saved) is not null;
        Input = new OrderInput { FormKey = FormKey.New(), Kind = nameof(AnswerKind.Same) };
    }

    public IActionResult OnPost()
    {
        var reader = new OrderReader(Spoken.Language, clock.Today);
        var order = reader.Read(Input, Stops.Count > 0);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        return ModelState.IsValid
            ? After(orders.Ask(Myself, Id, Input.FormKey ?? "", order), _ => GoOn($"/my/rackets/{Id}", Say.Order.Sent))
            : Page();
    }
}
