using System.Globalization;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults.UnderFire;

/// <summary>
/// A short fight. The long one by hand: FIRE_KILLS is how often the program is killed; docs/trust.md has the command and what it printed.
/// </summary>
[Long]
public sealed class FireTests
{
    private static readonly int Kills = int.Parse(Environment.GetEnvironmentVariable("FIRE_KILLS") ?? "2", CultureInfo.InvariantCulture);

    private static readonly int Reminders = Kills > 10 ? 300 : 25;

    [Fact]
    public async Task What_anybody_was_told_is_there_once_and_each_email_arrived_once_however_often_the_program_is_killed()
    {
        await using var fire = new Fire(seed: Kills);

        var toll = await fire.Fight(Kills, Reminders, Tell);

        Tell(toll.ToString());
        Assert.True(toll.IsClean, toll + "\n" + string.Join('\n', toll.WrongMails.Take(20)));
    }

    private static void Tell(string line) => TestContext.Current.TestOutputHelper!.WriteLine(line);
}
