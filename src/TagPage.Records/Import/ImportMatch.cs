namespace TagPage.Records.Import;

/// <summary>A client of the files, and all whom that may be: the most alike first.</summary>
public sealed record ImportMatch(ClientRow Client, IReadOnlyList<Lookalike> Lookalikes)
{
    /// <summary>The only one with the same name and a way to reach them; null where somebody has to look.</summary>
    public Lookalike? Sure => Lookalikes.Where(l => l.IsSure).DistinctBy(l => l.Mark).ToList() is [var only] ? only : null;

    /// <summary>The only one that it may be; null where there are several.</summary>
    public Lookalike? Only => Lookalikes.DistinctBy(l => l.Mark).ToList() is [var only] ? only : null;
}

/// <summary>Somebody with the same phone number, email address or name.</summary>
public sealed record Lookalike
{
    /// <summary>Of a client on file; null for a line further up.</summary>
    public long? ClientId { get; init; }

    /// <summary>The line further up; null for a client on file.</summary>
    public ClientRow? Line { get; init; }

    public string Name { get; init; } = "";
    public string? Phone { get; init; }
    public string? Mail { get; init; }

    public string Language { get; init; } = "";
    public bool Reminders { get; init; }
    public string? Payer { get; init; }
    public string Note { get; init; } = "";

    /// <summary>Of a client on file: who plays.</summary>
    public string Players { get; init; } = "";

    public bool SameName { get; init; }
    public bool SamePhone { get; init; }
    public bool SameMail { get; init; }

    public bool IsSure => SameName && (SamePhone || SameMail);

    /// <summary>A line that means a client on file is that client.</summary>
    internal string Mark => ClientId is { } id ? ImportRow.MarkOf(id) : Line!.Mark;

    /// <summary>How a choice names it.</summary>
    public string Key => ClientId is { } id ? $"client{id}" : $"line{Line!.Line}";
}
