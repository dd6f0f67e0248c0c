using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A page for what could do harm: it opens with a code just typed, and its press is checked again when it is saved.</summary>
public abstract class FreshModel(ClientOnFileStore clients, OwnPageCodeStore codes) : OwnPageModel(clients)
{
    /// <summary>The page's own path.</summary>
    protected abstract string Here { get; }

    /// <summary>The code expired while the form was being filled in.</summary>
    public bool NeedsCode { get; private set; }

    public string CodeLink => Link("/my/code", ("next", Here));

    /// <summary>Null if the code is still valid; otherwise the way to a new one.</summary>
    protected IActionResult? AskForCode() => codes.IsFresh(User.OwnPageSession()) ? null : Redirect(CodeLink);

    /// <summary>What was typed stays; the code can be fetched beside it.</summary>
    protected PageResult SayCodeIsOver()
    {
        NeedsCode = true;
        ModelState.AddModelError("", Say.Code.RanOut);
        return Page();
    }
}
