using System.Text.Json;
using Dapper;
using TagPage.Records.Storage;

namespace TagPage.Records.Labels;

/// <summary>The one row of how labels are printed: a JSON document, in which what is missing has its starting value.</summary>
public sealed class LabelSettingsStore(Database database)
{
    /// <summary>What was saved, or the starting values.</summary>
    public LabelSettings Get() => database.Read(c => c.QuerySingleOrDefault<Row>(GetSql))?.ToSettings() ?? new LabelSettings();

    private sealed record Row
    {
        public string Settings { get; init; } = "";
        public int Version { get; init; }

        public LabelSettings ToSettings() => JsonSerializer.Deserialize<LabelSettings>(Settings)! with { Version = Version };
    }

    private const string GetSql = "SELECT settings, version FROM label_setting WHERE id = 1";

    public Outcome Save(Who who, LabelSettings settings) => database.WriteAsOwner(who, c =>
        c.Execute(SaveSql, new { Settings = JsonSerializer.Serialize(settings), settings.Version }) == 1 ? new Outcome.Done(1) : Outcome.Stale);

    // The first save makes the row; after that only the version it was read under may be replaced.
    private const string SaveSql = """
        INSERT INTO label_setting (id, settings) VALUES (1, @Settings)
        ON CONFLICT (id) DO UPDATE SET settings = @Settings, version = version + 1
        WHERE version = @Version
        """;
}
