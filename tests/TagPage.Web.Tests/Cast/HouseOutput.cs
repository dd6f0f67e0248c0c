using System.Text;

namespace TagPage.Web.Tests.Cast;

/// <summary>Hands what the program prints to the shop that lives here.</summary>
public sealed class HouseOutput : TextWriter
{
    public PrintedLines Lines { get; set; } = new();

    public override Encoding Encoding => Lines.Encoding;

    public override void Write(char value) => Lines.Write(value);

    public override void WriteLine(string? value) => Lines.WriteLine(value);
}
