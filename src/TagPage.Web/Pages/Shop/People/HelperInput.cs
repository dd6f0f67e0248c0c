using System.ComponentModel.DataAnnotations;
using TagPage.Records.Accounts;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.People;

/// <summary>What the forms about a helper post.</summary>
public sealed record HelperInput
{
    public string FormKey { get; init; } = "";

    [Required(ErrorMessage = "Enter the name they sign in with.")]
    [StringLength(AccountLimits.Name, MinimumLength = 2, ErrorMessage = "Use 2 to 60 characters.")]
    [RegularExpression(@"[^\s].*", ErrorMessage = "Write the name on one line.")]
    public string? Name { get; init; }

    [MailAddress]
    public string? Mail { get; init; }

    public HelperEntry ToEntry(string normalizedName) => new() { FormKey = FormKey, Name = Name!, NormalizedName = normalizedName, Mail = Mail };
}
