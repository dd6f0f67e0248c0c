using Dapper;
using Microsoft.Data.Sqlite;

namespace TagPage.Records.Import;

/// <summary>Finds clients who may be on file, or twice in the files: by phone number, email address or name.</summary>
internal static class LookalikeStore
{
    /// <summary>As many can be looked through; hundreds who share a number are no sign of anything.</summary>
    private const int MostAlike = 6;

    private sealed record Person
    {
        public long? Id { get; init; }
        public ClientRow? Line { get; init; }
        public string Name { get; init; } = "";
        public string? Phone { get; init; }
        public string? Mail { get; init; }
        public string? SecondPhone { get; init; }
        public string? SecondMail { get; init; }
        public string Language { get; init; } = "";
        public bool Reminders { get; init; }
        public string? Payer { get; init; }
        public string Note { get; init; } = "";
        public string? Players { get; init; }

        public string NameKey => Import.NameKey.Of(Name);

        public IEnumerable<string> Phones => new[] { Phone, SecondPhone }.OfType<string>();

        public IEnumerable<string> Mails => new[] { Mail, SecondMail }.OfType<string>();
    }

    public static IReadOnlyList<ImportMatch> Find(SqliteConnection connection, ImportBatch batch)
    {
        var (byName, byPhone, byMail) = (new Index(), new Index(), new Index());
        if (batch.Clients.Rows.Count > 0)
            foreach (var person in connection.Query<Person>(OnFileSql))
                Add(person);
        var matches = new List<ImportMatch>();
        foreach (var row in batch.Clients.Rows)
        {
            var person = new Person
            {
                Line = row,
                Name = row.Name,
                Phone = row.Phone,
                Mail = row.Mail,
                Language = row.Language,
                Reminders = row.Reminders,
                Payer = row.Payer?.Name,
                Note = row.Note,
            };
            var alike = byName.Of(person.NameKey).Concat(person.Phones.SelectMany(byPhone.Of)).Concat(person.Mails.SelectMany(byMail.Of))
                .Distinct<Person>(ReferenceEqualityComparer.Instance).Select(other => Compare(person, other))
                .OrderByDescending(l => l.IsSure).ThenBy(l => l.ClientId is null).Take(MostAlike).ToList();
            if (alike.Count > 0)
                matches.Add(new ImportMatch(row, alike));
            Add(person);
        }
        return matches;

        void Add(Person person)
        {
            byName.Add(person.NameKey, person);
            foreach (var phone in person.Phones)
                byPhone.Add(phone, person);
            foreach (var mail in person.Mails)
                byMail.Add(mail, person);
        }
    }

    // A second guardian is reached by their own number: whoever is entered under it belongs here.
    private const string OnFileSql = """
        SELECT c.id, c.name, c.phone, c.mail, c.second_phone, c.second_mail, c.language, c.reminders, c.note,
               (SELECT name FROM payer WHERE id = c.payer_id) AS payer,
               (SELECT group_concat(p.name, ', ') FROM player p WHERE p.client_id = c.id) AS players
        FROM client c
        ORDER BY c.id
        """;

    private static Lookalike Compare(Person one, Person other) => new()
    {
        ClientId = other.Id,
        Line = other.Line,
        Name = other.Name,
        Phone = other.Phone,
        Mail = other.Mail,
        Language = other.Language,
        Reminders = other.Reminders,
        Payer = other.Payer,
        Note = other.Note,
        Players = other.Players ?? "",
        SameName = one.NameKey.Length > 0 && one.NameKey == other.NameKey,
        SamePhone = one.Phones.Intersect(other.Phones).Any(),
        SameMail = one.Mails.Intersect(other.Mails, StringComparer.OrdinalIgnoreCase).Any(),
    };

    private sealed class Index
    {
        private readonly Dictionary<string, List<Person>> _people = new(StringComparer.OrdinalIgnoreCase);

        public List<Person> Of(string key) => _people.GetValueOrDefault(key) ?? [];

        public void Add(string key, Person person)
        {
            if (key.Length == 0)
                return;
            if (!_people.TryGetValue(key, out var same))
                _people[key] = same = [];
            if (same.Count < MostAlike)
                same.Add(person);
        }
    }
}
