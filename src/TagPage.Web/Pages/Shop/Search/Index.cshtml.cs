using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Rackets;
using TagPage.Core.Tags;
using TagPage.Records.Search;
using TagPage.Web.Http;

namespace TagPage.Web.Pages.Shop.Search;

public sealed class IndexModel(SearchStore store, NoteSearchStore notes) : PageModel
{
    [BindProperty(SupportsGet = true, Name = "q")]
    public string? Typed { get; set; }

    /// <summary>What the racket is looked for; "job" leads on to a new job for it.</summary>
    [BindProperty(SupportsGet = true, Name = "for")]
    public string? Purpose { get; set; }

    public bool IsForJob => Purpose == "job";

    public SearchQuery Asked { get; private set; } = new(null);

    /// <summary>A tag no longer in use, if that is what was scanned.</summary>
    public SearchStore.TagRow? Retired { get; private set; }

    public IReadOnlyList<SearchRow> Found { get; private set; } = [];

    /// <summary>Looked for only where a list is shown: they lead to records that were not asked for by name.</summary>
    public IReadOnlyList<NoteRow> Notes { get; private set; } = [];

    /// <summary>Tags whose codes begin as typed, for one that is worn off.</summary>
    public IReadOnlyList<SearchStore.TagRow> Tags { get; private set; } = [];

    public bool MayBeMore => Found.Count >= SearchStore.Most;

    /// <summary>Eleven characters that are one typo away from a tag's code.</summary>
    public bool LooksLikeTag => Asked.Tag.Outcome == TagCodeOutcome.WrongCheckCharacter;

    public IActionResult OnGet()
    {
        HttpContext.Items[SecurityHeaders.Camera] = true;
        Asked = new SearchQuery(Typed);
        if (Asked.Typed.Length == 0)
            return Page();
        if (Asked.Tag.Code is { } code && store.ByTag(code) is { } tag)
            return OfTag(tag);
        Found = Look();
        if (OnlyAnswer() is { } address)
            return Redirect(address);
        Tags = Asked.TagBegin is { } begin ? store.ByTagBegin(begin) : [];
        Notes = Asked.NoteWords is { } words ? notes.ByWords(words) : [];
        return Page();
    }

    /// <summary>Where a racket that was found leads.</summary>
    public string To(long racket) => IsForJob ? $"/shop/jobs/new?racket={racket}" : $"/shop/rackets/{racket}";

    private IActionResult OfTag(SearchStore.TagRow tag)
    {
        if (tag.State == SearchStore.TagState.Live)
            return Redirect(To(tag.RacketId!.Value));
        if (tag.State == SearchStore.TagState.Unassigned)
            return Redirect($"/shop/tags/link/{tag.Code}");
        Retired = tag;
        return Page();
    }

    private IReadOnlyList<SearchRow> Look()
    {
        var ticket = Asked.Ticket is { } number ? store.ByTicket(number) : null;
        IReadOnlyList<SearchRow> others =
            Asked.PhoneEnd is { } end && store.ByPhone(end) is { Count: > 0 } phones ? phones
            : Asked.Words is { } words && !(Asked.IsNumber && ticket is not null) ? store.ByWords(words)
            : [];
        return ticket is null ? others : [ticket, .. others];
    }

    /// <summary>Where to go when only one thing can be meant: a racket, else a client; null to show them all.</summary>
    private string? OnlyAnswer()
    {
        if (Found.Select(f => f.ClientId).Distinct().ToList() is not [var client])
            return null;
        if (Rackets(f => f.State is not (RacketState.Sold or RacketState.Gone)) is [{ } inHand])
            return To(inHand);
        if (Rackets(_ => true) is [{ } racket])
            return $"/shop/rackets/{racket}";
        // Among a client's rackets one is chosen for the job here, where the purpose is known.
        if (IsForJob && Rackets(_ => true).Count > 0)
            return null;
        return Found.All(f => f.JobId is null) ? $"/shop/clients/{client}" : null;
    }

    private List<long?> Rackets(Func<SearchRow, bool> which) =>
        [.. Found.Where(f => f.RacketId is not null && which(f)).Select(f => f.RacketId).Distinct()];
}
