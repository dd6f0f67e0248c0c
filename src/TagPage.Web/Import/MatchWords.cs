using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Web.Csv;

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

    private static string Who(string name, string? phone, string? mail) =>
        string.Join(", ", new[] { name, phone is null ? null : Phones.Shown(phone), mail }.OfType<string>());

    /// <summary>Where: "on file", "line 3 of clients.csv".</summary>
    public static string Where(Lookalike alike) => alike.Line is { } line ? $"line {line.Line} of {ClientSheet.File}" : "on file";

    /// <summary>One that is not decided, for somebody who cannot be asked.</summary>
    public static Problem Undecided(ImportMatch match) => new(ClientSheet.File, match.Client.Line, "",
        $"{match.Client.Name} may be {string.Join("; or ", match.Lookalikes.Select(l => $"{Who(l)} ({Where(l)}, {Why(l)})"))}.");
}
