using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Loans;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Loans;

/// <summary>A racket of the shop’s own was given back.</summary>
public sealed class BackModel(LoanStore loans, ShopClock clock) : RecordPage<LoanRow>
{
    public sealed record BackInput
    {
        [Required(ErrorMessage = "Enter the day it came back.")]
        public DateOnly? BackOn { get; init; }
    }

    [BindProperty]
    public BackInput Input { get; set; } = new();

    protected override LoanRow? Find(long id) => loans.Get(User.AtShop(), id);

    public void OnGet() => Input = new BackInput { BackOn = clock.Today };

    public IActionResult OnPost() => !ModelState.IsValid ? Page() : this.After(loans.TakeBack(User.AtShop(), Id, Input.BackOn!.Value), _ =>
    {
        this.CanBeUndone($"/shop/loans?handler=Reopen&loan={Id}");
        return this.GoOn("/shop/loans", $"{Saved.Racket} is back from {Saved.Client}.");
    });
}
