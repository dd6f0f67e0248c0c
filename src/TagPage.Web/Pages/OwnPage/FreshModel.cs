using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.OwnPages;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>A page for what could hurt: it opens with a code that was just typed, and its press is judged once more where it is written.</summary>
public abstract class FreshModel(ClientOnFileStore clients, OwnPageCodeStore codes) : OwnPageModel(clients)
{
    /// <summary>The page's own path.</summary>
    protected abstract string Here { get; }

    /// <summary>The code ran out while the form was filled in.</summary>
    public bool NeedsCode { get; private set; }

    public string CodeLink => Link("/my/code", ("next", Here));

    /// <summary>Null where the code is still good; else the way to a new one.</summary>
    protected IActionResult? AskForCode() => codes.IsFresh(User.OwnPageSession()) ? null : Redirect(CodeLink);

    /// <summary>What was typed stays; the code can be fetched beside it.</summary>
    protected PageResult SayCodeIsOver()
    {
        NeedsCode = true;
        ModelState.AddModelError("", Say.Code.RanOut);
        return Page();
    }
}
