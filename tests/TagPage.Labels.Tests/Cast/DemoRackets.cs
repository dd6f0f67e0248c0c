using System.Globalization;
using TagPage.Core.Tags;
using TagPage.Labels.Content;

namespace TagPage.Labels.Tests.Cast;

/// <summary>The demo's rackets as their labels know them, read from its files: newest strings, tag, whose it is.</summary>
internal static class DemoRackets
{
    /// <summary>What one says: its facts, and labels made once for all tests.</summary>
    public sealed record Racket(string Name, DoneFacts Facts, LabelTag Tag)
    {
        public LabelContent Done { get; } = Purposes.Done(Facts, Tag);
        public LabelContent NameFirst { get; } = Purposes.Done(Facts with { NameLeads = true }, Tag);
    }

    public static IReadOnlyList<Racket> All { get; } = [.. Read()];

    private static IEnumerable<Racket> Read()
    {
        var (strings, players) = (Rows("strings").ToDictionary(row => row["string"]), Rows("players").ToDictionary(row => row["player"]));
        var newest = Rows("jobs").Where(row => row["strung_on"].Length > 0).GroupBy(row => row["racket"]).ToDictionary(group => group.Key, group => group.MaxBy(row => row["strung_on"], StringComparer.Ordinal)!);
        foreach (var racket in Rows("rackets").Where(row => newest.ContainsKey(row["racket"])))
        {
            var (job, player) = (newest[racket["racket"]], players[racket["player"]]);
            var strung = DateOnly.Parse(job["strung_on"], CultureInfo.InvariantCulture);
            var facts = new DoneFacts
            {
                Tension = job["mains_tension"] == job["crosses_tension"] ? job["mains_tension"] : $"{job["mains_tension"]} / {job["crosses_tension"]}",
                Unit = job["tension_unit"],
                Mains = Of(strings[job["mains_string"]]),
                Crosses = job["crosses_string"].Length > 0 && job["crosses_string"] != job["mains_string"] ? Of(strings[job["crosses_string"]]) : new StringFact("", ""),
                // The files hold no such date: it is worked out. That of a forecast is as long.
                RestringBy = Day(strung.AddDays(110)),
                Strung = Day(strung),
                Reading = job["reading"],
                Instrument = job["instrument"],
                Whose = player["junior"] == "yes" ? $"Racket {racket["number"]}, no. {job["ticket"]}" : player["name"],
            };
            yield return new Racket(racket["racket"], facts, racket["tag"].Length > 0 ? Samples.Tag with { Code = TagCode.Parse(racket["tag"]) } : Samples.Tag);
        }
    }

    private static StringFact Of(Dictionary<string, string> row) => new(row["name"], row["gauge_mm"]);

    private static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    // Commas and line ends between quotes are part of a field.
    private static IEnumerable<Dictionary<string, string>> Rows(string name)
    {
        var parts = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "seed-demo", name + ".csv")).ReplaceLineEndings("\n").Split('"');
        var lines = string.Concat(parts.Select((part, i) => i % 2 == 0 ? part.Replace(',', '\t') : part.Replace('\n', ' '))).Split('\n', StringSplitOptions.RemoveEmptyEntries);
        var heads = lines[0].Split('\t');
        return lines.Skip(1).Select(line => heads.Zip(line.Split('\t')).ToDictionary(pair => pair.First, pair => pair.Second));
    }
}
