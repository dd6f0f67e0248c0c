using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Stock;

public sealed class BuyModel(StockStore store, ShopStore shops) : RecordPage<StockRow>
{
    public sealed record BuyInput
    {
        public string FormKey { get; init; } = "";

        [Required(ErrorMessage = "Enter how much it is.")]
        [Range(0.01, 100_000.0, ErrorMessage = "Enter more than 0 and at most 100,000.")]
        public decimal? Amount { get; init; }

        public decimal? Cost { get; init; }

        [StringLength(120, ErrorMessage = "Keep the note within 120 characters.")]
        public string? Note { get; init; }
    }

    [BindProperty]
    public BuyInput Input { get; set; } = new();

    public ShopDetails Shop => shops.Get();

    protected override StockRow? Find(long id) => store.Get(id);

    public void OnGet() => Input = new BuyInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        var cost = this.Minor(nameof(Input.Cost), Input.Cost, Shop);
        if (!ModelState.IsValid)
            return Page();
        var entry = new BoughtEntry { FormKey = Input.FormKey, Centimetres = Saved.Length.Centimetres(Input.Amount!.Value), CostMinor = cost, Note = Input.Note };
        return this.After(store.Buy(User.AtShop(), Id, entry), id => this.GoOn($"/shop/stock/{id}", $"{Saved.Length.Of(entry.Centimetres)} of {Saved.Name} put in."));
    }
}
