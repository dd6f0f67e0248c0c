using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A racket was sold or given away: its tag retires, its history stays here, and the new owner begins anew at the shop.</summary>
public sealed class PassOnModel(ClientOnFileStore clients, OwnPageCodeStore codes, OwnPageRacketStore rackets, PassOnStore store)
    : OwnRecordPage<OwnPageRacket>(clients)
{
    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public IActionResult OnGet() => AskForCode(codes) ?? Page();

    public IActionResult OnPost() => After(store.PassOn(Myself, Id), _ => GoOn("/my", Say.Details.PassDone));
}
