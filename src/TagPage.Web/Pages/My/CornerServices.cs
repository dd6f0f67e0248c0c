using Microsoft.AspNetCore.Authentication;
using TagPage.Web.Pages.My.Taking;

namespace TagPage.Web.Pages.My;

internal static class CornerServices
{
    /// <summary>The client's corner: a sign-in of its own beside the shop's, which stays the default.</summary>
    public static void AddCorner(this IServiceCollection services)
    {
        services.AddSingleton<CornerTexts>();
        services.AddSingleton<CornerNotices>();
        services.AddSingleton<AskLimits>();
        services.AddSingleton<CornerAsks>();
        services.AddHostedService(provider => provider.GetRequiredService<CornerAsks>());
        services.AddSingleton<ForgetWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<ForgetWorker>());
        services.AddAuthentication().AddScheme<AuthenticationSchemeOptions, CornerCookie>(CornerCookie.SchemeName, null);
        services.AddAuthorizationBuilder().AddPolicy(CornerCookie.Policy, p => p.AddAuthenticationSchemes(CornerCookie.SchemeName).RequireClaim(WhichClient.ClientClaim));
    }
}
