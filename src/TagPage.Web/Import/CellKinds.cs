using TagPage.Core.Tags;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.Words;

namespace TagPage.Web.Import;

/// <summary>Kinds of cells that only a stringing shop has.</summary>
internal static class CellKinds
{
    private const int MostCodes = 50;

    private static readonly MailAddressAttribute MailShape = new();

    public static CellKind<string> Key { get; } = Kinds.Line(40);

    public static CellKind<string> Mail { get; } = new("an email address", text =>
        MailShape.IsValid(text) ? new Cell<string>(text, null) : Kinds.Wrong<string>("Enter one email address, like name@example.org."));

    public static CellKind<string> Language { get; } = Kinds.Word([.. Languages.All.Select(l => l.Code)]);

    public static CellKind<TagCode?> TagCode { get; } = new("a tag’s code", Code);

    /// <summary>Several codes with spaces between them.</summary>
    public static CellKind<IReadOnlyList<TagCode>> TagCodes { get; } = new("tags’ codes with spaces between them", text =>
    {
        var cells = text.Split((char[]?)null, MostCodes + 1, StringSplitOptions.RemoveEmptyEntries).Select(Code).ToList();
        return cells.Count > MostCodes ? Kinds.Wrong<IReadOnlyList<TagCode>>($"Write at most {MostCodes} codes.")
            : cells.Find(c => c.Wrong is not null) is { Wrong: { } wrong } ? Kinds.Wrong<IReadOnlyList<TagCode>>(wrong)
            : new Cell<IReadOnlyList<TagCode>>([.. cells.Select(c => c.Value!.Value)], null);
    });

    private static Cell<TagCode?> Code(string text)
    {
        var reading = Core.Tags.TagCode.Read(text);
        return reading.Outcome switch
        {
            TagCodeOutcome.Code => new Cell<TagCode?>(reading.Code, null),
            TagCodeOutcome.WrongCheckCharacter => Kinds.Wrong<TagCode?>($"“{Kinds.Clip(text)}” has a typo in it: the last character does not fit the others. Check the tag again."),
            _ => Kinds.Wrong<TagCode?>($"“{Kinds.Clip(text)}” is not a tag’s code, which has {Core.Tags.TagCode.Length} letters and digits."),
        };
    }
}
