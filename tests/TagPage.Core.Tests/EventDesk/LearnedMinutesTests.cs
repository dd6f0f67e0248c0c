using TagPage.Core.EventDesk;

namespace TagPage.Core.Tests.EventDesk;

public class LearnedMinutesTests
{
    [Fact]
    public void It_begins_with_half_an_hour() => Assert.Equal(30, LearnedMinutes.From([]));

    // Three rackets of 30 are assumed: (3 x 30 + 20 x 21) / 23 = 22.17.
    [Fact]
    public void A_day_of_quick_rackets_is_believed_nearly_whole() =>
        Assert.Equal(23, LearnedMinutes.From(Enumerable.Repeat(21.0, 20)));

    [Fact]
    public void One_quick_racket_moves_it_a_little() => Assert.Equal(28, LearnedMinutes.From([22]));

    [Fact]
    public void A_press_too_many_and_a_lunch_teach_nothing() => Assert.Equal(30, LearnedMinutes.From([0.2, 4.9, 121, 600]));
}
