using System.Globalization;
using TagPage.Core.Sports;
using TagPage.Core.Units;
using TagPage.Records.Import;
using TagPage.Records.Shop;
using TagPage.Records.StringingLists;

namespace TagPage.Web.StringingLists;

/// <summary>Which stringings are on file: two are the same with the same racket, day, strings and tensions.</summary>
internal sealed class ListStringings(ListOnFileStore.Found found, ListStrings strings, ListSettings settings, ShopDetails shop)
{
    private readonly HashSet<string> _onFile = [.. found.Stringings.Select(Key)];

    public IEnumerable<string> OnFile => _onFile;

    /// <summary>What is written down: where the list does not say it, what was said to stand in its place; null where nothing was.</summary>
    public TensionReading? Tension(ReadLine read)
    {
        if (read.Tension is { } known)
            return known;
        var unit = settings.Unit ?? shop.TensionUnit;
        return settings.TensionUnknown is { } value && TensionCheck.Of(read.Sport, new Tension(value, unit)) != TensionVerdict.Impossible ? new TensionReading(value, value, unit) : null;
    }

    public bool Has(ReadLine read, long racket) =>
        Tension(read) is { } tension && strings.Of(read.Mains) is { } mains && strings.Of(read.Crosses) is { } crosses
        && _onFile.Contains(Key($"{racket}", read.Day, (mains.Name, mains.GaugeMm), (crosses.Name, crosses.GaugeMm), (tension.Mains, tension.Crosses, tension.Unit!.Value)));

    public static string Key(StringingLine line) => Key(line.RacketId is { } id ? $"{id}" : line.RacketKey, line.StrungOn, (line.Mains.Name, line.Mains.GaugeMm), (line.Crosses.Name, line.Crosses.GaugeMm), (line.MainsTension, line.CrossesTension, line.TensionUnit));

    private static string Key(ListOnFileStore.Stringing job) => Key($"{job.RacketId}", job.StrungOn, (job.MainsName, job.MainsGaugeMm), (job.CrossesName, job.CrossesGaugeMm), (job.MainsTension, job.CrossesTension, job.TensionUnit));

    private static string Key(string racket, DateOnly day, (string Name, decimal GaugeMm) mains, (string Name, decimal GaugeMm) crosses, (decimal Mains, decimal Crosses, TensionUnit Unit) tension) =>
        string.Create(CultureInfo.InvariantCulture, $"{racket}|{day:O}|{NameKey.Of(mains.Name)}|{mains.GaugeMm:0.###}|{NameKey.Of(crosses.Name)}|{crosses.GaugeMm:0.###}|{tension.Mains:0.##}|{tension.Crosses:0.##}|{tension.Unit}");
}
