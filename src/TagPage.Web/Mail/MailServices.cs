using Microsoft.Extensions.DependencyInjection.Extensions;
using TagPage.Records.Outbox;

namespace TagPage.Web.Mail;

internal static class MailServices
{
    public static void AddMail(this IServiceCollection services, IConfiguration configuration)
    {
        var settings = configuration.GetSection("TagPage:Smtp").Get<MailSettings>() ?? new MailSettings();
        services.AddSingleton(settings);
        services.AddSingleton<LinkTokens>();
        services.AddSingleton<MailFiles>();
        services.AddSingleton<OutboxStore>();
        services.AddSingleton<DeliveryStore>();
        services.AddSingleton<Deliveries>();
        services.AddSingleton<MailSquares>();
        services.AddSingleton<MailWriter>();
        if (settings.HasServer)
            services.TryAddSingleton<IMailCarrier, SmtpCarrier>();
        else
            services.TryAddSingleton<IMailCarrier, FolderCarrier>();
        services.AddSingleton<MailProbe>();
        services.AddSingleton<MailSender>();
        services.AddHostedService(provider => provider.GetRequiredService<MailSender>());
    }
}
