using TagPage.Web.Start.CommandLine;

namespace TagPage.Web.Tests.Cli;

public sealed class ExistingShopTests : IDisposable
{
    private readonly string _folder = Path.Combine(Path.GetTempPath(), "tagpage-test-" + Guid.NewGuid().ToString("N"));

    public void Dispose()
    {
        if (Directory.Exists(_folder))
            Directory.Delete(_folder, recursive: true);
    }

    [Theory]
    [InlineData("check")]
    [InlineData("backup")]
    [InlineData("copy safe-copy")]
    [InlineData("new-keys")]
    public async Task Mistyped_data_folder_is_said_to_hold_no_shop_and_stays_as_it_is(string command)
    {
        Assert.Equal($"There is no shop in {_folder}. Name its data folder: --TagPage:DataFolder=…", await Fails(command));
        Assert.False(Path.Exists(_folder));

        Directory.CreateDirectory(_folder);
        File.WriteAllText(Path.Combine(_folder, "letter.txt"), "Dear Runa");
        Assert.StartsWith("There is no shop in", await Fails(command), StringComparison.Ordinal);
        Assert.Equal(["letter.txt"], Directory.GetFileSystemEntries(_folder).Select(Path.GetFileName));
    }

    /// <summary>What it says on the error output; nothing stands on the other one.</summary>
    private async Task<string> Fails(string command)
    {
        using StringWriter output = new(), errors = new();
        Assert.Equal(1, await CommandLine.Run([.. command.Split(' '), $"--TagPage:DataFolder={_folder}"], output, errors));
        Assert.Empty(output.ToString());
        return errors.ToString().Trim();
    }
}
