using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Core.Rackets;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.PlayTime;
using TagPage.Records.Shop;
using TagPage.Records.Specs;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>One racket: how long its strings are good, how it is used, and whether it is lost.</summary>
public sealed class RacketModel(
    ClientOnFileStore clients, OwnPageRacketStore rackets, LostStore lost, OrderStore orders, FeelStore feels, PauseStore pauses, HoursStore hours,
    CareStore care, ShopStore shops, ShopClock clock) : OwnRecordPage<OwnPageRacket>(clients)
{
    public TagView View { get; private set; } = default!;

    public RestringBy By { get; private set; } = default!;

    /// <summary>What was said about the strings that are in it.</summary>
    public FeelStore.Row? Felt { get; private set; }

    public PlayCard Play { get; private set; } = default!;

    /// <summary>What it measured, newest first.</summary>
    public IReadOnlyList<SpecEntry> Specs { get; private set; } = [];

    public IReadOnlyList<OwnPageMass> Masses { get; private set; } = [];

    public ShopDetails Shop => shops.Get();

    /// <summary>The heading of what is wrong: what the press was for, and did not do.</summary>
    public string NotDone { get; private set; } = "";

    protected override OwnPageRacket? Find(long id)
    {
        if (rackets.Get(Me.Id, id) is not { } racket)
            return null;
        var (today, values) = (clock.Today, Shop.StartingValues);
        NotDone = Say.Frame.NotSaved;
        By = racket.Work(today, values);
        // The household comes without a tag's code, and its page shows none.
        View = TagView.Of(default, racket, rackets.Stringings(Me.Id, id, 1 + TagView.MostEarlier), today, values) with { Guides = care.For(id), Visits = rackets.Visits(Me.Id, id, TagView.MostVisits) };
        Felt = View.Latest is { } latest ? feels.Get(Myself, latest.JobId) : null;
        (Specs, Masses) = (rackets.Specs(Me.Id, id), rackets.Masses(Me.Id, id));
        Play = PlayCard.Of(this, Myself, racket, rackets, pauses, hours);
        return racket;
    }

    public void OnGet()
    {
    }

    /// <summary>Says how it is used.</summary>
    public IActionResult OnPostRole(string? role) =>
        After(rackets.SetRole(Myself, Id, Enum.TryParse<RacketState>(role, out var chosen) ? chosen : RacketState.Sold),
            _ => GoOn($"/my/rackets/{Id}", $"{Say.Racket.RoleSaved} {Names.Of(chosen)}"));

    /// <summary>A lost racket is back.</summary>
    public IActionResult OnPostBack() => After(lost.Back(Myself, Id), _ => GoOn($"/my/rackets/{Id}", Say.Lost.IsBack));

    /// <summary>Takes back what was asked for, until the racket is on the machine.</summary>
    public IActionResult OnPostCancel(long job)
    {
        NotDone = Say.Order.NotCancelled;
        return After(orders.Cancel(Myself, job), racket => GoOn($"/my/rackets/{racket}", Say.Order.Cancelled));
    }
}
