using TagPage.Core.Rackets;
using TagPage.Core.Sports;
using TagPage.Core.Tags;
using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>rackets.csv</summary>
internal static class RacketSheet
{
    public const string File = "rackets.csv";

    public const string NumberColumn = "number";

    private static readonly Column<string> Key = new("racket", CellKinds.Key, "A key of your own, used by specs.csv, places.csv, pieces.csv and jobs.csv.") { Needed = true };
    private static readonly Column<string> Player = new("player", CellKinds.Key, "The key of a player.") { Needed = true };
    private static readonly Column<int?> Number = new(NumberColumn, Kinds.Whole(1, 999), "Racket 1, 2, 3 of its player.") { Needed = true };
    private static readonly Column<RacketState?> State = new("state", Kinds.OneOf<RacketState>(), "Empty means in_turn.");
    private static readonly Column<Sport?> Sport = new("sport", Kinds.OneOf<Sport>(), "What it is played for.") { Needed = true };
    private static readonly Column<string> Frame = new("frame", Kinds.Line(80), "Maker and model.");
    private static readonly Column<string> TapeColour = new("tape_colour", Kinds.Line(20), "How the player tells it from the others.");
    private static readonly Column<decimal?> HeadSize = new("head_size", Kinds.Number(1, 2000, 1), "As printed on the frame.");
    private static readonly Column<string> HeadSizeUnit = new("head_size_unit", Kinds.Word("in2", "cm2"), "Square inches or square centimetres. Empty means in2.");
    private static readonly Column<int?> Mains = new("mains", Kinds.Whole(ImportLimits.LeastPattern, ImportLimits.MostPattern), "Number of main strings.");
    private static readonly Column<int?> Crosses = new("crosses", Kinds.Whole(ImportLimits.LeastPattern, ImportLimits.MostPattern), "Number of cross strings.");
    private static readonly Column<decimal?> Length = new("length_cm", Kinds.Number(SportFacts.MinLengthMm / 10m, SportFacts.MaxLengthMm / 10m, 2), "Overall length in cm.");
    private static readonly Column<string> Grip = new("grip", Kinds.Line(40), "Size and wrap.");
    private static readonly Column<DateOnly?> OwnDate = new("own_date", Kinds.Day, "Your own restring-by date; it overrules the rule.");
    private static readonly Column<string> OwnDateNote = new("own_date_note", Kinds.Line(200), "Why.");
    private static readonly Column<DateOnly?> LostSince = new("lost_since", Kinds.Day, "The day since which it has been lost.");
    private static readonly Column<TagCode?> Tag = new("tag", CellKinds.TagCode, "The code on the tag that it carries.");
    private static readonly Column<IReadOnlyList<TagCode>> RetiredTags = new("retired_tags", CellKinds.TagCodes, "Codes of tags that it no longer carries.");

    public static Sheet Sheet { get; } = new(File, "Each frame, numbered within its player.",
        [Key, Player, Number, State, Sport, Frame, TapeColour, HeadSize, HeadSizeUnit, Mains, Crosses, Length, Grip, OwnDate, OwnDateNote, LostSince, Tag, RetiredTags]);

    public static void Read(SheetRow row, ImportContext context)
    {
        var racket = new RacketRow
        {
            Line = row.Line,
            Player = context.Batch.Players.Find(row, Player, PlayerSheet.File),
            Number = row.Get(Number) ?? 0,
            State = row.Get(State) ?? RacketState.InTurn,
            Sport = row.Get(Sport) ?? default,
            Frame = row.Get(Frame) ?? "",
            TapeColour = row.Get(TapeColour) ?? "",
            HeadSize = row.Get(HeadSize),
            HeadSizeUnit = row.Get(HeadSizeUnit) ?? "in2",
            Mains = row.Get(Mains),
            Crosses = row.Get(Crosses),
            LengthCm = row.Get(Length),
            Grip = row.Get(Grip) ?? "",
            OwnDate = row.Get(OwnDate),
            OwnDateNote = row.Get(OwnDateNote) ?? "",
            LostSince = context.Past(row, LostSince),
            Tags = ReadTags(row, context),
        };
        CheckNumber(row, context, racket);
        if (racket.State is RacketState.Sold or RacketState.Gone && !row.IsEmpty(Tag))
            row.Refuse(Tag, "A racket that is sold or gone has no live tag. Move the code to retired_tags.");
        context.Batch.Rackets.Add(row, Key, racket);
    }

    private static void CheckNumber(SheetRow row, ImportContext context, RacketRow racket)
    {
        if (racket is { Player: { } player, Number: > 0 } && context.LineBefore(row, $"number {racket.Number} of line {player.Line}") is { } line)
            row.Refuse(Number, $"Line {line} already has racket {racket.Number} of this player. Give this one another number.");
    }

    private static List<TagRow> ReadTags(SheetRow row, ImportContext context)
    {
        var tags = new List<TagRow>();
        if (row.Get(Tag) is { } live)
            Add(Tag, live);
        foreach (var retired in row.Get(RetiredTags) ?? [])
            Add(RetiredTags, retired);
        return tags;

        void Add(Column column, TagCode code)
        {
            tags.Add(new TagRow(code, column == Tag, row.Line, column.Name));
            if (context.LineBefore(row, $"tag {code}") is { } line)
                row.Refuse(column, $"The tag {code.Display} is already in line {line}. A tag belongs to one racket.");
        }
    }
}
