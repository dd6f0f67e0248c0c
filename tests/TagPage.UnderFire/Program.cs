using System.Globalization;
using TagPage.Records.Storage;

namespace TagPage.UnderFire;

/// <summary>
/// Proof under fire, by hand: <c>dotnet run -c Release --project tests/TagPage.UnderFire -- 1000</c> kills a program that writes as many
/// times. docs/trust.md has what it printed; the tests of the records run a short one.
/// </summary>
public static class Program
{
    public static int Main(string[] args)
    {
        if (args is ["write", var folder])
        {
            Writer.Run(new DataFolder(folder));
            return 0;
        }
        var kills = args.Length > 0 ? int.Parse(args[0], CultureInfo.InvariantCulture) : 100;
        var result = new Battle(new Random(args.Length > 1 ? int.Parse(args[1], CultureInfo.InvariantCulture) : 1)).Fight(kills, Console.Out);
        Console.WriteLine(result);
        return result.IsClean ? 0 : 1;
    }
}
