using TagPage.Labels.Text;

namespace TagPage.Labels.Tests.Layout;

public class ShaperTests
{
    [Theory]
    [InlineData("Łukasz Ångström-O’Neill")]
    [InlineData("Δημήτρης Παπαδόπουλος")]
    [InlineData("Дмитрий Щёголев Ґалаґан")]
    [InlineData("山田太郎 髙橋 﨑")]
    [InlineData("王小明 张伟 諸葛亮")]
    [InlineData("タナカ・ひろし")]
    [InlineData("Nguyễn Thị Ánh")]
    [InlineData("№ 12 · 24 lb ½ °C → 318 kg·cm² …")]
    public void Names_and_signs_of_these_scripts_have_all_their_glyphs(string text)
    {
        var shaped = Shaper.Shape(text);
        Assert.Empty(shaped.Missing);
        Assert.Equal(text.Normalize(), shaped.Text);
        Assert.All(shaped.Runs.SelectMany(run => run.Glyphs), glyph => Assert.NotEqual(0, glyph.Id));
    }

    [Fact]
    public void Fonts_change_within_a_line_glyph_by_glyph()
    {
        var shaped = Shaper.Shape("Jun 山田 24 lb");
        Assert.Equal(["RobotoCondensed", "NotoSansJP-names", "RobotoCondensed"], shaped.Runs.Select(run => run.Font.Name));
    }

    [Fact]
    public void Every_weight_numbers_its_glyphs_alike()
    {
        const string letters = "Łukasz Ångström Δημήτρης Дмитрий 0123456789 ½·²";
        var plain = Shaper.Shape(letters).Runs.Single();
        var bold = Shaper.Shape(letters, isBold: true).Runs.Single();
        Assert.Equal(plain.Glyphs.Select(glyph => glyph.Id), bold.Glyphs.Select(glyph => glyph.Id));
        Assert.Equal("RobotoCondensed-ExtraBold", bold.Font.Name);
        Assert.Equal("RobotoCondensed-Medium", plain.ForSize(13).Font.Name);
        Assert.Equal(plain.Glyphs.Select(glyph => glyph.Id), plain.ForSize(13).Font.Shape(letters, false).Select(glyph => glyph.Id));
    }

    // The forms a letter takes within an Arabic word: Unicode Standard, chapter 9. Meem, hah, meem, dal joined are
    // other glyphs than the four letters alone.
    [Fact]
    public void Arabic_letters_are_joined_and_run_right_to_left()
    {
        var word = Assert.Single(Shaper.Shape("محمد").Runs);
        Assert.True(word.IsRightToLeft);
        Assert.Equal([3, 2, 1, 0], word.Glyphs.Select(glyph => glyph.Cluster));
        var alone = "محمد".Select(letter => Shaper.Shape(letter.ToString()).Runs[0].Glyphs[0].Id).Reverse();
        Assert.All(word.Glyphs.Zip(alone).Skip(1), pair => Assert.NotEqual(pair.Second, pair.First.Id));
    }

    [Fact]
    public void A_number_in_a_hebrew_line_keeps_its_own_order_and_stands_left_of_the_words_before_it()
    {
        var shaped = Shaper.Shape("דנה 12");
        Assert.Equal("12", shaped.Runs[0].Text);
        Assert.False(shaped.Runs[0].IsRightToLeft);
        Assert.Equal("דנה", shaped.Runs[^1].Text);
        Assert.Equal("דנה 12", shaped.Text);
    }

    [Theory]
    [InlineData("🎾 Ana", "Ana", "🎾")]
    [InlineData("Ana 👨‍👩‍👧 Bo", "Ana Bo", "👨‍👩‍👧")]
    [InlineData("กาญจนา", "", "ก")]
    public void What_no_font_has_is_left_out_and_named(string text, string printed, string missing)
    {
        var shaped = Shaper.Shape(text);
        Assert.Equal(printed, shaped.Text.Replace("  ", " ", StringComparison.Ordinal));
        Assert.Contains(missing, shaped.Missing);
    }

    [Theory]
    [InlineData("a\tb\r\nc", "a b c")]
    [InlineData("  a   b  ", "a b")]
    [InlineData("a\u202Eb\u0007\u200Bc", "abc")]
    [InlineData("e\u0301", "é")]
    [InlineData("", "")]
    public void Control_characters_go_and_blanks_are_one(string text, string printed) => Assert.Equal(printed, Shaper.Shape(text).Text);

    [Fact]
    public void Half_of_a_surrogate_pair_does_no_harm() => Assert.Equal("ab", Shaper.Shape("a\uD83Cb").Text);
}
