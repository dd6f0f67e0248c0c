using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Rackets;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Rackets;

/// <summary>A racket of the player who is named in the query.</summary>
public sealed class NewModel(RacketStore store) : RecordPage<RacketStore.Owner>
{
    [BindProperty(SupportsGet = true)]
    public long Player { get; set; }

    [BindProperty]
    public RacketInput Input { get; set; } = new();

    protected override long Asked => Player;

    protected override RacketStore.Owner? Find(long id) => store.Player(id);

    public void OnGet() => Input = new RacketInput { FormKey = FormKey.New(), Number = Saved.NextNumber, Sport = Saved.LastSport };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid || this.Asks(RacketRules.Oddities(Input.ToEntry()), Input.Confirmed))
            return Page();
        return this.After(store.Add(User.AtShop(), Player, Input.ToEntry()), id => Input.Same > 1
            ? this.GoOn($"/shop/clients/{Saved.ClientId}", $"{Saved.Name}’s rackets {Input.Number} to {Input.Number + Input.Same - 1} are on file.", "Make and print their tags",
                $"/shop/labels/several?{string.Join('&', store.From(id, Input.Same!.Value).Select(one => $"racket={one}"))}")
            : this.GoOn($"/shop/rackets/{id}", $"{Saved.Name}’s racket {Input.Number} is on file.", "Make its tag", $"/shop/tags/new?racket={id}"));
    }
}
