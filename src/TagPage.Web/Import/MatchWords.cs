using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;
using TagPage.Web.Words;

namespace TagPage.Web.Import;

/// <summary>Clients who may be the same, in words.</summary>
public static class MatchWords
{
    /// <summary>"the same name and phone number".</summary>
    public static string Why(Lookalike alike)
    {
        string?[] same = [alike.SameName ? "name" : null, alike.SamePhone ? "phone number" : null, alike.SameMail ? "email address" : null];
        var words = same.OfType<string>().ToList();
        return "the same " + (words.Count == 1 ? words[0] : string.Join(", ", words.SkipLast(1)) + " and " + words[^1]);
    }

    /// <summary>"Odalys Ferran, +44 20 7946 0958, plays: Pim": a client on file or a line, to be told from others.</summary>
    public static string Who(Lookalike alike) =>
        Who(alike.Name, alike.Phone, alike.Mail) + (alike.Players.Length > 0 ? $"; plays: {alike.Players}" : "");

    public static string Who(ClientRow client) => Who(client.Name, client.Phone, client.Mail);

    /// <summary>One detail of a client that the file has otherwise.</summary>
    /// <param name="Detail">Which.</param>
    /// <param name="Kept">What stays; the file's own where nothing was there to stay.</param>
    /// <param name="InFile">What the file has; empty for nothing.</param>
    /// <param name="IsAdded">Whether the file's comes in.</param>
    public sealed record Difference(string Detail, string Kept, string InFile, bool IsAdded);

    /// <summary>Detail by detail, what would stay and what would come in if they were the same person.</summary>
    public static IEnumerable<Difference> Differences(ClientRow client, Lookalike alike)
    {
        (string Detail, string Kept, string InFile, bool IsFilled)[] all =
        [
            ("Name", alike.Name, client.Name, false),
            ("Phone", Phone(alike.Phone), Phone(client.Phone), true),
            ("Email", alike.Mail ?? "", client.Mail ?? "", true),
            ("Language", Languages.OfOrEnglish(alike.Language).Name, Languages.OfOrEnglish(client.Language).Name, false),
            ("Restring reminders", YesNo(alike.Reminders), YesNo(client.Reminders), false),
            ("Who pays", alike.Payer ?? "", client.Payer?.Name ?? "", false),
            ("Note", alike.Note, client.Note, false),
        ];
        return from d in all
               where d.Kept != d.InFile && (d.InFile.Length > 0 || !d.IsFilled)
               let added = d.IsFilled && d.Kept.Length == 0
               select new Difference(d.Detail, added ? d.InFile : d.Kept, d.InFile, added);
    }

    private static string Phone(string? phone) => phone is null ? "" : Phones.Shown(phone);

    private static string YesNo(bool yes) => yes ? "yes" : "no";

    private static string Who(string name, string? phone, string? mail) =>
        string.Join(", ", new[] { name, phone is null ? null : Phones.Shown(phone), mail }.OfType<string>());

    /// <summary>Where: "on file", "line 3 of clients.csv".</summary>
    public static string Where(Lookalike alike) => alike.Line is { } line ? $"line {line.Line} of {ClientSheet.File}" : "on file";

    /// <summary>One that is not decided, for somebody who cannot be asked.</summary>
    public static Problem Undecided(ImportMatch match) => new(ClientSheet.File, match.Client.Line, "",
        $"{match.Client.Name} may be {string.Join("; or ", match.Lookalikes.Select(l => $"{Who(l)} ({Where(l)}, {Why(l)})"))}.");
}
