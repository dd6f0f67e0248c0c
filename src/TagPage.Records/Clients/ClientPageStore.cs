using Dapper;
using TagPage.Records.DueDates;
using TagPage.Records.Storage;

namespace TagPage.Records.Clients;

/// <summary>One client with players, rackets and what is open between the client and the shop.</summary>
public sealed class ClientPageStore(Database database)
{
    public sealed record Client
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string Language { get; init; } = "en";
        public bool Reminders { get; init; }
        public FoundChoice FoundChoice { get; init; }
        public bool FoundAlways { get; init; }
        public bool FoundShowsMail { get; init; }
        public DateOnly? FoundChoiceOn { get; init; }
        public RemindBy RemindBy { get; init; }
        public int QuietMonths { get; init; }
        public string SecondName { get; init; } = "";
        public string? SecondPhone { get; init; }
        public string? SecondMail { get; init; }
        public DateTimeOffset? ForgetAt { get; init; }
        public string Note { get; init; } = "";
        public long? PayerId { get; init; }
        public string? PayerName { get; init; }
        public int Unpaid { get; init; }
        public IReadOnlyList<Player> Players { get; init; } = [];
    }

    public sealed record Player
    {
        public long Id { get; init; }
        public string Name { get; init; } = "";
        public bool Junior { get; init; }
        public decimal TimesAWeek { get; init; }
        public decimal HoursATime { get; init; }
        public string Note { get; init; } = "";
        public IReadOnlyList<Racket> Rackets { get; init; } = [];
    }

    public sealed record Racket : ForecastRow
    {
        public int Number { get; init; }
        public string TapeColour { get; init; } = "";
        public string Frame { get; init; } = "";
        public DateOnly? LostSince { get; init; }
        public int? Ticket { get; init; }
    }

    public Client? Get(long id) => database.Read(c =>
    {
        if (c.QuerySingleOrDefault<Client>(ClientSql, new { id }) is not { } client)
            return null;
        var rackets = Histories.Into(c, c.Query<Racket>(RacketsSql, new { id })).ToLookup(r => r.PlayerId);
        var players = c.Query<Player>(PlayersSql, new { id });
        return client with { Players = [.. players.Select(p => p with { Rackets = [.. rackets[p.Id]] })] };
    });

    private const string ClientSql = """
        SELECT c.id, c.name, c.phone, c.mail, c.language, c.reminders, c.found_choice, c.found_always, c.found_shows_mail, c.found_choice_on, c.remind_by, c.quiet_months,
               c.second_name, c.second_phone, c.second_mail, c.forget_at, c.note, c.payer_id, y.name AS payer_name,
               (SELECT COUNT(*) FROM player p JOIN racket r ON r.player_id = p.id JOIN job j ON j.racket_id = r.id
                WHERE p.client_id = c.id AND j.paid_on IS NULL AND j.state <> 'Cancelled') AS unpaid
        FROM client c
        LEFT JOIN payer y ON y.id = c.payer_id
        WHERE c.id = @id
        """;

    private const string PlayersSql = """
        SELECT id, name, junior, times_a_week, hours_a_time, note
        FROM player
        WHERE client_id = @id
        ORDER BY name_key, id
        """;

    private const string RacketsSql = $"""
        SELECT {ForecastRow.Columns}, r.number, r.tape_colour, r.frame, r.lost_since,
               (SELECT MIN(j.ticket) FROM job j WHERE j.racket_id = r.id AND j.state IN ('Waiting', 'OnMachine', 'Strung')) AS ticket
        FROM player p
        JOIN racket r ON r.player_id = p.id
        JOIN forecast f ON f.racket_id = r.id
        WHERE p.client_id = @id
        ORDER BY r.state IN ('Sold', 'Gone'), r.number
        """;
}
