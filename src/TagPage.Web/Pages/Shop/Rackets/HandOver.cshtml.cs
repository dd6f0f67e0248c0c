using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Customising;
using TagPage.Records.Customising;
using TagPage.Records.Players;
using TagPage.Records.Rackets;
using TagPage.Records.Search;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

public sealed class HandOverModel(RacketStore rackets, PlayerPickStore players, HandOverStore store, AddedMassStore masses) : RecordPage<RacketStore.Row>
{
    [BindProperty(SupportsGet = true)]
    public string? Q { get; set; }

    [BindProperty(SupportsGet = true)]
    public long? To { get; set; }

    [BindProperty]
    public HandOverInput Input { get; set; } = new();

    public PlayerPickStore.Row? Receiver { get; private set; }

    public IReadOnlyList<PlayerPickStore.Row> Players { get; private set; } = [];

    /// <summary>Whether lead goes along with the frame.</summary>
    public bool HasLead => masses.Of(Id).Any(mass => mass is { Material: AddedMaterial.Lead, RemovedOn: null });

    protected override RacketStore.Row? Find(long id)
    {
        Receiver = To is { } to ? players.Get(to) : null;
        return To is null || Receiver is not null ? rackets.Get(id) : null;
    }

    public void OnGet()
    {
        Input = new HandOverInput { FormKey = FormKey.New(), Version = Saved.Version, Number = Receiver?.NextNumber };
        Players = SearchWords.Of(Q) is { } words ? [.. players.Find(words).Where(p => p.Id != Saved.PlayerId)] : [];
    }

    public IActionResult OnPost()
    {
        if (Receiver is null)
            return NotFound();
        if (!ModelState.IsValid)
            return Page();
        return this.After(store.HandOver(User.AtShop(), Id, Receiver.Id, Input.ToEntry()), id => this.GoOn(
            $"/shop/rackets/{id}", $"{Receiver.Name} has the racket now.", "Make its new tag", $"/shop/tags/new?racket={id}"), Saved.Version);
    }
}
