using TagPage.Records.Shop;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

public class OpeningWordsTests
{
    private static readonly Opening Usual = new(
        [.. new[] { 2, 3, 4, 5 }.Select(day => new OpeningSpan { Weekday = day, OpensAt = 600, ClosesAt = 1080 }), new OpeningSpan { Weekday = 6, OpensAt = 540, ClosesAt = 1440 }],
        [new ClosedDays { FromOn = new(2026, 12, 24), ToOn = new(2027, 1, 2), Note = "away" }, new ClosedDays { FromOn = new(2026, 12, 31), ToOn = new(2026, 12, 31) }]);

    [Theory]
    [InlineData("en", "Tuesday–Friday: 10:00–18:00|Saturday: 9:00–24:00|Monday, Sunday: closed", "Closed from 24 Dec 2026 to 2 Jan 2027")]
    [InlineData("es", "Martes–viernes: 10:00–18:00|Sábado: 9:00–24:00|Lunes, domingo: cerrado", "Cerrado del 24 dic 2026 al 2 ene 2027")]
    [InlineData("fr", "Mardi–vendredi\u00A0: 10:00–18:00|Samedi\u00A0: 9:00–24:00|Lundi, dimanche\u00A0: fermé", "Fermé du 24 déc. 2026 au 2 janv. 2027")]
    [InlineData("de", "Dienstag–Freitag: 10:00–18:00|Samstag: 9:00–24:00|Montag, Sonntag: geschlossen", "Geschlossen vom 24. Dez. 2026 bis 2. Jan. 2027")]
    [InlineData("it", "Martedì–venerdì: 10:00–18:00|Sabato: 9:00–24:00|Lunedì, domenica: chiuso", "Chiuso dal 24 dic 2026 al 2 gen 2027")]
    [InlineData("pt", "Terça-feira–sexta-feira: 10:00–18:00|Sábado: 9:00–24:00|Segunda-feira, domingo: fechado", "Fechado de 24 dez. 2026 a 2 jan. 2027")]
    [InlineData("ja", "火曜日–金曜日：10:00–18:00|土曜日：9:00–24:00|月曜日、日曜日：休み", "2026年12月24日から2027年1月2日まで休み")]
    [InlineData("zh", "星期二–星期五：10:00–18:00|星期六：9:00–24:00|星期一，星期日：休息", "2026年12月24日至2027年1月2日休息")]
    public void Week_and_closed_days_are_said_in_every_language(string code, string week, string closed)
    {
        var language = Languages.Of(code)!;

        Assert.Equal(week, string.Join('|', OpeningWords.Week(language, Usual)));
        Assert.Equal((closed, "away"), OpeningWords.Closed(language, Usual, new(2026, 12, 1)).First());
    }

    [Theory]
    [InlineData("2026-11-25", 0)]
    [InlineData("2026-11-26", 1)]
    [InlineData("2026-12-31", 2)]
    [InlineData("2027-01-02", 1)]
    [InlineData("2027-01-03", 0)]
    public void Closed_days_are_told_four_weeks_ahead_until_they_are_over(string today, int told) =>
        Assert.Equal(told, OpeningWords.Closed(Languages.English, Usual, DateOnly.Parse(today, System.Globalization.CultureInfo.InvariantCulture)).Count());

    [Fact]
    public void Hours_that_nobody_entered_are_not_said() => Assert.Empty(OpeningWords.Week(Languages.English, Opening.Unknown));

    [Fact]
    public void Open_is_what_the_week_says_and_no_closed_day_forbids()
    {
        Assert.True(Usual.IsOpen(new(2026, 12, 23)));
        Assert.False(Usual.IsOpen(new(2026, 12, 21)));
        Assert.False(Usual.IsOpen(new(2027, 1, 2)));
        Assert.Equal(new DateOnly(2027, 1, 5), Usual.NextOpen(new(2026, 12, 24)));
        Assert.Null((Usual with { Closed = [new ClosedDays { FromOn = new(2026, 1, 1), ToOn = new(2030, 1, 1) }] }).NextOpen(new(2026, 12, 24)));
        Assert.True(Opening.Unknown.IsOpen(new(2026, 12, 20)));
    }
}
