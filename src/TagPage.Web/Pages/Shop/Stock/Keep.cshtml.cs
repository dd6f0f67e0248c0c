using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Money;
using TagPage.Core.Sports;
using TagPage.Core.Strings;
using TagPage.Records.Stock;
using TagPage.Records.Strings;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Stock;

/// <summary>Begins to keep account of a string, or changes how.</summary>
public sealed class KeepModel(StockStore store, StringStore strings) : RecordPage<StringStore.Row>
{
    public sealed record KeepInput
    {
        public int Version { get; init; }

        public StockUnit Unit { get; init; }

        [Required(ErrorMessage = "Enter how many metres one racket takes.")]
        [Range(1.0, 50.0, ErrorMessage = "Enter between 1 and 50 metres.")]
        public decimal? RacketMetres { get; init; }

        [Range(0.0, 10_000.0, ErrorMessage = "Enter between 0 and 10,000.")]
        public decimal? Reorder { get; init; }

        public StockEntry ToEntry()
        {
            var racket = (int)Math.Round(RacketMetres!.Value * 100);
            return new StockEntry { Version = Version, Unit = Unit, RacketCm = racket, ReorderCm = new StockLength(Unit, racket).Centimetres(Reorder ?? 0) };
        }
    }

    [BindProperty]
    public KeepInput Input { get; set; } = new();

    public bool IsNew => Input.Version == 0;

    protected override StringStore.Row? Find(long id) => strings.Get(id);

    public void OnGet() => Input = store.Get(Id) is { } kept
        ? new KeepInput { Version = kept.Version, Unit = kept.Unit, RacketMetres = kept.RacketCm / 100m, Reorder = kept.Length.Amount(kept.ReorderCm) }
        : new KeepInput { RacketMetres = StringPrice.UsualCentimetres(Sport.Tennis) / 100m, Reorder = 2 };

    public IActionResult OnPost() => ModelState.IsValid
        ? this.After(store.Keep(User.AtShop(), Id, Input.ToEntry()), id => this.GoOn(IsNew ? $"/shop/stock/count/{id}" : $"/shop/stock/{id}", IsNew ? "Now count what you have." : $"{Saved.Name} is saved."))
        : Page();
}
