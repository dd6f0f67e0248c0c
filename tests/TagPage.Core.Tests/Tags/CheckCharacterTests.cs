using TagPage.Core.Tags;

namespace TagPage.Core.Tests.Tags;

public class CheckCharacterTests
{
    [Theory]
    // The GRid standard's own example, A1-2425G-ABC1234002-M.
    [InlineData("A12425GABC1234002", 'M')]
    // ISAN examples, as in public reference libraries of the scheme.
    [InlineData("00000000D07A0090", 'Q')]
    [InlineData("000000018CFA0000", 'I')]
    [InlineData("0000000189470000", '8')]
    // Recomputed independently from the text of ISO/IEC 7064.
    [InlineData("7K2M9QXA", 'W')]
    [InlineData("00000000", 'Y')]
    [InlineData("0000000000", 'P')]
    [InlineData("7K2M9Q4TXA", 'V')]
    [InlineData("ZZZZZZZZ", 'Q')]
    [InlineData("R0A1B2C3", '8')]
    public void The_check_character_is_the_published_one(string text, char expected)
    {
        Assert.Equal(expected, CheckCharacter.Of(text));
        Assert.True(CheckCharacter.IsValid(text + expected));
    }

    [Theory]
    [InlineData("A12425GABC1234002M")]
    [InlineData("7K2M9Q4TXAV")]
    [InlineData("0000000000P")]
    public void Every_single_wrong_character_is_caught(string code)
    {
        for (var position = 0; position < code.Length; position++)
        {
            foreach (var wrong in "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ".Where(c => c != code[position]))
                Assert.False(CheckCharacter.IsValid(code[..position] + wrong + code[(position + 1)..]));
        }
    }

    [Fact]
    public void Nearly_all_swaps_of_neighbours_are_caught_but_not_all()
    {
        // About 99.84 %, recomputed independently; so nothing may promise all of them.
        var (swaps, caught) = (0, 0);
        var random = new Random(20270314);
        for (var i = 0; i < 2000; i++)
        {
            var code = TagCode.Draw(random.NextBytes).ToString();
            for (var at = 0; at < code.Length - 1; at++)
            {
                if (code[at] == code[at + 1])
                    continue;
                swaps++;
                if (!CheckCharacter.IsValid($"{code[..at]}{code[at + 1]}{code[at]}{code[(at + 2)..]}"))
                    caught++;
            }
        }
        Assert.InRange((double)caught / swaps, 0.9975, 0.9993);
    }

    [Theory]
    [InlineData("")]
    [InlineData("7k2m9q4txa")]
    [InlineData("7K2M-9Q4T")]
    [InlineData("٣")]
    public void Other_characters_have_no_check_character(string text)
    {
        Assert.Throws<ArgumentException>(() => CheckCharacter.Of(text));
        Assert.False(CheckCharacter.IsValid(text));
        Assert.False(CheckCharacter.IsValid(text + "V"));
    }
}
