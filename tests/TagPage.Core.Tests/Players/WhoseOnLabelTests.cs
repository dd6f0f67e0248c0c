using TagPage.Core.Players;

namespace TagPage.Core.Tests.Players;

public class WhoseOnLabelTests
{
    [Theory]
    [InlineData(false, "Odalys Ferran", "", 1043L, "Odalys Ferran")]
    [InlineData(true, "Pim Ferran", "", 1043L, "Racket 2, no. 1043")]
    [InlineData(true, "Pim Ferran", "", null, "Racket 2")]
    [InlineData(true, "Pim Ferran", "Pimmy", 1043L, "Pimmy")]
    public void Juniors_label_has_no_name_unless_the_guardian_agreed_to_one(bool junior, string name, string agreed, long? ticket, string printed) =>
        Assert.Equal(printed, WhoseOnLabel.Of(junior, name, agreed, 2, ticket));

    [Theory]
    [InlineData(false, "Odalys Ferran", "", "Odalys Ferran")]
    [InlineData(true, "Pim Ferran", "", "")]
    [InlineData(true, "Pim Ferran", "Pimmy", "Pimmy")]
    public void Label_that_says_the_rackets_number_itself_adds_a_name_or_nothing(bool junior, string name, string agreed, string printed) =>
        Assert.Equal(printed, WhoseOnLabel.Name(junior, name, agreed));

    [Theory]
    [InlineData("Pim", "Pim Ferran", false)]
    [InlineData("Pimmy", "Pim Ferran", false)]
    [InlineData("ferran", "Pim Ferran", true)]
    [InlineData("Pim Ferran", "Pim Ferran", true)]
    [InlineData("Ana", "Ana", false)]
    [InlineData("Santos", "Ana Lu-Santos", true)]
    public void Family_name_gives_away_more_than_a_guardian_can_agree_to(string agreed, string name, bool more) =>
        Assert.Equal(more, WhoseOnLabel.GivesAwayMore(agreed, name));
}
