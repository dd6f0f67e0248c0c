using Microsoft.Extensions.DependencyInjection;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Tests.Cast;

/// <summary>Runa owns the shop and signs in the way everybody does: name, password, button.</summary>
public static class Runa
{
    public const string Name = "Runa";

    public const string Password = "four grey herons walking";

    public static async Task<TestShop> OwnedByRuna(this TestShop shop)
    {
        using var scope = shop.Services.CreateScope();
        await scope.ServiceProvider.GetRequiredService<Owners>().Add(Name, Password);
        return shop;
    }

    public static async Task<WebPage> SignIn(this Visitor visitor, string name = Name, string password = Password, string? returnUrl = null)
    {
        var form = await visitor.Open("/account/sign-in" + (returnUrl is null ? "" : "?returnUrl=" + Uri.EscapeDataString(returnUrl)));
        return await visitor.Send(form, ("Input.Name", name), ("Input.Password", password));
    }

    public static async Task<WebPage> SignInTooOften(this Visitor visitor)
    {
        WebPage? answer = null;
        for (var n = 0; n < 11; n++)
            answer = await visitor.SignIn(password: "four blue herons, guess " + n);
        return answer!;
    }

    public static async Task<bool> IsSignedIn(this Visitor visitor) =>
        (await visitor.Get("/shop/strings")).StatusCode == System.Net.HttpStatusCode.OK;
}
