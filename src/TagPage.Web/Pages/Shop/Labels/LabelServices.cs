namespace TagPage.Web.Pages.Shop.Labels;

internal static class LabelServices
{
    public static void AddLabels(this IServiceCollection services)
    {
        services.AddSingleton<LabelMaker>();
        services.AddSingleton<RollMaker>();
        services.AddHostedService(provider => provider.GetRequiredService<RollMaker>());
    }
}
