using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Asks for a restring.</summary>
public sealed class OrderModel(ClientOnFileStore clients, OwnPageRacketStore rackets, OrderStore orders, ShopClock clock) : OwnRecordPage<OwnPageRacket>(clients)
{
    [BindProperty]
    public OrderInput Input { get; set; } = new();

    public string Player => GivenNames.Of(rackets.OfClient(Me.Id).Select(r => r.Player))[Saved.Player];

    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public void OnGet() => Input = new OrderInput { FormKey = FormKey.New(), Kind = nameof(AnswerKind.Same) };

    public IActionResult OnPost()
    {
        var reader = new OrderReader(Spoken.Language, clock.Today);
        var order = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        return ModelState.IsValid
            ? After(orders.Ask(Myself, Id, Input.FormKey ?? "", order), _ => GoOn($"/my/rackets/{Id}", Say.Order.Sent))
            : Page();
    }
}
