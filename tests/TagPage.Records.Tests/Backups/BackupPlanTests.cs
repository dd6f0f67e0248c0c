using System.Globalization;
using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Backups;

public sealed class BackupPlanTests
{
    private static readonly DateTimeOffset Now = At("2027-03-14 12:00");

    private static DateTimeOffset At(string text) => DateTimeOffset.Parse(text, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal);

    private static IReadOnlyList<string> Kept(BackupPlan plan, params IEnumerable<(string At, string Why)> made)
    {
        var all = made.Select(m => BackupFile.At("/b", At(m.At), m.Why)).ToList();
        return [.. all.Except(plan.Surplus(all, Now)).Select(b => b.MadeAt.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture))];
    }

    private static IEnumerable<(string At, string Why)> Nightly(params string[] at) => at.Select(a => (a, BackupFile.Nightly));

    [Theory]
    [InlineData("one of a day: the last", "2027-03-14 09:00", "2027-03-14 03:00|2027-03-14 09:00")]
    [InlineData("days without any do not count", "2027-03-02 03:00|2027-03-14 03:00", "2027-03-02 03:00|2027-03-14 03:00")]
    [InlineData("the eighth day goes within a week that has a later one", "2027-03-01 03:00|2027-03-02 03:00|2027-03-03 03:00", "2027-03-01 03:00|2027-03-02 03:00|2027-03-03 03:00")]
    [InlineData("one that is dated ahead is left alone and takes no place", "2027-03-13 03:00|2099-01-01 03:00", "2027-03-13 03:00|2099-01-01 03:00")]
    [InlineData("none", "", "")]
    public void Table_of_few(string what, string kept, string made) =>
        Assert.True(Split(kept).SequenceEqual(Kept(BackupPlan.Usual, Nightly(Split(made)))), what);

    private static string[] Split(string list) => list.Split('|', StringSplitOptions.RemoveEmptyEntries);

    [Fact]
    public void Year_and_a_half_of_nights_keeps_seven_days_four_weeks_and_twelve_months()
    {
        var nights = Enumerable.Range(0, 550).Select(n => At("2027-03-14 03:00").AddDays(-n).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)).ToArray();

        // 14 March 2027 is a Sunday, the last day of its week.
        Assert.Equal(
            [
                "2027-03-14 03:00", "2027-03-13 03:00", "2027-03-12 03:00", "2027-03-11 03:00", "2027-03-10 03:00", "2027-03-09 03:00", "2027-03-08 03:00",
                "2027-03-07 03:00", "2027-02-28 03:00", "2027-02-21 03:00",
                "2027-01-31 03:00", "2026-12-31 03:00", "2026-11-30 03:00", "2026-10-31 03:00", "2026-09-30 03:00", "2026-08-31 03:00", "2026-07-31 03:00",
                "2026-06-30 03:00", "2026-05-31 03:00", "2026-04-30 03:00",
            ],
            Kept(BackupPlan.Usual, Nightly(nights)));
    }

    [Fact]
    public void Plan_that_asks_for_next_to_nothing_still_keeps_the_last() =>
        Assert.Equal(["2027-03-01 03:00"], Kept(new BackupPlan(0, 0, 0), Nightly("2027-02-01 03:00", "2027-03-01 03:00")));

    [Fact]
    public void Those_made_before_something_stay_thirty_days_and_three_at_most_of_one_reason()
    {
        var made = new (string, string)[]
        {
            ("2027-02-12 11:59", "before-0002-new"), ("2027-02-12 12:00", "before-0002-new"), ("2027-03-01 08:00", "before-import"),
            ("2027-03-02 08:00", "before-import"), ("2027-03-03 08:00", "before-import"), ("2027-03-03 08:01", "before-import"),
        };

        Assert.Equal(["2027-02-12 12:00", "2027-03-02 08:00", "2027-03-03 08:00", "2027-03-03 08:01"], Kept(BackupPlan.Usual, made));
    }

    [Fact]
    public void Whoever_goes_back_time_and_again_to_find_the_right_one_keeps_what_was_there_at_first()
    {
        var made = Enumerable.Range(0, 12).Select(n => ($"2027-03-14 09:{n:00}", BackupFile.BeforeRestore)).ToList();

        Assert.Equal(made.Select(m => m.Item1), Kept(BackupPlan.Usual, made));
    }

    [Theory]
    [InlineData("20270314-030000-nightly.db", true)]
    [InlineData("20270314-030000-by-hand.sealed", true)]
    [InlineData("20270314-030000.db", false)]
    [InlineData("20271314-030000-nightly.db", false)]
    [InlineData("20270314-030000-nightly.db.1a2b3c4d.new", false)]
    [InlineData("20270314-030000-nightly.txt", false)]
    [InlineData("before-christmas.db", false)]
    public void File_that_is_named_otherwise_is_the_owners_own(string name, bool isBackup) => Assert.Equal(isBackup, BackupFile.Of("/b/" + name) is not null);
}
