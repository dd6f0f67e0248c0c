using System.Text.RegularExpressions;

namespace TagPage.Bench.PageSpeed;

/// <summary>Signs in to the started program as its owner.</summary>
public static partial class Owner
{
    public const string Name = "bench", Password = "four-quiet-herons";

    /// <returns>What the browser would send as its cookies from then on.</returns>
    public static async Task<string> SignIn(int port)
    {
        using var client = new HttpClient(new HttpClientHandler { AllowAutoRedirect = false }) { BaseAddress = new Uri($"http://127.0.0.1:{port}") };
        var form = await client.GetStringAsync(new Uri("/account/sign-in", UriKind.Relative));
        using var fields = new FormUrlEncodedContent(new Dictionary<string, string>
        {
            ["Input.Name"] = Name,
            ["Input.Password"] = Password,
            ["__RequestVerificationToken"] = FormToken().Match(form).Groups[1].Value,
        });
        using var answer = await client.PostAsync(new Uri("/account/sign-in", UriKind.Relative), fields);
        return string.Join("; ", answer.Headers.GetValues("Set-Cookie").Select(c => c.Split(';')[0]));
    }

    [GeneratedRegex("__RequestVerificationToken\" type=\"hidden\" value=\"([^\"]+)\"")]
    private static partial Regex FormToken();
}
