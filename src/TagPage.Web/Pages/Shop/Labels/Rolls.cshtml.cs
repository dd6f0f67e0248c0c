using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Labels;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

public sealed class RollsModel(RollStore rolls, LabelSettingsStore settings, PublicAddress address, ShopClock clock) : PageModel
{
    public sealed record OrderInput
    {
        public string FormKey { get; init; } = "";

        [Required(ErrorMessage = "Enter how many tags.")]
        [Range(1, RollStore.Most, ErrorMessage = "Enter a number from 1 to 500.")]
        public int? Count { get; init; } = 50;
    }

    [BindProperty]
    public OrderInput Input { get; set; } = new();

    public IReadOnlyList<RollStore.Row> Rolls => rolls.List();

    public string? AddressWarning => TagSquare.Warning(address);

    public LabelSettings Settings => settings.Get();

    public string Path(RollStore.Row roll) => rolls.Path(roll);

    public string Day(RollStore.Row roll) => Words.Formats.Day(DateOnly.FromDateTime(clock.OnTheWall(roll.MadeAt).Date));

    public void OnGet() => Input = new OrderInput { FormKey = FormKey.New() };

    public IActionResult OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        return this.After(rolls.Order(User.AtShop(), Input.Count!.Value, settings.Get(), Input.FormKey), id => Redirect(Path(rolls.Get(id)!)));
    }
}
