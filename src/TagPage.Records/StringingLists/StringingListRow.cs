namespace TagPage.Records.StringingLists;

/// <summary>Coming and leaving are worked on in the background; a list that is held could not leave any further.</summary>
public enum StringingListState { Coming, In, Leaving, Held, Back }

/// <summary>A list of stringings that was brought in, and how far it is.</summary>
public sealed record StringingListRow
{
    public long Id { get; init; }
    public string Name { get; init; } = "";
    public StringingListState State { get; init; }

    /// <summary>To be written, of those that are still to be.</summary>
    public int Lines { get; init; }
    public int Waiting { get; init; }

    /// <summary>Jobs that it brought and that are there.</summary>
    public int Jobs { get; init; }

    /// <summary>Came in with a doubt that stands in the job's note.</summary>
    public int Noted { get; init; }

    /// <summary>Were on file before.</summary>
    public int There { get; init; }

    /// <summary>Could not be read.</summary>
    public int Refused { get; init; }

    /// <summary>Whose client or racket was deleted before they were written.</summary>
    public int Missed { get; init; }

    public DateTimeOffset MadeAt { get; init; }

    public int Done => Lines - Waiting;

    public bool IsAtWork => State is StringingListState.Coming or StringingListState.Leaving;
}

/// <summary>A list that was checked and is to come in.</summary>
public sealed record StringingListEntry
{
    public string FormKey { get; init; } = "";
    public string Name { get; init; } = "";
    public IReadOnlyList<StringingLine> Lines { get; init; } = [];
    public int Noted { get; init; }
    public int There { get; init; }
    public int Refused { get; init; }

    /// <summary>By what lists with the same headings are known again.</summary>
    public string Headings { get; init; } = "";

    /// <summary>What was said about its columns, as JSON.</summary>
    public string Settings { get; init; } = "{}";
}
