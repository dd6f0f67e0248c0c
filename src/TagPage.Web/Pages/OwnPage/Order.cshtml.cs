using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Text;
using TagPage.Records.OwnPages;
using TagPage.Records.Players;
using TagPage.Records.Reminders;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Asks for a restring.</summary>
public sealed class OrderModel(ClientOnFileStore clients, OwnPageRacketStore rackets, OrderStore orders, ShopClock clock) : OwnPageModel(clients)
{
    [BindProperty]
    public OrderInput Input { get; set; } = new();

    public OwnPageRacket Racket { get; private set; } = new();

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
            case Outcome.Absent:
                return NotFound();
            case Outcome.Refused refused:
                ModelState.AddModelError("", WhyNot(refused.Why));
                return Page();
            default:
                this.Say(Say.Order.Sent);
                return Redirect(Link($"/my/rackets/{id}"));
        }
    }

    private string WhyNot(Refusal why) => why switch
    {
        RacketAtShop => Say.Order.AtShop,
        OrderedEnough { Most: var most } => Say.Order.TooOften.Fill(("most", $"{most}")),
        NeverStrung => Say.Order.NeverStrung,
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
