using TagPage.Records.Reminders;
using TagPage.Web.Pages.Shared;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Reminders;

/// <summary>How one choice for all and the choices racket by racket go together.</summary>
public sealed class AnswerReaderTests
{
    [Theory]
    [InlineData("Gone")]
    [InlineData("Elsewhere")]
    [InlineData("Different")]
    public void One_choice_leaves_an_answer_on_file_that_says_more_than_a_choice(string own)
    {
        ReminderRacket[] rackets = [new() { RacketId = 1, Answer = Enum.Parse<AnswerKind>(own), Mains = "x" }, new() { RacketId = 2, Answer = AnswerKind.NotYet }];
        var input = new AnswerInput
        {
            All = "Same",
            Rackets = [new() { RacketId = 1, Answer = own, Strings = "softer", ElsewhereOn = "2026-11-20" }, new() { RacketId = 2, Answer = "NotYet", Weeks = "3" }],
        };

        var answers = new AnswerReader(Languages.English, rackets, new(2026, 11, 25)).Read(input);

        Assert.Equal([own, "Same"], answers.Select(answer => $"{answer.Kind}"));
    }
}
