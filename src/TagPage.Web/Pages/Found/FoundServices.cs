using TagPage.Web.Limits;

namespace TagPage.Web.Pages.Found;

internal static class FoundServices
{
    public static void AddFound(this IServiceCollection services)
    {
        services.AddSingleton<FinderMark>();
        services.AddSingleton<FoundDoor>();
        services.AddSingleton<FoundSweeper>();
        services.AddHostedService(provider => provider.GetRequiredService<FoundSweeper>());
    }
}
