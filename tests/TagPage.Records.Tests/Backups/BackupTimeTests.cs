using System.Globalization;
using TagPage.Records.Backups;

namespace TagPage.Records.Tests.Backups;

public sealed class BackupTimeTests
{
    [Theory]
    [InlineData(null, "2027-03-14 12:00", true)]
    [InlineData("2027-03-13 03:00", "2027-03-14 02:59", false)]
    [InlineData("2027-03-13 03:00", "2027-03-14 03:00", true)]
    [InlineData("2027-03-14 03:00", "2027-03-14 23:59", false)]
    [InlineData("2027-03-13 22:00", "2027-03-14 02:00", false)]
    [InlineData("2027-03-13 22:00", "2027-03-14 09:00", true)]
    [InlineData("2027-03-12 22:00", "2027-03-14 02:00", true)]
    [InlineData("2027-01-01 03:00", "2027-03-14 00:00", true)]
    public void It_is_due_at_three_or_when_the_program_runs_again_after_that(string? last, string now, bool isDue) =>
        Assert.Equal(isDue, BackupTime.IsDue(last is null ? null : Read(last), Read(now)));

    private static DateTime Read(string text) => DateTime.Parse(text, CultureInfo.InvariantCulture);
}
