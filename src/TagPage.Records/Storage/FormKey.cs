using System.Security.Cryptography;

namespace TagPage.Records.Storage;

/// <summary>Identifies one opened form, so that sending it twice makes one record.</summary>
public static class FormKey
{
    public static string New() => RandomNumberGenerator.GetHexString(FormKeys.KeyLength, lowercase: true);
}
