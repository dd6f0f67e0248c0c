using System.Security.Cryptography;
using TagPage.Web.Data;

namespace TagPage.Web.Forms;

/// <summary>Names one opened form, so that sending it twice makes one record.</summary>
public static class FormKey
{
    public static string New() => RandomNumberGenerator.GetHexString(SubmittedForms.KeyLength, lowercase: true);
}
