using Microsoft.AspNetCore.Mvc;
using TagPage.Web.Data;
using TagPage.Web.Forms;
using TagPage.Web.Pages.Nudge;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.My;

/// <summary>Asks for a restring.</summary>
public sealed class OrderModel(ClientOnFileStore clients, MyRacketStore rackets, OrderStore orders, ShopClock clock) : CornerModel(clients)
{
    [BindProperty]
    public OrderInput Input { get; set; } = new();

    public MyRacket Racket { get; private set; } = new();

    public string Player { get; private set; } = "";

    public IActionResult OnGet(long id)
    {
        if (!Load(id))
            return NotFound();
        Input = new OrderInput { FormKey = FormKey.New(), Kind = nameof(AnswerKind.Same) };
        return Page();
    }

    public IActionResult OnPost(long id)
    {
        if (!Load(id))
            return NotFound();
        var reader = new OrderReader(Spoken.Language, clock.Today);
        var order = reader.Read(Input);
        foreach (var (field, sentence) in reader.Faults)
            ModelState.AddModelError("Input." + field, sentence);
        if (!ModelState.IsValid)
            return Page();
        switch (orders.Ask(Me.Id, id, Input.FormKey ?? "", order))
        {
            case OrderStore.Answer.Absent:
                return NotFound();
            case OrderStore.Answer.Done:
                this.Say(Say.Order.Sent);
                return Redirect(Link($"/my/rackets/{id}"));
            case var refused:
                ModelState.AddModelError("", WhyNot(refused));
                return Page();
        }
    }

    private string WhyNot(OrderStore.Answer answer) => answer switch
    {
        OrderStore.Answer.AtShop => Say.Order.AtShop,
        OrderStore.Answer.TooOften => Say.Order.TooOften.Fill(("most", $"{OrderStore.MostADay}")),
        OrderStore.Answer.NeverStrung => Say.Order.NeverStrung,
        _ => Say.Order.NotInPlay,
    };

    private bool Load(long id)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true } racket)
            return false;
        Racket = racket;
        Player = GivenNames.Of(rackets.OfClient(Me.Id).Select(r => r.Player))[racket.Player];
        return true;
    }
}
