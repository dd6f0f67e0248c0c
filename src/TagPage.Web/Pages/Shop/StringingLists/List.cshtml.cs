using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.StringingLists;

/// <summary>How far a list is, and the way back.</summary>
public sealed class ListModel(StringingListStore store, TakeBackStore backs, ShopClock clock) : RecordPage<StringingListRow>
{
    private const string LookAgainSeconds = "2";

    public DateOnly Day => clock.DayOf(Saved.MadeAt);

    private IReadOnlyList<StandsOnIt>? _stands;

    public IReadOnlyList<StandsOnIt> Stands => _stands ??= backs.Stands(Id);

    protected override StringingListRow? Find(long id) => store.Get(id);

    public void OnGet()
    {
        if (Saved.IsAtWork)
            Response.Headers["Refresh"] = LookAgainSeconds;
    }

    public IActionResult OnPost()
    {
        var outcome = backs.Begin(User.AtShop(), Id);
        // Pressed twice: it is leaving already, or has left.
        return outcome is Outcome.Absent && Saved.State is StringingListState.Leaving or StringingListState.Back ? Redirect($"/shop/import/list/{Id}")
            : this.After(outcome, id => Redirect($"/shop/import/list/{id}"));
    }
}
