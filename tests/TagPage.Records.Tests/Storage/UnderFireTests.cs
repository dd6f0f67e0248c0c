using TagPage.UnderFire;

namespace TagPage.Records.Tests.Storage;

/// <summary>A short run of what tests/TagPage.UnderFire does by hand.</summary>
public sealed class UnderFireTests
{
    [Fact]
    public void Nothing_that_was_said_to_be_written_is_lost_doubled_or_halved_by_a_program_that_is_killed()
    {
        var result = new Battle(new Random(7)).Fight(kills: 3, TextWriter.Null);

        Assert.True(result.IsClean, result.ToString());
    }
}
