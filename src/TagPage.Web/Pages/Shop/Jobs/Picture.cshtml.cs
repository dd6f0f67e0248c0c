using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Condition;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>A photo’s bytes. Opened by itself it is a picture and nothing else, and no browser keeps it.</summary>
public sealed class PictureModel(PhotoStore photos) : PageModel
{
    public IActionResult OnGet(long id, bool small)
    {
        var who = User.AtShop();
        if ((small ? photos.Small(who, id) : photos.Picture(who, id)) is not { } bytes)
            return NotFound();
        HttpContext.Items[SecurityHeaders.Picture] = true;
        return File(bytes, "image/jpeg");
    }
}
