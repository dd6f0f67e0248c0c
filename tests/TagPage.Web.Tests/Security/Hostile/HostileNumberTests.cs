using System.ComponentModel.DataAnnotations;
using System.Net;
using System.Reflection;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Security.Hostile;

/// <summary>Every number that any page binds, found among its inputs, is sent what it cannot hold.</summary>
public sealed class HostileNumberTests(House house) : IClassFixture<House>
{
    /// <summary>No field of the shop can hold one of these.</summary>
    private static readonly string[] Impossible = ["2147483648", "9223372036854775808", "1e400", "NaN", "twelve"];

    private static readonly string[] Odd = ["-1", "", "-0.4", "999999999"];

    /// <summary>The form of each page as a browser would send it.</summary>
    private readonly Dictionary<string, List<KeyValuePair<string, string>>> _forms = [];

    [Fact]
    public async Task Number_that_no_field_can_hold_is_refused_on_every_page_and_nothing_changes()
    {
        var before = house.Shop.Database.Dump();
        var (tried, wrong) = (0, new List<string>());

        foreach (var page in house.Pages.Where(p => p.TakesForms))
            foreach (var (field, value) in Pairs(page, "Post", Impossible).Where(p => p.Field.IsTyped))
            {
                var answer = await Send(page, field.Name, value);
                if ((int)answer.Status >= 500)
                    wrong.Add($"{page.Door.Route}, {field.Name}, {value}: {answer.Status} {house.Broke}");
                else if (answer.Status == HttpStatusCode.Found)
                    wrong.Add($"{page.Door.Route}, {field.Name}, {value}: taken, on to {answer.Location}");
                else if (answer.Document.QuerySelector($"[name='{field.Name}']:not([type=hidden])") is not null && answer.Errors.Count == 0)
                    wrong.Add($"{page.Door.Route}, {field.Name}, {value}: no sentence");
                tried++;
            }

        Assert.True(tried > 300, $"{tried} tried");
        Assert.True(wrong.Count == 0, string.Join('\n', wrong));
        Assert.Equal(before, house.Shop.Database.Dump());
    }

    [Fact]
    public async Task Odd_number_breaks_no_page()
    {
        var broken = new List<string>();

        foreach (var page in house.Pages.Where(p => p.TakesForms))
            foreach (var (field, value) in Pairs(page, "Post", Odd).Concat(Pairs(page, "Post", Impossible).Where(p => !p.Field.IsTyped)))
                if (await Send(page, field.Name, value) is var answer && (int)answer.Status >= 500)
                    broken.Add($"{page.Door.Route}, {field.Name}, {value}: {answer.Status} {house.Broke}");

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

    private async Task<WebPage> Send(HousePage page, string name, string value)
    {
        var visitor = house.For(page);
        if (!_forms.TryGetValue(page.Address, out var pairs))
            _forms[page.Address] = pairs = Form(await visitor.Open(page.Address), page) is { } form ? [.. FormValues.Of(form).Pairs] : [];
        List<KeyValuePair<string, string>> sent = [.. pairs.Where(p => p.Key != name && p.Key != "__RequestVerificationToken"), new(name, value), new("__RequestVerificationToken", await house.Token(visitor))];
        using var content = new FormUrlEncodedContent(sent);
        return await visitor.Follow(await WebPage.Of(await visitor.Client.PostAsync(new Uri(page.Address, UriKind.Relative), content, TestContext.Current.CancellationToken), page.Address));
    }

    private static IHtmlFormElement? Form(WebPage opened, HousePage page) => opened.Document.QuerySelectorAll<IHtmlFormElement>("main form[method=post]")
        .Where(f => f.GetAttribute("action") is null or "" || string.Equals(f.GetAttribute("action"), page.Address, StringComparison.OrdinalIgnoreCase))
        .MaxBy(f => f.Elements.Length);
}
