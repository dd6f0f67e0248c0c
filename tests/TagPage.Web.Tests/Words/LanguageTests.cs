using TagPage.Core.Forecast;
using TagPage.Core.Text;
using TagPage.Core.Units;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public class LanguageTests
{
    [Theory]
    [InlineData("en", "14 Mar 2027")]
    [InlineData("es", "14 mar 2027")]
    [InlineData("fr", "14 mars 2027")]
    [InlineData("de", "14. März 2027")]
    [InlineData("it", "14 mar 2027")]
    [InlineData("pt", "14 mar. 2027")]
    [InlineData("ja", "2027年3月14日")]
    [InlineData("zh", "2027年3月14日")]
    public void A_day_names_its_month(string code, string expected) =>
        Assert.Equal(expected, In(code).Day(new DateOnly(2027, 3, 14)));

    [Theory]
    [InlineData("it", 8, "giorno 8 mar 2027")] // "il 8" would be wrong, and so would be "l’9"
    [InlineData("it", 11, "giorno 11 mar 2027")]
    [InlineData("it", 9, "9 mar 2027")]
    [InlineData("es", 8, "8 mar 2027")]
    public void Italian_day_takes_the_article_of_its_phrase(string code, int day, string expected) =>
        Assert.Equal(expected, In(code).DayInText(new DateOnly(2027, 3, day)));

    [Fact]
    public void English_days_are_the_shop_areas_days() =>
        Assert.All(Enumerable.Range(0, 366), day =>
            Assert.Equal(Formats.Day(new DateOnly(2028, 1, 1).AddDays(day)), Languages.English.Day(new DateOnly(2028, 1, 1).AddDays(day))));

    [Theory]
    [InlineData("en", "24.5 kg")]
    [InlineData("es", "24,5 kg")]
    [InlineData("fr", "24,5 kg")]
    [InlineData("de", "24,5 kg")]
    [InlineData("it", "24,5 kg")]
    [InlineData("pt", "24,5 kg")]
    [InlineData("ja", "24.5 kg")]
    [InlineData("zh", "24.5 kg")]
    public void Numbers_have_the_languages_own_decimal_sign(string code, string expected) =>
        Assert.Equal(expected, In(code).Of(new Tension(24.50m, TensionUnit.Kg)));

    [Theory]
    [InlineData("en", 3, 20, "14 Mar 2027, 20:05")]
    [InlineData("fr", 3, 9, "14 mars 2027 à 09:05")]
    [InlineData("de", 3, 0, "14. März 2027, 00:05 Uhr")]
    [InlineData("ja", 3, 20, "2027年3月14日 20:05")]
    public void A_moment_is_told_to_the_minute(string code, int month, int hour, string expected) =>
        Assert.Equal(expected, In(code).Moment(new DateTimeOffset(2027, month, 14, hour, 5, 59, TimeSpan.FromHours(1))));

    // Unicode CLDR plural rules: en, de, es, it: 1 only; fr, pt: all below two; ja, zh: no difference.
    [Theory]
    [InlineData("en", 1, "1 time")]
    [InlineData("en", 0, "0 times")]
    [InlineData("en", 1.5, "1.5 times")]
    [InlineData("es", 1, "1 vez")]
    [InlineData("es", 1.5, "1,5 veces")]
    [InlineData("it", 2, "2 volte")]
    [InlineData("pt", 0, "0 vez")]
    [InlineData("pt", 1.5, "1,5 vez")]
    [InlineData("pt", 2, "2 vezes")]
    [InlineData("ja", 1, "1回")]
    [InlineData("zh", 3, "3次")]
    [InlineData("en", 1.04, "1 time")]
    public void One_and_many_follow_the_languages_rule(string code, double n, string expected) =>
        Assert.Equal(expected, In(code).Count(In(code).Phrases.Time.Times, n));

    [Theory]
    [InlineData("fr", 1, "1 jour")]
    [InlineData("fr", 28, "28 jours")]
    [InlineData("de", 1, "1 Tag")]
    [InlineData("de", 3649, "3649 Tage")]
    [InlineData("de", LimitDay.MostDays, "10 Jahre oder mehr")]
    [InlineData("en", LimitDay.MostDays, "10 years or more")]
    public void Days_are_counted(string code, int days, string expected) => Assert.Equal(expected, In(code).Days(days));

    [Theory]
    [InlineData("en", 0, "today")]
    [InlineData("en", 1, "tomorrow")]
    [InlineData("en", -1, "yesterday")]
    [InlineData("en", 12, "in 12 days")]
    [InlineData("en", 21, "in 3 weeks")]
    [InlineData("en", 182, "in 6 months")]
    [InlineData("en", 730, "in 2 years")]
    [InlineData("en", -9, "9 days ago")]
    [InlineData("en", int.MinValue, "5879490 years ago")]
    [InlineData("de", 14, "in 14 Tagen")]
    [InlineData("de", -35, "vor 5 Wochen")]
    [InlineData("fr", -400, "il y a 13 mois")]
    [InlineData("es", 21, "dentro de 3 semanas")]
    [InlineData("it", -9, "9 giorni fa")]
    [InlineData("pt", 1, "amanhã")]
    [InlineData("ja", 21, "3週間後")]
    [InlineData("zh", -40, "6周前")]
    public void A_day_is_said_as_a_person_would(string code, int daysLeft, string expected) =>
        Assert.Equal(expected, In(code).When(daysLeft));

    [Fact]
    public void Each_share_of_the_string_life_has_words_of_its_own() =>
        Assert.All(Languages.All, language => Assert.Equal(
            Enum.GetValues<LifeShare>().Length, Enum.GetValues<LifeShare>().Select(share => language.Left(share)).Distinct().Count()));

    [Theory]
    [InlineData("de", "red", "rot")]
    [InlineData("ja", "Blue", "青")]
    [InlineData("fr", "midnight sparkle", "midnight sparkle")]
    [InlineData("es", "", "")]
    public void A_usual_colour_is_translated_and_any_other_stays_as_typed(string code, string written, string expected) =>
        Assert.Equal(expected, In(code).Colour(written));

    [Fact]
    public void Every_colour_the_shop_is_offered_has_a_word_in_every_language() =>
        Assert.All(Languages.All.Skip(1), language => Assert.All(
            TapeColours.Names, name => Assert.True(language.Colour(name) != name || (name == "orange" && language.Code is "de" or "fr"), $"{language}: {name}")));

    [Fact]
    public void Values_with_braces_are_not_filled_again() =>
        Assert.Equal("<{b}> 1 {c}", "{a} {b} {c}".Fill(("a", "<{b}>"), ("b", "1")));

    private static Language In(string code) => Languages.Of(code)!;
}
