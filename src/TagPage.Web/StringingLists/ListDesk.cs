using System.Text.Json;
using System.Text.Json.Serialization;
using TagPage.Records.Backups;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.Csv;
using TagPage.Web.Import;

namespace TagPage.Web.StringingLists;

/// <param name="Key">Of the upload, and of its form.</param>
/// <param name="Name">As the file was called.</param>
/// <param name="Encoding">As it was read.</param>
/// <param name="Table">Its cells.</param>
/// <param name="Settings">What was said about it so far.</param>
public sealed record SentList(string Key, string Name, string Encoding, ListTable Table, ListSettings Settings);

/// <summary>A list on its way in: kept for an hour with what was said about it, looked through, and handed to the background.</summary>
public sealed class ListDesk(Uploads uploads, KeptAnswers answers, ListPlanner planner, StringingListStore store, BackupStore backups, ShopStore shops, ShopClock clock)
{
    private const string List = "list", Said = "list.json";

    private static readonly JsonSerializerOptions Json = new() { Converters = { new JsonStringEnumConverter() } };

    private sealed record Kept(string Name, ListSettings Settings);

    /// <summary>Keeps a list that can be read; else says why not.</summary>
    public (string? Key, string? Wrong) Keep(string name, byte[] bytes, string? answersOf)
    {
        var text = ListText.Read(bytes);
        var table = text.Text is null ? null : ListTable.Of(text.Text);
        if ((text.Wrong ?? table!.Wrong) is { } wrong)
            return (null, wrong);
        var key = uploads.Keep(new Dictionary<string, byte[]> { [List] = bytes });
        answers.HandOn(answersOf, key);
        Keep(key, new Kept(Kinds.Clip(Path.GetFileName(name)), First(table!)));
        return (key, null);
    }

    /// <summary>Null for one that is not there, or no longer.</summary>
    public SentList? Get(string key)
    {
        if (uploads.FolderOf(key) is not { } folder || !File.Exists(Path.Combine(folder, Said)))
            return null;
        var kept = JsonSerializer.Deserialize<Kept>(File.ReadAllBytes(Path.Combine(folder, Said)), Json)!;
        var text = ListText.Read(File.ReadAllBytes(Path.Combine(folder, List)));
        return new SentList(key, kept.Name, text.Encoding, ListTable.Of(text.Text!), kept.Settings);
    }

    public void Say(SentList sent, ListSettings settings) => Keep(sent.Key, new Kept(sent.Name, settings));

    public ListReading Read(SentList sent) => ListReader.Read(sent.Table, sent.Settings, shops.Get(), clock.Today);

    public ListPlan Plan(SentList sent, ImportChoices choices) => planner.Plan(Read(sent), sent.Settings, choices);

    /// <summary>Makes a backup and lets the list come in. Without a backup nothing does, and the fault says why there is none.</summary>
    public (Outcome? Outcome, BackupFault? Fault) Begin(Who who, SentList sent, ListPlan plan)
    {
        if (backups.Make(BackupFile.BeforeImport) is { } fault)
            return (null, fault);
        var outcome = store.Begin(who, new StringingListEntry
        {
            FormKey = sent.Key,
            Name = sent.Name,
            Lines = [.. plan.Lines.Select(line => line.Write).OfType<StringingLine>()],
            Noted = plan.Count(LineState.Doubted),
            There = plan.Count(LineState.There),
            Refused = plan.Count(LineState.Refused),
            Headings = Headings(sent.Table),
            Settings = JsonSerializer.Serialize(sent.Settings.ForNext(), Json),
        });
        if (outcome is Outcome.Done)
            uploads.Remove(sent.Key);
        return (outcome, null);
    }

    /// <summary>What was said about the last list with these headings, else what they seem to mean.</summary>
    private ListSettings First(ListTable table)
    {
        var settings = store.Remembered(Headings(table)) is { } remembered ? JsonSerializer.Deserialize<ListSettings>(remembered, Json)! : new ListSettings { Columns = HeadingWords.Guess(table.Headings) };
        return settings with { SettledBefore = clock.Today.AddDays(-ImportLimits.DaysUntilSettled) };
    }

    private static string Headings(ListTable table) => JsonSerializer.Serialize(table.Headings.Select(heading => table.HasHeadings ? HeadingWords.Plain(heading)[..Math.Min(100, HeadingWords.Plain(heading).Length)] : ""));

    private void Keep(string key, Kept kept) => uploads.Add(key, Said, JsonSerializer.SerializeToUtf8Bytes(kept, Json));
}
