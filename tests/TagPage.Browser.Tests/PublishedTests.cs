using System.Text.RegularExpressions;

namespace TagPage.Browser.Tests;

public sealed partial class PublishedTests(Published published) : IClassFixture<Published>
{
    private const string AnyPort = "http://127.0.0.1:0";

    [Fact]
    public async Task Demo_runs_from_any_folder_with_its_styles_and_records()
    {
        var folder = published.EmptyFolder();
        using var demo = published.Start(folder, "demo", "--urls", AnyPort);
        var lines = await demo.LinesUpTo("Tag page");

        Assert.Matches(@"^Shop       http://127\.0\.0\.1:\d+/$", lines[0]);
        Assert.Matches(@"^Sign in    http://127\.0\.0\.1:\d+/account/sign-in  name runa, password [a-z2-9-]{19}$", lines[1]);
        Assert.Matches(@"^As helper  http://127\.0\.0\.1:\d+/account/sign-in  name bram, password [a-z2-9-]{19}$", lines[2]);
        Assert.Equal(4, lines.Count);
        Assert.Contains("Ferrygate Racket Bench", await Read(AddressIn(lines[0])), StringComparison.Ordinal);
        Assert.Contains("Racket 1", await Read(AddressIn(lines[3])), StringComparison.Ordinal);
        await ServesItsStyles(lines[0]);
        Assert.Equal(["data-demo"], Directory.GetFileSystemEntries(folder).Select(Path.GetFileName));
    }

    [Fact]
    public async Task Second_start_of_the_demo_keeps_the_password_and_a_busy_port_is_told_in_one_line()
    {
        var folder = published.EmptyFolder();
        using (var first = published.Start(folder, "demo", "--urls", AnyPort))
            await first.LinesUpTo("█"); // The square comes after the password was noted as told.
        using var second = published.Start(folder, "demo", "--urls", AnyPort);
        var lines = await second.LinesUpTo("Tag page");
        using var third = published.Start(published.EmptyFolder(), "--urls", AddressIn(lines[0]).GetLeftPart(UriPartial.Authority));

        var (code, output, errors) = await third.Ended();

        Assert.EndsWith("the password printed at the first start (demo --new-password makes another)", lines[1], StringComparison.Ordinal);
        Assert.Equal((1, ""), (code, output));
        Assert.Matches(@"\A[^\n]+address already in use[^\n]+\n\z", errors);
    }

    [Fact]
    public async Task Own_shop_starts_empty_and_prints_its_set_up_link()
    {
        var folder = published.EmptyFolder();
        using var shop = published.Start(folder, "--urls", AnyPort);
        var lines = await shop.LinesUpTo("Records");

        Assert.Matches(@"^Set up     http://127\.0\.0\.1:\d+/account/set-up/\S+$", lines[0]);
        Assert.Equal("Records    " + Path.Combine(folder, "data"), lines[2]);
        Assert.Contains("<form", await Read(AddressIn(lines[0])), StringComparison.Ordinal);
        await ServesItsStyles(lines[1]);
    }

    [Fact]
    public async Task Folder_of_files_is_checked_brought_in_and_refused_the_second_time()
    {
        var folder = published.EmptyFolder();

        var check = await Run(folder, "import", published.Seed, "--check");
        var import = await Run(folder, "import", published.Seed);
        var again = await Run(folder, "import", published.Seed);

        Assert.Equal((0, "This would add 20 clients, 25 players, 18 strings, 42 rackets, 40 live tags, 2 retired tags, 24 specs, 6 places, 8 pieces and 224 jobs. Nothing was saved.\n"), (check.Code, check.Output));
        Assert.Equal((0, "Added 20 clients, 25 players, 18 strings, 42 rackets, 40 live tags, 2 retired tags, 24 specs, 6 places, 8 pieces and 224 jobs.\n"), (import.Code, import.Output));
        Assert.Equal((1, "Nothing was saved.\n"), (again.Code, again.Output));
        Assert.StartsWith("shop.csv: This shop is already set up.", again.Errors, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(2, "“dmeo” is not a command.", "dmeo")]
    [InlineData(1, "There is no folder ", "import", "nowhere")]
    [InlineData(1, "TagPage:Address is “tag.example”; write it as https://tag.example, without a path.", "--TagPage:Address=tag.example")]
    [InlineData(1, "The setting urls cannot be read. Write it as --urls http://localhost:5080", "--urls", "nonsense")]
    public async Task Slip_on_the_command_line_is_told_without_a_stack_trace(int code, string sentence, params string[] arguments)
    {
        var ended = await Run(published.EmptyFolder(), arguments);

        Assert.Equal(code, ended.Code);
        Assert.StartsWith(sentence, ended.Errors, StringComparison.Ordinal);
        Assert.DoesNotContain("   at ", ended.Errors + ended.Output, StringComparison.Ordinal);
    }

    private async Task<(int Code, string Output, string Errors)> Run(string folder, params string[] arguments)
    {
        using var program = published.Start(folder, arguments);
        return await program.Ended();
    }

    /// <summary>Missing files would be answered 200 and empty, so the length is what counts.</summary>
    private static async Task ServesItsStyles(string line)
    {
        foreach (var file in new[] { "css/shop.css", "css/public.css", "js/shop.js" })
        {
            var source = await File.ReadAllTextAsync(Path.Combine(Published.Source(), "wwwroot", file), TestContext.Current.CancellationToken);
            Assert.Equal(source, await Read(new Uri(AddressIn(line), file)));
        }
    }

    private static async Task<string> Read(Uri address)
    {
        using var client = new HttpClient();
        return await client.GetStringAsync(address, TestContext.Current.CancellationToken);
    }

    private static Uri AddressIn(string line) => new(Address().Match(line).Value);

    [GeneratedRegex(@"http://\S+")]
    private static partial Regex Address();
}
