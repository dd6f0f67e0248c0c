using TagPage.Core.Sports;

namespace TagPage.Web.StringingLists;

/// <summary>Sports as lists in eight languages name them.</summary>
internal static class SportWords
{
    private static readonly Dictionary<string, Sport> Known = new[]
    {
        (Sport.Tennis, new[] { "tennis", "tenis", "テニス", "网球", "網球", "t" }),
        (Sport.Badminton, ["badminton", "bad", "federball", "バドミントン", "羽毛球", "b"]),
        (Sport.Squash, ["squash", "スカッシュ", "壁球", "s"]),
    }.SelectMany(k => k.Item2.Select(word => (Word: HeadingWords.Plain(word), Sport: k.Item1))).ToDictionary(k => k.Word, k => k.Sport);

    public static Sport? Read(string text) => Known.TryGetValue(HeadingWords.Plain(text), out var sport) ? sport : null;
}
