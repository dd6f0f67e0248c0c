using TagPage.Records.Storage;
using TagPage.Web.Start.CommandLine;

namespace TagPage.Web.Tests.Cli;

public sealed class StartFaultTests
{
    [Fact]
    public void New_version_that_cannot_back_up_first_says_so_and_where_the_manual_helps() => Assert.Equal(
        "The backup did not pass its check: a row of player refers to one of client that is not there. Nothing was changed. See “A bad day” in the manual.",
        StartFault.Sentence(new UnsoundBackupException("a row of player refers to one of client that is not there")));
}
