using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Records.Storage;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.People;

public sealed class InviteModel(Helpers helpers, SecurityLog log) : PageModel
{
    [BindProperty]
    public HelperInput Input { get; set; } = new();

    /// <summary>In the answer that makes it, and never again.</summary>
    public InvitationLink? Link { get; private set; }

    public void OnGet() => Input = new HelperInput { FormKey = FormKey.New() };

    public IActionResult OnPost() => ModelState.IsValid ? this.After(helpers.Invite(User.AtShop(), Input.Name!, Input.Mail, Input.FormKey), Show) : Page();

    private PageResult Show(long invitation)
    {
        Link = helpers.Link(User.AtShop(), invitation, Input.Name!, Input.Mail);
        log.Note(HttpContext, AuditEvent.HelperInvited, User.AccountId(), Input.Name!);
        return Page();
    }
}
