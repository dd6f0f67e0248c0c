using TagPage.Records.LostAndFound;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Start;

internal static class FoundServices
{
    public static void AddFound(this IServiceCollection services)
    {
        services.AddSingleton<FinderMark>();
        services.AddSingleton<FoundLookup>();
        services.AddSingleton<FoundSweeper>();
        services.AddHostedService(provider => provider.GetRequiredService<FoundSweeper>());
    }
}
