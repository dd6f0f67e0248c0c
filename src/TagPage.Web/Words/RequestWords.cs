using TagPage.Records.OwnPages;

namespace TagPage.Web.Words;

/// <summary>A client's request as the owner reads it, after the name.</summary>
public static class RequestWords
{
    public static string Of(ClientRequestStore.Row request) => request.Kind switch
    {
        RequestKind.Link => "asks for a private link by phone.",
        RequestKind.Payer => $"says about who pays: “{request.Words}”",
        RequestKind.OwnClient => $"made a player a client of their own: {request.Words}",
        RequestKind.PassedOn => $"passed a racket on: {request.Words}",
        _ => "asked for their data to be deleted. It happens automatically in 7 days unless it is undone.",
    };
}
