namespace TagPage.Web.Demo;

/// <summary>Every column that holds a day, by table. The demo moves them all, so that it is always of today.</summary>
public static class DemoDates
{
    public static IReadOnlyDictionary<string, IReadOnlyList<string>> Columns { get; } = new Dictionary<string, IReadOnlyList<string>>
    {
        ["racket"] = ["own_date", "lost_since"],
        ["spec"] = ["measured_on"],
        ["job"] = ["received_on", "promised_for", "strung_on", "collected_on", "paid_on", "ended_on"],
        ["reading"] = ["taken_on"],
        ["demo"] = ["day"],
    };
}
