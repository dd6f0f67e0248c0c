using Microsoft.AspNetCore.Authentication;
using TagPage.Web.Http;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Start;

internal static class EventServices
{
    /// <summary>The desks of events: the shop and its helpers by one door.</summary>
    public static void AddEvents(this IServiceCollection services)
    {
        services.AddSingleton<LiveDesks>();
        services.AddAuthentication().AddScheme<AuthenticationSchemeOptions, DeskCookie>(DeskCookie.SchemeName, null);
        services.AddAuthorizationBuilder().AddPolicy(DeskCookie.Policy, p => p.AddAuthenticationSchemes(DeskCookie.SchemeName).RequireAuthenticatedUser().RequireAssertion(desk => !desk.User.OwesSecondStep()));
    }
}
