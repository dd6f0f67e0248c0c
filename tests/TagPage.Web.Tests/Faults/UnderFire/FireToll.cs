using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>What is on file when the fight is over, held against what was said and what the mail server was given.</summary>
internal sealed record FireToll
{
    public int Kills { get; init; }
    public int Told { get; init; }
    public int PressedAgain { get; init; }
    public int Lost { get; init; }
    public int Doubled { get; init; }

    /// <summary>Finders’ words without the email that goes with them, households of the batch without what became of them.</summary>
    public int Halves { get; init; }
    public int Faults { get; init; }

    /// <summary>Emails that were to go out.</summary>
    public int Mails { get; init; }

    /// <summary>Of these, refused by the server for good and given up.</summary>
    public int Refused { get; init; }

    /// <summary>Of these, with one try or more whose fate only the server knows.</summary>
    public int Open { get; init; }

    /// <summary>Of the open ones, arrived twice.</summary>
    public int OpenTwice { get; init; }

    /// <summary>Of the open ones, not arrived, and shown to the owner as “maybe sent”.</summary>
    public int OpenNever { get; init; }

    /// <summary>Emails that did not arrive as often as they should.</summary>
    public IReadOnlyList<string> WrongMails { get; init; } = [];

    public bool IsClean => (Lost, Doubled, Halves, Faults, WrongMails.Count) == (0, 0, 0, 0, 0) && Told > 0;

    public override string ToString() =>
        $"{Kills} kills, {Told} presses acknowledged, {PressedAgain} pressed again: {Lost} lost, {Doubled} doubled, {Halves} half written, {Faults} faults of the database; "
        + $"{Mails} emails: {Refused} refused for good, {Mails - Refused - Open} arrived once as they should, {Open} open by the protocol ({Open - OpenTwice - OpenNever} once, {OpenTwice} twice, {OpenNever} “maybe sent”), {WrongMails.Count} wrong";

    /// <param name="folder">The program on it has ended.</param>
    /// <param name="crew">Who pressed.</param>
    /// <param name="server">What took the emails.</param>
    /// <param name="open">Numbers of emails that were on their way when the program was killed.</param>
    /// <param name="kills">How often it was.</param>
    public static FireToll Of(DataFolder folder, FireCrew crew, MoodyServer server, IReadOnlySet<long> open, int kills)
    {
        using var database = FireField.Open(folder);
        return database.Read(c => Mailed(c, server, open) with
        {
            Kills = kills,
            Told = crew.Told.Count,
            PressedAgain = crew.PressedAgain,
            Lost = There.Sum(t => Missing(c, crew, t.Kind, t.Sql)),
            Doubled = There.Sum(t => c.Query<string>(t.Sql).GroupBy(key => key).Count(g => g.Count() > 1)),
            Halves = c.ExecuteScalar<int>(HalvesSql),
            Faults = (c.ExecuteScalar<string>("PRAGMA integrity_check(1)") == "ok" ? 0 : 1) + c.Query("PRAGMA foreign_key_check").Count(),
        });
    }

    /// <summary>Where the keys of what was pressed stand.</summary>
    private static readonly (string Kind, string Sql)[] There =
    [
        ("words", "SELECT message FROM found_event WHERE message <> ''"),
        ("hours", "SELECT racket_id || ' ' || played_on FROM logged_hours"),
        ("job", "SELECT note FROM job WHERE note <> ''"),
        ("payment", "SELECT note FROM payment WHERE note <> ''"),
    ];

    private const string HalvesSql = """
        SELECT (SELECT COUNT(*) FROM found_event WHERE notice_id IS NULL)
             + (SELECT COUNT(*) FROM reminder_batch_client b WHERE b.state <> 'Sent' OR NOT EXISTS (SELECT 1 FROM outbox o WHERE o.reminder_id = b.reminder_id))
             + (SELECT COUNT(*) FROM reminder_batch_client) - (SELECT COUNT(*) FROM reminder)
        """;

    private static int Missing(SqliteConnection connection, FireCrew crew, string kind, string sql)
    {
        var there = connection.Query<string>(sql).ToHashSet();
        return crew.Told.Count(t => t.Kind == kind && !there.Contains(t.Key));
    }

    private sealed record Mail
    {
        public long Id { get; init; }
        public string MessageId { get; init; } = "";
        public string State { get; init; } = "";
        public long Client { get; init; }
    }

    private static FireToll Mailed(SqliteConnection connection, MoodyServer server, IReadOnlySet<long> open)
    {
        var fates = server.Fates.Where(f => f.MessageId is not null).ToLookup(f => f.MessageId!.Split('@')[0], f => f.Said);
        var mails = connection.Query<Mail>("SELECT id, message_id, state, to_client_id AS client FROM outbox").ToList();
        var told = mails.Select(m => (Mail: m, Arrived: fates[m.MessageId].Count(said => said is null || said.StartsWith('2')),
            IsOpen: open.Contains(m.Id) || fates[m.MessageId].Any(said => said is null))).ToList();
        return new FireToll
        {
            Mails = mails.Count,
            Refused = told.Count(t => FireField.HasNobody(t.Mail.Client)),
            Open = told.Count(t => t.IsOpen && !FireField.HasNobody(t.Mail.Client)),
            OpenTwice = told.Count(t => t is { IsOpen: true, Arrived: 2 }),
            OpenNever = told.Count(t => t is { IsOpen: true, Arrived: 0, Mail.State: "MaybeSent" } && !FireField.HasNobody(t.Mail.Client)),
            WrongMails = [.. told.Where(t => !IsRight(t.Mail, t.Arrived, t.IsOpen)).Select(t => $"{t.Mail} arrived {t.Arrived} times, {(t.IsOpen ? "open" : "not open")}: {string.Join(", ", fates[t.Mail.MessageId])}")],
        };
    }

    /// <summary>Once; where a try was left open by the server or the kill, once more at most, and never without the owner being told.</summary>
    private static bool IsRight(Mail mail, int arrived, bool isOpen) => FireField.HasNobody(mail.Client) ? arrived == 0 && mail.State is "Failed" or "MaybeSent"
        : isOpen ? arrived <= 2 && (mail.State == "MaybeSent" || (mail.State == "Sent" && arrived >= 1))
        : arrived == 1 && mail.State == "Sent";
}
