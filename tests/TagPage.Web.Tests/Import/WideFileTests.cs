using System.Text;
using TagPage.Web.Csv;

namespace TagPage.Web.Tests.Import;

/// <summary>Files within their limit of size that would grow without bounds once taken apart.</summary>
public sealed class WideFileTests
{
    /// <summary>Bytes for each byte of the file: its text takes four, decoding and reading some more.</summary>
    private const int MostMemory = 12;

    [Fact]
    public void First_line_of_millions_of_columns_is_refused_before_it_is_taken_apart() =>
        Assert.StartsWith("clients.csv:1: From here the line has more than 100,000 characters.", Refused(string.Join(',', Enumerable.Repeat("a", 2_000_000))), StringComparison.Ordinal);

    [Theory]
    [InlineData(',')]
    [InlineData(';')]
    public void First_line_of_thousands_of_columns_is_refused_in_one_sentence(char between) =>
        Assert.Equal("clients.csv:1: The line has more than 1,000 cells. Use the known columns only.", Refused(string.Join(between, Enumerable.Repeat("name", 5_000))));

    [Fact]
    public void Line_of_thousands_of_cells_is_refused_by_its_number() =>
        Assert.Equal("clients.csv:3: The line has more than 1,000 cells. Use the known columns only.", Refused("client,name\nC1,Odalys\nC2,Pim" + new string(',', 5_000)));

    [Fact]
    public void Empty_columns_by_the_million_are_refused_likewise() =>
        Assert.StartsWith("clients.csv:1: From here the line has more than 100,000 characters.", Refused("client,name" + new string(',', 4_000_000)), StringComparison.Ordinal);

    [Fact]
    public void Line_of_millions_of_cells_is_refused_by_its_number() =>
        Assert.StartsWith("clients.csv:3: From here the line has more than 100,000 characters.", Refused("client,name\nC1,Odalys\nC2,Pim" + new string(',', 4_000_000)), StringComparison.Ordinal);

    [Fact]
    public void Cell_of_millions_of_characters_is_refused_by_its_line() =>
        Assert.Equal("clients.csv:2: From here the line has more than 100,000 characters. It has too many columns, or a quotation mark that is never closed.", Refused("client,name\nC1,\"" + new string('x', 4_000_000)));

    [Fact]
    public void Lines_that_never_end_are_refused_by_the_line_they_begin_in() =>
        Assert.StartsWith("clients.csv:2: From here the line has more than 100,000 characters.", Refused("client,name\nC1,\"" + new string('\n', 4_000_000)), StringComparison.Ordinal);

    [Fact]
    public void Cell_of_ten_thousand_characters_gets_the_sentence_of_its_column() =>
        Assert.Equal("clients.csv:2:name: Keep this within 80 characters; it has 10000.", Refused("client,name\nC1," + new string('x', 10_000)));

    private static readonly Column<string> Name = new("name", Kinds.Line(80), "");

    private static readonly Sheet Clients = new("clients.csv", "", [new Column<string>("client", Kinds.Line(40), ""), Name]);

    private static string Refused(string text)
    {
        var (bytes, problems) = (Encoding.UTF8.GetBytes(text), new Problems());
        var before = GC.GetAllocatedBytesForCurrentThread();

        foreach (var row in SheetReader.Read(Clients, bytes, problems))
            row.Get(Name);

        var taken = GC.GetAllocatedBytesForCurrentThread() - before;
        Assert.True(taken < Math.Max(5_000_000, (long)bytes.Length * MostMemory), $"{taken:N0} bytes for a file of {bytes.Length:N0}");
        return string.Join('\n', problems.Kept);
    }
}
