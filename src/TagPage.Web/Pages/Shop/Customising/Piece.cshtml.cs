using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Customising;
using TagPage.Records.Rackets;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Customising;

/// <summary>Takes a piece off a frame by hand, or forgets one that never was on it.</summary>
public sealed class PieceModel(RacketStore rackets, AddedMassStore store, ShopStore shops, ShopClock clock) : RecordPage<AddedMassStore.Row>
{
    public sealed record PieceOff
    {
        [Required(ErrorMessage = "Enter the day it came off.")]
        public DateOnly? RemovedOn { get; init; }
    }

    [BindProperty(SupportsGet = true), FromRoute(Name = "racket")]
    public long RacketId { get; set; }

    [BindProperty]
    public PieceOff Input { get; set; } = new();

    public RacketStore.Row Racket => rackets.Get(RacketId)!;

    public SpecWords Words => new(shops.Get().CustomisingValues, Racket.Sport);

    private string Pieces => $"/shop/customise/pieces/{RacketId}";

    protected override AddedMassStore.Row? Find(long id) => store.Of(RacketId).FirstOrDefault(piece => piece.Id == id && piece.RemovedOn is null);

    public void OnGet() => Input = new PieceOff { RemovedOn = clock.Today };

    public IActionResult OnPost()
    {
        if (Input.RemovedOn > clock.Today)
            ModelState.AddModelError("Input.RemovedOn", "This day is in the future.");
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.TakeOff(User.AtShop(), RacketId, Id, Input.RemovedOn!.Value),
            _ => this.GoOn(Pieces, "The piece is noted as taken off. Measure the racket again.", "Measure", $"/shop/rackets/spec/{RacketId}"));
    }

    public IActionResult OnPostForget() => this.After(store.Forget(User.AtShop(), RacketId, Id), _ => this.GoOn(Pieces, "The piece is no longer noted."));
}
