using System.ComponentModel.DataAnnotations;
using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.EventDesk;
using TagPage.Core.Money;
using TagPage.Labels.Content;
using TagPage.Labels.Render.Pdf;
using TagPage.Records.Events;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Labels;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Desk;

/// <summary>One racket at the desk, by its number.</summary>
public sealed class EntryModel(DeskStore desks, LiveDesks live, DeskMoveStore moves, LabelMaker maker, ShopStore shops) : DeskPage(desks, live)
{
    public sealed record PlaceInput
    {
        [StringLength(40, ErrorMessage = "Keep it within 40 characters.")]
        public string? Place { get; init; }
    }

    /// <summary>Of the form that says where it lies; the buttons send nothing of it.</summary>
    public PlaceInput Input { get; private set; } = new();

    public EntryRow Racket { get; private set; } = new();

    public ShopDetails Shop => shops.Get();

    public IReadOnlyList<Slip> IfPulled => Saved.Desk.Slips(Saved.ToDesk(Racket) with { PulledForward = true });

    public IReadOnlyList<Slip> IfOnCourt => Saved.Desk.Slips(Saved.ToDesk(Racket) with { OnCourt = true });

    /// <summary>What whoever pays has in credit, where that is enough for what is open; null where it is not, or nothing is open.</summary>
    public long? Credit => Racket.IsOwed && moves.CreditFor(Me, Id, Racket.Number) is { } free && free >= Racket.OpenMinor ? free : null;

    /// <summary>What else the same player has to pay at this event; null for nothing.</summary>
    public string? AlsoOwes => Saved.OwedBeside(Racket) is { Count: > 0 } others
        ? $"The same player owes {Formats.Money(others.Sum(other => other.OpenMinor), Shop)} for number {string.Join(", ", others.Select(other => other.Number))} too."
        : null;

    public string Here => $"{Home}/entry/{Racket.Number}";

    protected override DeskBoard? Find(long id)
    {
        var board = base.Find(id);
        if (board?.Of(int.Parse((string)RouteData.Values["number"]!, CultureInfo.InvariantCulture)) is not { } racket)
            return null;
        Racket = racket;
        Input = new PlaceInput { Place = racket.Lies };
        return board;
    }

    public void OnGet()
    {
    }

    /// <summary>One label for the racket, one for its bag, with number and time.</summary>
    public IActionResult OnGetLabels()
    {
        var facts = new DeskFacts
        {
            Number = Racket.Number.ToString(CultureInfo.InvariantCulture),
            Tension = DeskWords.Tension(Racket),
            Strings = DeskWords.Strings(Racket),
            When = (Racket.StrungAt ?? Saved.Now).ToString("d MMM yyyy HH:mm", CultureInfo.InvariantCulture),
            Name = Racket.Junior ? Racket.LabelName : Racket.Player,
        };
        var how = new LabelEntry { TapeColour = Saved.Event.LabelTape };
        var labels = new[] { maker.Make(Purposes.DeskRacket(facts, null), how), maker.Make(Purposes.DeskBag(facts), how) };
        return File(LabelPdf.Of(maker.Pages(labels, how.Pages)), "application/pdf");
    }

    public IActionResult OnPostTake(long technician) => Taken(moves.Take(Me, Id, Racket.Number, technician), $"{Home}/technician/{technician}", $"Number {Racket.Number} is on the machine.");

    public IActionResult OnPostStrung() => this.After(moves.Strung(Me, Id, Racket.Number),
        _ => this.GoOn(Here, $"Number {Racket.Number} is strung.", "Print the pair", $"{Here}?handler=labels"));

    public IActionResult OnPostBack() => Done(moves.PutBack(Me, Id, Racket.Number), Here, $"Number {Racket.Number} is waiting again.");

    public IActionResult OnPostOut(DeskPay? how) => ModelState.IsValid && how is { } chosen && Enum.IsDefined(chosen)
        ? Done(chosen == DeskPay.Credit ? moves.HandOutFromCredit(Me, Id, Racket.Number) : moves.HandOut(Me, Id, Racket.Number, Method(chosen)),
            $"{Home}/out", $"Number {Racket.Number} is handed out. {AlsoOwes}".TrimEnd())
        : NotFound();

    public IActionResult OnPostPaid(DeskPay? how) => ModelState.IsValid && how switch
    {
        DeskPay.Credit => moves.PayFromCredit(Me, Id, Racket.Number),
        { } chosen when Method(chosen) is { } method => moves.Pay(Me, Id, Racket.Number, method),
        _ => null,
    } is { } outcome ? Done(outcome, Here, $"Number {Racket.Number} is paid.") : NotFound();

    public IActionResult OnPostLies([Bind(Prefix = nameof(Input))] PlaceInput typed)
    {
        Input = typed;
        return ModelState.IsValid ? Done(moves.Lay(Me, Id, Racket.Number, typed.Place ?? ""), Here, "Where it is kept has been noted.") : Page();
    }

    private static PaymentMethod? Method(DeskPay how) => how switch
    {
        DeskPay.Cash => PaymentMethod.Cash,
        DeskPay.Card => PaymentMethod.Card,
        DeskPay.Transfer => PaymentMethod.Transfer,
        _ => null,
    };

    public IActionResult OnPostForward() => Done(moves.PullForward(Me, Id, Racket.Number, true), Home, $"Number {Racket.Number} is pulled forward.");

    public IActionResult OnPostCourt() => Done(moves.PutOnCourt(Me, Id, Racket.Number, true), Home, $"Number {Racket.Number} goes first.");

    public IActionResult OnPostInTurn() => Done(
        Racket.OnCourt ? moves.PutOnCourt(Me, Id, Racket.Number, false) : moves.PullForward(Me, Id, Racket.Number, false), Here, $"Number {Racket.Number} is back in its normal place.");

    public IActionResult OnPostWithdraw() => Done(moves.Withdraw(Me, Id, Racket.Number), Home, $"Number {Racket.Number} is withdrawn. No other racket gets its number.");
}
