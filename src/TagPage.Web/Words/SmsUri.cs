namespace TagPage.Web.Words;

/// <summary>The address of a link that opens an SMS with its text (RFC 5724).</summary>
public static class SmsUri
{
    public static string Of(string e164, string text) => $"sms:{e164}?body={Uri.EscapeDataString(text)}";
}
