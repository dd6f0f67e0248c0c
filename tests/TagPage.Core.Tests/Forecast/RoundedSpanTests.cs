using TagPage.Core.Forecast;

namespace TagPage.Core.Tests.Forecast;

public class RoundedSpanTests
{
    [Theory]
    [InlineData(0, 0, SpanUnit.Days)]
    [InlineData(2, 2, SpanUnit.Days)]
    [InlineData(20, 20, SpanUnit.Days)]
    [InlineData(21, 3, SpanUnit.Weeks)]
    [InlineData(26, 4, SpanUnit.Weeks)]
    [InlineData(35, 5, SpanUnit.Weeks)]
    [InlineData(83, 12, SpanUnit.Weeks)]
    [InlineData(84, 3, SpanUnit.Months)]
    [InlineData(182, 6, SpanUnit.Months)]
    [InlineData(400, 13, SpanUnit.Months)]
    [InlineData(729, 24, SpanUnit.Months)]
    [InlineData(730, 2, SpanUnit.Years)]
    [InlineData(3650, 10, SpanUnit.Years)]
    [InlineData(2147483648, 5879490, SpanUnit.Years)]
    public void A_span_is_counted_as_a_person_would(long days, long count, SpanUnit unit) =>
        Assert.Equal(new RoundedSpan(count, unit), RoundedSpan.Of(days));

    /// <summary>So words for one week, one month and one year need not exist.</summary>
    [Fact]
    public void Beyond_days_there_are_always_two_or_more() =>
        Assert.All(Enumerable.Range(2, 4000), days => Assert.True(RoundedSpan.Of(days).Count >= 2));
}
