using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Stock;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Stock;

public sealed class CountModel(StockStore store) : RecordPage<StockRow>
{
    public sealed record CountInput
    {
        public string FormKey { get; init; } = "";

        [Required(ErrorMessage = "Enter how much it is.")]
        [Range(0.0, 100_000.0, ErrorMessage = "Enter between 0 and 100,000.")]
        public decimal? Amount { get; init; }

        [StringLength(120, ErrorMessage = "Keep the note within 120 characters.")]
        public string? Note { get; init; }
    }

    [BindProperty]
    public CountInput Input { get; set; } = new();

    protected override StockRow? Find(long id) => store.Get(id);

    public void OnGet() => Input = new CountInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        var entry = new CountEntry { FormKey = Input.FormKey, Centimetres = Saved.Length.Centimetres(Input.Amount!.Value), Note = Input.Note };
        return this.After(store.Count(User.AtShop(), Id, entry), id => this.GoOn($"/shop/stock/{id}", $"{Saved.Name} is counted: {Saved.Length.Of(entry.Centimetres)}."));
    }
}
