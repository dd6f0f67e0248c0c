using Microsoft.AspNetCore.Mvc;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>Before anything that could do harm: a code sent to the email address on file.</summary>
public sealed class CodeModel(ClientOnFileStore clients, OwnPageCodeStore codes, ShopStore shops) : OwnPageModel(clients)
{
    public sealed record Fields
    {
        public string? Digits { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    /// <summary>Where to go on with the right code.</summary>
    [BindProperty(SupportsGet = true, Name = "next")]
    public string? Next { get; set; }

    [BindProperty(SupportsGet = true, Name = "sent")]
    public bool IsSent { get; set; }

    /// <summary>The address so that its owner recognises it and nobody else can read it.</summary>
    public string? Mail => Me.Mail is { } mail ? $"{mail[0]}…{mail[mail.LastIndexOf('@')..]}" : null;

    public ShopDetails Shop => shops.Get();

    public string SendAddress => Link("/my/code", ("next", Onward), ("handler", "Send"));

    private string Onward => IsBelowMy(Next) ? Next! : "/my";

    public void OnGet() => ModelState.Clear();

    public IActionResult OnPost() => After(codes.Try(Myself, Input.Digits ?? ""), _ => Redirect(Link(Onward)));

    public IActionResult OnPostSend()
    {
        IsSent = Mail is not null;
        return After(codes.Send(Myself), _ => Redirect(Link("/my/code", ("next", Onward), ("sent", "true"))));
    }
}
