using Microsoft.Extensions.DependencyInjection.Extensions;

namespace TagPage.Web.Mail;

internal static class MailServices
{
    public static void AddMail(this IServiceCollection services, IConfiguration configuration)
    {
        var settings = configuration.GetSection("TagPage:Smtp").Get<MailSettings>() ?? new MailSettings();
        services.AddSingleton(settings);
        services.AddSingleton<LinkKeys>();
        services.AddSingleton<MailFiles>();
        services.AddSingleton<OutboxStore>();
        services.AddSingleton<MailFateStore>();
        services.AddSingleton<MailFates>();
        services.AddSingleton<MailWriter>();
        if (settings.HasServer)
            services.TryAddSingleton<IMailCarrier, SmtpCarrier>();
        else
            services.TryAddSingleton<IMailCarrier, FolderCarrier>();
        services.AddSingleton<MailRoom>();
        services.AddHostedService(provider => provider.GetRequiredService<MailRoom>());
    }
}
