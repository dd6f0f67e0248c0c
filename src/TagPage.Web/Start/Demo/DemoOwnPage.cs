using TagPage.Records.Demo;
using TagPage.Records.OwnPages;
using TagPage.Records.Storage;
using TagPage.Web.Mail;

namespace TagPage.Web.Start.Demo;

/// <summary>A client's own page that can be tried: that of the household with most rackets.</summary>
public sealed class DemoOwnPage(DemoStore demo, OwnPageLinkStore links, OwnPageMails texts)
{
    /// <summary>Path of its private link, the newest that works or a new one; null without any client.</summary>
    public string? Path() => demo.LargestHousehold is { } client && Link(client) is { } link ? new Uri(texts.Address(link)).AbsolutePath : null;

    private OwnPageLinkStore.Row? Link(long client) =>
        links.OfClient(client).FirstOrDefault(links.IsLive) ?? (links.Make(Who.Shop, client) is Outcome.Done made ? links.Get(made.Id) : null);
}
