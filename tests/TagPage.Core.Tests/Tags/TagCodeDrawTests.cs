using TagPage.Core.Tags;

namespace TagPage.Core.Tests.Tags;

public class TagCodeDrawTests
{
    [Fact]
    public void Drawn_codes_use_the_whole_of_Crockfords_alphabet_at_every_place_and_check()
    {
        // D. Crockford, "Base 32": digits and letters without I, L, O, U.
        var random = new Random(1);
        var codes = Enumerable.Range(0, 3000).Select(_ => TagCode.Draw(random.NextBytes).ToString()).ToList();
        for (var place = 0; place < TagCode.Length; place++)
            Assert.Equal("0123456789ABCDEFGHJKMNPQRSTVWXYZ", string.Concat(codes.Select(c => c[place]).Distinct().Order()));
        Assert.All(codes, code => Assert.True(CheckCharacter.IsValid(code)));
        Assert.Equal(codes.Count, codes.Distinct().Count());
    }

    [Fact]
    public void A_code_whose_check_character_could_be_misread_is_drawn_again()
    {
        // Recomputed independently: 0000000002 checks to L, 0000000000 to P.
        var draws = 0;
        var code = TagCode.Draw(bytes =>
        {
            bytes.Clear();
            bytes[^1] = (byte)(draws++ == 0 ? 2 : 0);
        });
        Assert.Equal("0000000000P", code.ToString());
        Assert.Equal(2, draws);
    }

    [Fact]
    public void A_broken_generator_is_reported_instead_of_asked_for_ever() =>
        Assert.Throws<InvalidOperationException>(() => TagCode.Draw(bytes =>
        {
            bytes.Clear();
            bytes[^1] = 2;
        }));
}
