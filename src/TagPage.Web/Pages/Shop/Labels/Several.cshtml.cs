using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Jobs;
using TagPage.Records.Labels;
using TagPage.Records.Money;
using TagPage.Records.Tags;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>
/// Labels of rackets and tickets that the query names: of rackets how to return them, of tickets what was done, or the label for the
/// bag while they wait; of a client or payer those that wait.
/// </summary>
public sealed class SeveralModel(LabelStore store, TogetherStore together, TagStore tags, LabelMaker maker) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "racket")]
    public List<long> Rackets { get; set; } = [];

    [BindProperty(SupportsGet = true, Name = "job")]
    public List<long> Jobs { get; set; } = [];

    [BindProperty(SupportsGet = true, Name = "client")]
    public long? Client { get; set; }

    [BindProperty(SupportsGet = true, Name = "payer")]
    public long? Payer { get; set; }

    public LabelSet Set { get; private set; } = new();

    /// <summary>Those of the rackets that have no tag.</summary>
    public int Untagged => Set.Unprinted.Count(one => one.Wanted is { Purpose: LabelPurpose.Return, Row.Code: null });

    /// <summary>The page itself, with more in its query.</summary>
    public string Address(string more) => "/shop/labels/several?" + string.Join('&', Rackets.Select(id => $"racket={id}")
        .Concat(Jobs.Select(id => $"job={id}"))
        .Append(Client is { } client ? $"client={client}" : "").Append(Payer is { } payer ? $"payer={payer}" : "").Append(more)
        .Where(part => part.Length > 0));

    public void OnGet() => Set = Made(LabelPages.OneEach);

    public IActionResult OnGetPdf(LabelPages pages = LabelPages.OneEach) =>
        Made(pages) is { Labels.Count: > 0 } set ? File(set.Pdf(maker, pages), "application/pdf") : NotFound();

    /// <summary>Tags for those that have none.</summary>
    public IActionResult OnPostTags() => this.After(tags.MakeMissing(User.AtShop(), Rackets),
        made => this.GoOn(Address(""), made == 1 ? "1 tag is made." : $"{made} tags are made."));

    private LabelSet Made(LabelPages pages) => LabelSet.Of(maker, Wanted().Take(TogetherStore.Most), pages);

    private IEnumerable<LabelSet.Wanted> Wanted() =>
    [
        .. Rackets.Distinct().Select(id => store.Get(id)).OfType<LabelRow>().Select(row => new LabelSet.Wanted(row, LabelPurpose.Return)),
        .. Jobs.Concat(Waiting()).Distinct().Select(store.OfJob).OfType<LabelRow>().Select(row => new LabelSet.Wanted(row, row.Job is null ? LabelPurpose.Waiting : LabelPurpose.Done)),
    ];

    private IEnumerable<long> Waiting()
    {
        var row = Client is { } client ? together.Get(User.AtShop(), Party.Client(client)) : Payer is { } payer ? together.Get(User.AtShop(), Party.Payer(payer)) : null;
        return row?.Waiting.Select(job => job.Id) ?? [];
    }
}
