using TagPage.Core.Tags;

namespace TagPage.Records.Search;

/// <summary>What was typed into the search box, read in every way it could be meant.</summary>
public sealed record SearchQuery
{
    /// <summary>A longer text cannot be a name, number or address.</summary>
    public const int Longest = 300;

    private const int FewestPhoneDigits = 3;
    private const int FewestTagCharacters = 4;

    public SearchQuery(string? typed)
    {
        Typed = typed?.Trim() ?? "";
        if (Typed.Length > Longest)
            return;
        Tag = TagCode.Read(Typed);
        var number = Typed.TrimStart('#', '№');
        var digits = new string([.. number.Where(char.IsAsciiDigit)]);
        IsNumber = digits.Length > 0 && number.All(c => char.IsAsciiDigit(c) || char.IsWhiteSpace(c) || "+-()/.".Contains(c, StringComparison.Ordinal));
        if (IsNumber && long.TryParse(number.Trim(), out var ticket) && ticket > 0)
            Ticket = ticket;
        // Only the number's last digits are asked for: a leading 0 stands for the country code on file.
        if (IsNumber && number.Length == Typed.Length && digits.TrimStart('0').Length >= FewestPhoneDigits)
            PhoneEnd = digits.TrimStart('0');
        TagBegin = ToTagBegin(Typed);
        Words = SearchWords.Of(Typed);
        NoteWords = SearchWords.AsTyped(Typed) is { } typedWords && typedWords != Words ? $"({Words}) OR ({typedWords})" : Words;
    }

    public string Typed { get; }

    public TagCodeReading Tag { get; }

    public bool IsNumber { get; }

    public long? Ticket { get; }

    public string? PhoneEnd { get; }

    /// <summary>From <see cref="SearchWords"/>; null without any word.</summary>
    public string? Words { get; }

    /// <summary>The same for notes, which stand there as typed: a weiß is found by weiß and a weiss by either.</summary>
    public string? NoteWords { get; }

    /// <summary>The first characters of a tag’s code, where the rest cannot be read any more; null for what cannot be one.</summary>
    public string? TagBegin { get; }

    private static string? ToTagBegin(string typed) =>
        TagCode.Begin(typed) is { Length: >= FewestTagCharacters and < TagCode.Length } begin ? begin : null;
}
