using TagPage.Records.Labels;
using TagPage.Web.Labels;

namespace TagPage.Web.Start;

internal static class LabelServices
{
    public static void AddLabels(this IServiceCollection services)
    {
        services.AddSingleton<LabelMaker>();
        services.AddSingleton<RollMaker>();
        services.AddHostedService(provider => provider.GetRequiredService<RollMaker>());
    }
}
