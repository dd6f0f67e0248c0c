using TagPage.Records.Jobs;

namespace TagPage.Web.Words;

/// <summary>What a player said about the strings, for the bench.</summary>
public static class FeelWords
{
    /// <summary>"too stiff; wants more spin, comfort".</summary>
    public static string Of(FeelStore.Row felt)
    {
        string[] more = [felt.MoreSpin ? "spin" : "", felt.MoreControl ? "control" : "", felt.MoreComfort ? "comfort" : ""];
        var wishes = string.Join(", ", more.Where(m => m.Length > 0));
        return Of(felt.Bed) + (wishes.Length > 0 ? $"; wants more {wishes}" : "");
    }

    private static string Of(FeelBed? bed) => bed switch
    {
        FeelBed.TooStiff => "too stiff",
        FeelBed.TooLoose => "too loose",
        _ => "right",
    };
}
