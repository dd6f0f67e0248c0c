using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Visits;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Pages.Shop.Shared;

namespace TagPage.Web.Pages.Shop.Visits;

/// <summary>What waited on the bench is done, and the racket ready to be collected.</summary>
public sealed class DoneModel(VisitStore store, ShopClock clock) : RecordPage<VisitRow>
{
    public sealed record DoneInput
    {
        [Required(ErrorMessage = "Enter the day it was done.")]
        [LikelyYear]
        public DateOnly? DoneOn { get; init; }
    }

    [BindProperty]
    public DoneInput Input { get; set; } = new();

    protected override VisitRow? Find(long id) => store.Get(User.AtShop(), id);

    public void OnGet() => Input = new DoneInput { DoneOn = clock.Today };

    public IActionResult OnPost() => !ModelState.IsValid ? Page() : this.After(store.Done(User.AtShop(), Id, Input.DoneOn!.Value), _ =>
    {
        this.CanBeUndone(UndoLink.Of(JobState.Strung, Id));
        return this.GoOn("/shop", $"Ticket {Saved.Ticket} is done and ready to collect.", "Tell the client it is ready", $"/shop/jobs/ready/{Id}");
    });
}
