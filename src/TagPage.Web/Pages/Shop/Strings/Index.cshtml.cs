using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Strings;

namespace TagPage.Web.Pages.Shop.Strings;

public sealed class IndexModel(StringStore store) : PageModel
{
    public IReadOnlyList<StringStore.Row> Strings { get; private set; } = [];

    public void OnGet() => Strings = store.List();
}
