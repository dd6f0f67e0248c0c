using CsCheck;
using TagPage.Core.Tags;

namespace TagPage.Core.Tests.Tags;

public class TagCodeReadTests
{
    [Theory]
    [InlineData("7K2M9Q4TXAV")]
    [InlineData("7k2m-9q4t-xav")]
    [InlineData("  7K2M 9Q4T\tXAV\r\n")]
    [InlineData("7K2M–9Q4T—XAV")]
    [InlineData("7K2M\u22129Q4T\u00ADXAV\u200B")]
    [InlineData("７Ｋ２Ｍ－９Ｑ４ＴーＸＡＶ")]
    [InlineData("https://x.example/T/7K2M9Q4TXAV")]
    [InlineData("HTTPS://X.EXAMPLE/T/7K2M9Q4TXAV/FOUND?from=/t/other#top")]
    [InlineData("x.example/t/t/7k2m9q4txav")]
    [InlineData("x.example/shop/t/7k2m9q4txav/")]
    public void A_code_is_read_however_it_was_typed_or_scanned(string typed)
    {
        var reading = TagCode.Read(typed);
        Assert.Equal(TagCodeOutcome.Code, reading.Outcome);
        Assert.Equal("7K2M9Q4TXAV", reading.Code?.ToString());
        Assert.Equal("7K2M-9Q4T-XAV", reading.Code?.Display);
    }

    [Theory]
    [InlineData("7K2M-9Q4T-XAW", TagCodeOutcome.WrongCheckCharacter)]
    [InlineData("7K2M-9Q4T-AXV", TagCodeOutcome.WrongCheckCharacter)]
    [InlineData(null, TagCodeOutcome.NotACode)]
    [InlineData("", TagCodeOutcome.NotACode)]
    [InlineData(" - ", TagCodeOutcome.NotACode)]
    [InlineData("7K2M-9Q4T-XA", TagCodeOutcome.NotACode)]
    [InlineData("7K2M-9Q4T-XAVV", TagCodeOutcome.NotACode)]
    [InlineData("7K2M-9Q4T-XAU", TagCodeOutcome.NotACode)]
    [InlineData("7K2M_9Q4T_XAV", TagCodeOutcome.NotACode)]
    [InlineData("7К2М9Q4TXAV", TagCodeOutcome.NotACode)] // К and М are Cyrillic
    [InlineData("https://x.example/7K2M9Q4TXAV", TagCodeOutcome.NotACode)]
    [InlineData("https://x.example/t/", TagCodeOutcome.NotACode)]
    public void Anything_else_is_told_apart(string? typed, TagCodeOutcome expected) =>
        Assert.Equal(new TagCodeReading(expected, null), TagCode.Read(typed));

    [Fact]
    public void A_text_of_ten_million_characters_is_refused_without_reading_it()
    {
        var huge = new string(' ', 10_000_000) + "7K2M9Q4TXAV";
        var before = GC.GetAllocatedBytesForCurrentThread();
        Assert.Equal(TagCodeOutcome.NotACode, TagCode.Read(huge).Outcome);
        Assert.True(GC.GetAllocatedBytesForCurrentThread() - before < 10_000);
    }

    [Fact]
    public void Typing_noise_never_changes_a_code() =>
        Gen.Select(Gen.Int, Gen.Int[0, 3].Array[TagCode.Length], Gen.OneOf("", " ", "-", "–", "  ").Array[TagCode.Length])
            .Sample((seed, habits, gaps) =>
            {
                var code = TagCode.Draw(new Random(seed).NextBytes);
                var typed = string.Concat(code.ToString().Select((c, i) => gaps[i] + Mistype(c, habits[i])));
                return TagCode.Read(typed).Code == code;
            });

    [Fact]
    public void No_text_makes_reading_throw() =>
        Gen.String.Sample(text => TagCode.Read(text).Code is not { } code || TagCode.Parse(code.ToString()) == code);

    [Theory]
    [InlineData("7k2m9q4txav")]
    [InlineData("7K2M-9Q4T-XAV")]
    [InlineData("7K2M9Q4TXAW")]
    [InlineData("")]
    public void What_is_stored_must_be_exact(string stored) =>
        Assert.Throws<FormatException>(() => TagCode.Parse(stored));

    private static char Mistype(char character, int habit) => (character, habit) switch
    {
        ('0', 1) => 'O',
        ('0', 2) => 'o',
        ('1', 1) => 'I',
        ('1', 2) => 'l',
        (_, 3) => char.ToLowerInvariant(character),
        _ => character,
    };

    [Theory]
    [InlineData("7k2m", "7K2M")]
    [InlineData("7K2M-9q", "7K2M9Q")]
    [InlineData("oil", "011")]
    [InlineData("", "")]
    [InlineData("7K2U", null)]
    [InlineData("7K2M9Q4TXAVX", null)]
    public void Beginning_of_a_code_is_read_as_forgivingly_as_a_whole_one(string typed, string? begin) =>
        Assert.Equal(begin, TagCode.Begin(typed));
}
