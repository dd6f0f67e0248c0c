using Microsoft.AspNetCore.Identity;
using Microsoft.AspNetCore.Mvc.Filters;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Accounts;

namespace TagPage.Web.Http.SignIn;

/// <summary>A page about the account of whoever is signed in. It is fetched before every handler; without it the answer is 404.</summary>
/// <param name="users">Identity’s accounts.</param>
public abstract class AccountPage(UserManager<Account> users) : PageModel
{
    protected UserManager<Account> Users { get; } = users;

    protected Account Mine { get; private set; } = new();

    /// <summary>Hidden beside a password, so that the browser knows whose it is.</summary>
    public string Name => Mine.Name;

    // Else its name makes it a handler itself, for requests with the verb PAGE.
    [NonHandler]
    public override async Task OnPageHandlerExecutionAsync(PageHandlerExecutingContext context, PageHandlerExecutionDelegate next)
    {
        if (await Users.FindByIdAsync(User.AccountId()) is not { } account)
        {
            context.Result = NotFound();
            return;
        }
        Mine = account;
        await next();
    }
}
