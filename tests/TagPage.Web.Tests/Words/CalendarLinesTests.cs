using System.Text;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Words;

/// <summary>RFC 5545, 3.1: lines are folded at 75 octets, and what is unfolded again is what was there.</summary>
public class CalendarLinesTests
{
    private static readonly string[] Characters = ["a", " ", "é", "，", "弦", "🎾", "👨‍👩‍👧", "\U0001F1E6", "\t"];

    [Fact]
    public void Six_hundred_random_texts_come_back_as_they_were()
    {
        var random = new Random(5545);
        for (var run = 0; run < 600; run++)
        {
            var text = string.Concat(Enumerable.Range(0, random.Next(300)).Select(_ => Characters[random.Next(Characters.Length)]));
            // As octets over the wire, unfolded as the standard says: CRLF and the one blank after it go.
            var lines = Encoding.UTF8.GetString(Encoding.UTF8.GetBytes(CalendarLines.Folded($"SUMMARY:{text}\r\nEND:VEVENT\r\n"))).Split("\r\n");
            Assert.All(lines, line => Assert.InRange(Encoding.UTF8.GetByteCount(line), 0, 75));
            var unfolded = lines.Aggregate("", (all, line) => line.StartsWith(' ') ? all + line[1..] : all + "\n" + line);
            Assert.Equal($"\nSUMMARY:{text}\nEND:VEVENT\n", unfolded);
        }
    }

    [Fact]
    public void Lines_that_were_folded_within_a_character_are_put_together_first() =>
        Assert.Equal("A🎾B", CalendarLines.Folded("A\uD83C\r\n \uDFBEB"));
}
