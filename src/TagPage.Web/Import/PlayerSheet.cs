using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>players.csv</summary>
internal static class PlayerSheet
{
    public const string File = "players.csv";

    private static readonly Column<string> Key = new("player", CellKinds.Key, "A key of your own, used by rackets.csv.") { Needed = true };
    private static readonly Column<string> Client = new("client", CellKinds.Key, "The key of a client.") { Needed = true };
    private static readonly Column<string> Name = new("name", Kinds.Line(80), "Who plays.") { Needed = true };
    private static readonly Column<bool?> Junior = new("junior", Kinds.YesNo, "Whether this is a child.") { Needed = true };
    private static readonly Column<decimal?> TimesAWeek = new("times_a_week", Kinds.Number(0, Play.MaxTimesAWeek, 2), "How often, with all rackets together. Empty means not known.");
    private static readonly Column<decimal?> HoursATime = new("hours_a_time", Kinds.Number(0, Play.MaxHoursATime, 2), "How long each time. Empty means not known.");
    private static readonly Column<Hitting?> Hitting = new("hitting", Kinds.OneOf<Hitting>(), "How hard on strings. Empty means average.");
    private static readonly Column<RestringRule?> Rule = new("rule", Kinds.OneOf<RestringRule>(), "What decides the restring-by date. Empty means the shop’s starting rule.");
    private static readonly Column<int?> EveryWeeks = new("every_weeks", Kinds.Whole(1, ImportLimits.MostWeeks), "For the rule every_weeks.");
    private static readonly Column<string> Note = new("note", Kinds.Note(ImportLimits.Note), "Only the shop sees it.");

    public static Sheet Sheet { get; } = new(File, "Who plays with the rackets, and how much.",
        [Key, Client, Name, Junior, TimesAWeek, HoursATime, Hitting, Rule, EveryWeeks, Note]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var player = new PlayerRow
        {
            Line = row.Line,
            Client = context.Batch.Clients.Find(row, Client, ClientSheet.File),
            Name = row.Get(Name) ?? "",
            Junior = row.Get(Junior) ?? false,
            TimesAWeek = row.Get(TimesAWeek) ?? 0,
            HoursATime = row.Get(HoursATime) ?? 0,
            Hitting = row.Get(Hitting) ?? Core.Players.Hitting.Average,
            Rule = row.Get(Rule),
            EveryWeeks = row.Get(EveryWeeks),
            Note = row.Get(Note) ?? "",
        };
        if (player is { Rule: RestringRule.EveryWeeks, EveryWeeks: null })
            row.Refuse(EveryWeeks, "The rule is every_weeks: enter the number of weeks.");
        context.Batch.Players.Add(row, Key, player);
    }
}
