using TagPage.Core.Text;
using TagPage.Web.Words;
using TagPage.Web.Words.OwnPage;

namespace TagPage.Web.Tests.Words;

/// <summary>One part holds 160 septets; two parts of UCS-2 hold 67 characters each (3GPP TS 23.040, concatenated messages).</summary>
public class SmsTextTests
{
    private const int OnePart = 160;
    private const int TwoPartsOfUcs2 = 2 * 67;
    private const string Shop = "Eastmere String Room 24h";
    private const string Link = "https://tag.eastmere.example/n/12-4pPzQ9xVb2Lr";
    private const string OwnPageLink = "https://tag.eastmere.example/my/1234-4pPzQ9xVb2Lr4pPzQ9xVb2";

    [Fact]
    public void The_table_is_whole()
    {
        Assert.Equal(128, Gsm7.Places);
        Assert.Equal(4, Gsm7.Length("a€b"));
        Assert.Equal(2, Gsm7.Length("éà"));
        Assert.Null(Gsm7.Length("ç"));
        Assert.Null(Gsm7.Length("’"));
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    [InlineData("it")]
    [InlineData("pt")]
    public void In_Latin_letters_the_reminder_fits_into_one_part_with_two_rackets(string code) =>
        Assert.InRange(Gsm7.Length(Text(code))!.Value, 1, OnePart);

    [Theory]
    [InlineData("ja")]
    [InlineData("zh")]
    public void In_Japanese_and_Chinese_it_fits_into_two(string code)
    {
        Assert.Null(Gsm7.Length(Text(code)));
        Assert.InRange(Text(code).Length, 1, TwoPartsOfUcs2);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    [InlineData("fr")]
    [InlineData("de")]
    [InlineData("it")]
    [InlineData("pt")]
    public void In_Latin_letters_a_private_link_and_a_ready_racket_fit_into_one_part(string code) =>
        Assert.All(OwnPageTexts(code), text => Assert.InRange(Gsm7.Length(text)!.Value, 1, OnePart));

    [Theory]
    [InlineData("ja")]
    [InlineData("zh")]
    public void In_Japanese_and_Chinese_they_fit_into_two(string code) =>
        Assert.All(OwnPageTexts(code), text => Assert.InRange(text.Length, 1, TwoPartsOfUcs2));

    private static IEnumerable<string> OwnPageTexts(string code)
    {
        var language = Languages.Of(code)!;
        var say = OwnPageWords.Of(language).Mail;
        var racket = language.Phrases.Trade.RacketOf.Fill(("player", "Pim"), ("number", "2"));
        return [say.LinkSms.Fill(("shop", Shop), ("link", OwnPageLink)), say.ReadySms.Fill(("shop", Shop), ("racket", racket))];
    }

    private static string Text(string code)
    {
        var words = Languages.Of(code)!.Phrases;
        var rackets = string.Join(words.Time.Comma, Enumerable.Range(1, 2).Select(n => words.Trade.RacketInText.Fill(("number", $"{n}"))));
        return words.ReminderMail.Sms.Fill(("shop", Shop), ("rackets", rackets), ("link", Link));
    }
}
