using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Labels.Content;
using TagPage.Labels.Layout;
using TagPage.Records.Labels;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Labels;

/// <summary>The shop's logo: sent, previewed in pure black and white, removed.</summary>
[UploadLimit(40 * Logo.MostBytes)]
public sealed class LogoPageModel(LogoStore store, LabelSettingsStore settings) : PageModel
{
    public sealed record LogoInput
    {
        [Required(ErrorMessage = "Enter a number from 1 to 255."), Range(1, 255, ErrorMessage = "Enter a number from 1 to 255.")]
        public int? Threshold { get; init; } = 128;

        public IFormFile? File { get; init; }

        public bool Remove { get; init; }
    }

    [BindProperty]
    public LogoInput Input { get; set; } = new();

    /// <summary>How the saved logo comes out on the usual tape.</summary>
    public LaidLabel? Label => store.Get() is { } logo
        ? Layouter.Lay(new LabelContent([]) { Logo = Logo.ToPicture(logo.Png, logo.Threshold) }, settings.Get().Stock())
        : null;

    public void OnGet() => Input = new LogoInput { Threshold = store.Get()?.Threshold ?? 128 };

    public async Task<IActionResult> OnPost()
    {
        if (!ModelState.IsValid)
            return Page();
        if (Input.Remove)
            return this.After(store.Remove(User.AtShop()), _ => this.GoOn("/shop/labels/logo", "The logo is removed."));
        var (png, fault) = Input.File is { } file ? await Read(file) : (store.Get()?.Png, "Choose a PNG or an SVG.");
        if (png is null)
            return this.Refuse(new FieldFault(nameof(Input.File), fault!));
        if (!Logo.ToPicture(png, Input.Threshold!.Value).Dark.Contains(true))
            return this.Refuse(new FieldFault(nameof(Input.Threshold), "At this threshold nothing of the picture would be printed. Choose a higher one, or send a darker picture."));
        return this.After(store.Save(User.AtShop(), png, Input.Threshold!.Value),
            _ => this.GoOn("/shop/labels/logo", "The logo is saved. This is how it prints."));
    }

    private static async Task<(byte[]? Png, string? Fault)> Read(IFormFile file)
    {
        if (file.Length > Logo.MostBytes)
            return (null, $"The picture has more than {Logo.MostBytes / 1000} KB. Save it smaller.");
        using var stream = new MemoryStream();
        await file.CopyToAsync(stream);
        return Logo.Read(stream.ToArray());
    }
}
