using System.Diagnostics;
using System.Text.RegularExpressions;
using TagPage.Records.Storage;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults;

/// <summary>Owners look at their file with the SQLite tool of their system, which is older than the program's own.</summary>
public sealed partial class OlderSqliteTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public void Dispose() => _desk.Dispose();

    [Theory]
    [InlineData("quick_check")]
    [InlineData("integrity_check")]
    public async Task Systems_own_tool_calls_a_sound_file_sound(string check)
    {
        Assert.SkipUnless(HasTool(), "There is no sqlite3 here.");
        var shop = _desk.Start();
        shop.Records.Shop();
        shop.Records.Family();
        _desk.Stop();

        Assert.Equal("ok\n", await _desk.Type($"sqlite3 data/tagpage.db 'PRAGMA {check}'"));
    }

    /// <summary>Before 3.45 json_valid(NULL) was 0, not NULL, and a CHECK with it false.</summary>
    [Fact]
    public void No_check_asks_whether_nothing_is_json()
    {
        var checks = Migration.Embedded.SelectMany(m => m.Sql.Split('\n')).Where(line => line.Contains("json_", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(checks);
        Assert.All(checks, line => Assert.Matches(Sound(), line));
    }

    private static bool HasTool()
    {
        try
        {
            using var tool = Process.Start(new ProcessStartInfo("sqlite3", "--version") { RedirectStandardOutput = true })!;
            tool.WaitForExit();
            return tool.ExitCode == 0;
        }
        catch (System.ComponentModel.Win32Exception)
        {
            return false;
        }
    }

    [GeneratedRegex(@"NOT NULL CHECK \(json_valid\(\w+\)\)|CHECK \((?<c>\w+) IS NULL OR json_valid\(\k<c>\)\)")]
    private static partial Regex Sound();
}
