namespace TagPage.Records.Import;

/// <summary>What holds for clients who may be somebody else and are not decided one by one.</summary>
public enum OtherMatches
{
    /// <summary>Nothing is saved before it is decided.</summary>
    Ask,

    /// <summary>Those with the same name and a way to reach them are one; the others have to be decided.</summary>
    MergeSure,

    /// <summary>They are the same as the only one they may be, or surely are; others have to be decided.</summary>
    Merge,

    /// <summary>They are other people.</summary>
    KeepApart,
}

/// <summary>What the owner decides about files before they come in.</summary>
public sealed record ImportChoices
{
    /// <summary>In place of a lookalike's key: somebody else.</summary>
    public const string Apart = "apart";

    /// <summary>Jobs strung before this day count as collected and paid; null leaves them as the files say.</summary>
    public DateOnly? SettledBefore { get; init; }

    public OtherMatches Others { get; init; }

    /// <summary>By the line of the client: the key of whom that is, or <see cref="Apart"/>.</summary>
    public IReadOnlyDictionary<int, string> ByLine { get; init; } = new Dictionary<int, string>();

    /// <summary>Who a client is, or <see cref="Apart"/>; null where it is not decided.</summary>
    public string? Of(ImportMatch match) => ByLine.TryGetValue(match.Client.Line, out var chosen) ? chosen : Others switch
    {
        OtherMatches.KeepApart => Apart,
        OtherMatches.Merge when match.Only is { } only => only.Key,
        OtherMatches.Merge or OtherMatches.MergeSure => match.Sure?.Key,
        _ => null,
    };
}
