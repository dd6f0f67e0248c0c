using System.ComponentModel.DataAnnotations;
using System.Text.RegularExpressions;

namespace TagPage.Web.Http.Forms;

/// <summary>Something before an @ and a host with a dot after it, without spaces. Only an email can tell whether it is right. Empty passes.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed partial class MailAddressAttribute : ValidationAttribute
{
    /// <summary>Longest address there is (RFC 5321, 4.5.3.1.3, without the angle brackets).</summary>
    private const int Longest = 254;

    public MailAddressAttribute() : base("Enter an email address like name@example.org.")
    {
    }

    public override bool IsValid(object? value) => value is not string { Length: > 0 } typed || Fits(typed);

    public static bool Fits(string typed) => typed.Length <= Longest && Shape().IsMatch(typed);

    [GeneratedRegex(@"^[^\s@<>,;""]+@[^\s@<>,;""]+\.[^\s@<>,;"".]+\z", RegexOptions.None, 1000)]
    private static partial Regex Shape();
}
