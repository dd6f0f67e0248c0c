using Microsoft.AspNetCore.Authentication;
using TagPage.Records.Jobs;
using TagPage.Records.LostAndFound;
using TagPage.Records.OwnPages;
using TagPage.Records.Privacy;
using TagPage.Records.Reminders;
using TagPage.Web.Http.Limits;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Mail;

namespace TagPage.Web.Start;

internal static class OwnPageServices
{
    /// <summary>The client's own page: a sign-in of its own beside the shop's, which stays the default.</summary>
    public static void AddOwnPage(this IServiceCollection services)
    {
        services.AddSingleton<OwnPageMails>();
        services.AddSingleton<JobMails>();
        services.AddSingleton<IOwnPageMails>(s => s.GetRequiredService<OwnPageMails>());
        services.AddSingleton<IJobMails>(s => s.GetRequiredService<JobMails>());
        services.AddSingleton<IReminderMails>(s => s.GetRequiredService<ReminderMails>());
        services.AddSingleton<IFinderMails, FinderMails>();
        services.AddSingleton<LinkRequestLimits>();
        services.AddSingleton<LinkRequestWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<LinkRequestWorker>());
        services.AddSingleton<ForgetWorker>();
        services.AddHostedService(provider => provider.GetRequiredService<ForgetWorker>());
        services.AddAuthentication().AddScheme<AuthenticationSchemeOptions, OwnPageCookie>(OwnPageCookie.SchemeName, null);
        services.AddAuthorizationBuilder().AddPolicy(OwnPageCookie.Policy, p => p.AddAuthenticationSchemes(OwnPageCookie.SchemeName).RequireClaim(WhichClient.ClientClaim));
    }
}
