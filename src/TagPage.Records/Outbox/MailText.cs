using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using TagPage.Core.Text;

namespace TagPage.Records.Outbox;

/// <summary>
/// An email's words in their pieces. A template is taken apart once; values and links come between its pieces and are
/// never searched, so nothing that was typed can become a placeholder, Markdown or a link. Text by itself counts as typed.
/// </summary>
public sealed class MailText
{
    private static readonly JsonSerializerOptions Json = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingDefault,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
        Converters = { new JsonStringEnumConverter() },
    };

    /// <summary>SQL: the words of the column "body" of the outbox, without its links.</summary>
    public const string WordsSql = "(SELECT group_concat(iif(value ->> 'row' IS NULL, value ->> 'text', '…'), '') FROM (SELECT value FROM json_each(body) ORDER BY key))";

    private MailText(IEnumerable<MailPart> parts) => Parts = [.. parts];

    public IReadOnlyList<MailPart> Parts { get; }

    public static implicit operator MailText(string typed) => Of(PartKind.Typed, typed);

    /// <summary>Of the template's kind: by the owner or the product, and Markdown where the mail is.</summary>
    public static MailText Words(string text) => Of(PartKind.Words, text);

    /// <summary>Each line marked as somebody else's.</summary>
    public static MailText Quoted(string text) => Of(PartKind.Quoted, text);

    public static MailText Link(LinkPurpose purpose, long row) => new([new MailPart(PartKind.Link, Link: purpose, Row: row)]);

    public static MailText Digits(long row) => new([new MailPart(PartKind.Digits, Row: row)]);

    private static MailText Of(PartKind kind, string text) => new([new MailPart(kind, TypedText.Lines(text))]);

    /// <summary>The template with its placeholders filled. A placeholder without a value stays as it is written.</summary>
    public static MailText Fill(string template, params ReadOnlySpan<(string Name, MailText Value)> values)
    {
        var given = new Dictionary<string, MailText>(values.Length);
        foreach (var (name, value) in values)
            given[name] = value;
        return new MailText(Filling.Pieces(template).SelectMany(piece =>
            piece.Name is { } name && given.TryGetValue(name, out var value) ? value.Parts : Words(piece.Words).Parts));
    }

    public static MailText Join(string between, IEnumerable<MailText> texts) =>
        new(texts.SelectMany((text, i) => i == 0 ? text.Parts : [.. Words(between).Parts, .. text.Parts]));

    /// <summary>As the outbox keeps it.</summary>
    public string Stored => JsonSerializer.Serialize(Parts, Json);

    public static MailText Read(string stored) => new(JsonSerializer.Deserialize<List<MailPart>>(stored, Json)!);
}
