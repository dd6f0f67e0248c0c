using System.ComponentModel.DataAnnotations;
using System.Net;
using System.Reflection;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>Every number that any page binds, found among its inputs, is sent what it cannot hold.</summary>
[Long]
public sealed class HostileNumberTests(House house) : IClassFixture<House>
{
    /// <summary>No field of the shop can hold one of these.</summary>
    private static readonly string[] Impossible = ["2147483648", "9223372036854775808", "1e400", "NaN", "twelve"];

    private static readonly string[] Odd = ["-1", "", "-0.4", "999999999"];

    /// <summary>The form of each page as a browser would send it.</summary>
    private readonly Dictionary<string, List<KeyValuePair<string, string>>> _forms = [];

    /// <summary>Sent all at once first: a field marked as wrong then needs no answer of its own.</summary>
    [Fact]
    public async Task Number_that_no_field_can_hold_is_refused_on_every_page_and_nothing_changes()
    {
        var before = house.Shop.Database.Dump();
        var (tried, wrong) = (0, new List<string>());

        foreach (var page in house.Pages.Where(p => p.TakesForms))
            foreach (var value in Impossible)
            {
                var fields = page.Fields("Post").Where(f => f.IsTyped && f.Name != "id").Select(f => f.Name).ToList();
                var together = fields.Count > 1 ? await Send(page, fields, value) : null;
                foreach (var field in fields.Where(f => together?.Document.QuerySelector($"[name='{f}'][aria-invalid=true]") is null))
                    if (Fault(await Send(page, [field], value), field) is { } fault)
                        wrong.Add($"{page.Door.Route}, {field}, {value}: {fault}");
                tried += fields.Count;
            }

        Assert.True(tried > 300, $"{tried} tried");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Equal(before, house.Shop.Database.Dump());
    }

    private string? Fault(WebPage answer, string field) =>
        (int)answer.Status >= 500 ? $"{answer.Status} {house.Broke}"
        : answer.Status == HttpStatusCode.Found ? $"taken, on to {answer.Location}"
        : answer.Document.QuerySelector($"[name='{field}']:not([type=hidden])") is not null && answer.Errors.Count == 0 ? "no sentence"
        : null;

    [Fact]
    public async Task Odd_number_breaks_no_page()
    {
        var broken = new List<string>();

        foreach (var page in house.Pages.Where(p => p.TakesForms))
            foreach (var (field, value) in Pairs(page, "Post", Odd).Concat(Pairs(page, "Post", Impossible).Where(p => !p.Field.IsTyped)))
                if (await SendUnread(page, field.Name, value) is var status && (int)status >= 500)
                    broken.Add($"{page.Door.Route}, {field.Name}, {value}: {status} {house.Broke}");

        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }

    [Fact]
    public async Task Odd_number_in_an_address_breaks_no_page()
    {
        var broken = new List<string>();

        foreach (var page in house.Pages.Where(p => p.Looks))
            foreach (var (field, value) in Pairs(page, "Get", [.. Impossible, .. Odd]))
                if (await house.For(page).Get(page.Asked($"{field.Name}={value}")) is var answer && (int)answer.StatusCode >= 500)
                    broken.Add($"{page.Asked($"{field.Name}={value}")}: {answer.StatusCode} {house.Broke}");

        Assert.True(broken.Count == 0, string.Join('\n', broken));
    }

    /// <summary>Limits written as whole numbers round what they are given: 21.4 would pass for 21, and 2147483648 overflows.</summary>
    [Fact]
    public void Limits_of_a_decimal_are_decimals() => Assert.Empty(typeof(Program).Assembly.GetTypes()
        .SelectMany(t => t.GetProperties(BindingFlags.Public | BindingFlags.NonPublic | BindingFlags.Instance | BindingFlags.DeclaredOnly))
        .Where(p => (Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType) == typeof(decimal))
        .Where(p => p.GetCustomAttributes<RangeAttribute>().Any(r => r.OperandType == typeof(int)))
        .Select(p => $"{p.DeclaringType!.Name}.{p.Name}"));

    private static IEnumerable<(FormField Field, string Value)> Pairs(HousePage page, string verb, string[] values) =>
        from field in page.Fields(verb) where field.IsNumber && field.Name != "id" from value in values select (field, value);

    private async Task<WebPage> Send(HousePage page, List<string> names, string value) =>
        await house.For(page).Follow(await WebPage.Of(await Post(page, names, value), page.Address));

    /// <summary>A line that is not ticked is not read; which ones are follows from what other tests have sent to the house.</summary>
    private static KeyValuePair<string, string> Ticked(KeyValuePair<string, string> pair) =>
        pair.Key.EndsWith(".Ticked", StringComparison.Ordinal) ? KeyValuePair.Create(pair.Key, "true") : pair;

    /// <summary>How it was answered in the end; nobody looks at the page.</summary>
    private async Task<HttpStatusCode> SendUnread(HousePage page, string name, string value)
    {
        using var answer = await Post(page, [name], value);
        if (answer.StatusCode != HttpStatusCode.SeeOther)
            return answer.StatusCode;
        using var shown = await house.For(page).Get(answer.Headers.Location!.ToString());
        return shown.StatusCode;
    }

    private async Task<HttpResponseMessage> Post(HousePage page, List<string> names, string value)
    {
        var visitor = house.For(page);
        if (!_forms.TryGetValue(page.Address, out var pairs))
            _forms[page.Address] = pairs = Form(await visitor.Open(page.Address), page) is { } form ? [.. FormValues.Of(form).Pairs.Select(Ticked)] : [];
        using var content = new FormUrlEncodedContent([
            .. pairs.Where(p => !names.Contains(p.Key) && p.Key != "__RequestVerificationToken"),
            .. names.Select(n => KeyValuePair.Create(n, value)), new("__RequestVerificationToken", await house.Token(visitor))]);
        return await visitor.Client.PostAsync(new Uri(page.Address, UriKind.Relative), content, TestContext.Current.CancellationToken);
    }

    private static IHtmlFormElement? Form(WebPage opened, HousePage page) => opened.Document.QuerySelectorAll<IHtmlFormElement>("main form[method=post]")
        .Where(f => f.GetAttribute("action") is null or "" || string.Equals(f.GetAttribute("action"), page.Address, StringComparison.OrdinalIgnoreCase))
        .MaxBy(f => f.Elements.Length);
}
