using System.Net;
using System.Text.RegularExpressions;
using TagPage.Core.Tags;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults;

/// <summary>Does what the manual's page about bad days says, with exactly its commands.</summary>
[Long]
public sealed partial class BadDayTests : IDisposable
{
    private const string Before = "Ilse Marrow", Since = "Teo Quill";

    private static readonly string[] Recipes = Commands().Matches(Page()).Select(m => m.Groups[1].Value).ToArray();

    private readonly OwnersDesk _desk = new();
    private readonly TagCode _tag;
    private readonly string _link;

    public BadDayTests()
    {
        var shop = _desk.Start();
        shop.Records.Shop();
        var family = shop.Records.Family();
        shop.Records.Client(Before);
        (_tag, _link) = (family.Tag, shop.OwnPageLink(family.Client));
    }

    public void Dispose() => _desk.Dispose();

    [Fact]
    public void Every_command_of_the_page_is_tried_here() => Assert.Equal(
        ["TagPage.Web restore", "TagPage.Web copy", "cp -a", "mv data", "mkdir database-before", "tar -czf", "tar -xzf", "TagPage.Web set-up-link", "TagPage.Web new-keys"],
        Recipes.Select(r => string.Join(' ', r.Split(' ', '\n').Take(2))));

    [Fact]
    public async Task Power_cut_loses_nothing_that_a_page_said_was_saved()
    {
        await _desk.Type("cp -a data as-the-cut-left-it");
        _desk.Stop();
        await _desk.Type("rm -r data && mv as-the-cut-left-it data");

        await IsWhole(_desk.Start());
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("rm data/tagpage.db*", false)]
    [InlineData("printf 'scribble' | dd of=data/tagpage.db bs=1 seek=40960 conv=notrunc 2>&1 && rm -f data/tagpage.db-*", true)]
    [InlineData("mkdir new && mv data/backups new/ && rm -r data && mv new data", false)]
    public async Task Backup_brings_all_back_whatever_became_of_the_database_and_tells_where_that_lies_now(string since, bool isPutAside)
    {
        await _desk.Type("mkdir -p data/backups && touch data/backups/20991231-000000-nightly.db");
        Assert.Matches(@"Backup +\S+-by-hand\.db\n", (await _desk.Ask("backup")).Output);
        _desk.Start().Records.Client(Since);
        _desk.Stop();
        var name = Path.GetFileName(Assert.Single(Directory.GetFiles(Path.Combine(_desk.Data, "backups"), "*-by-hand.db")));
        var printed = await _desk.Type(since + "\n" + Recipe("TagPage.Web restore").Replace("THE-BACKUP.db", name, StringComparison.Ordinal));

        var before = Regex.Match(printed, @"^Before +(\S+)$", RegexOptions.Multiline);
        Assert.Equal((isPutAside, isPutAside), (before.Success, Path.Exists(before.Groups[1].Value)));
        await IsWhole(_desk.Start());
    }

    [Fact]
    public async Task File_that_is_no_backup_is_refused_in_a_sentence_and_changes_nothing()
    {
        _desk.Stop();
        await _desk.Type("echo diary > diary.db");
        var before = _desk.Files();

        var (code, output, errors) = await _desk.Ask("restore", Path.Combine(_desk.Place, "diary.db"));

        Assert.Equal((1, ""), (code, output));
        Assert.Matches(@"\AThis is not a backup of this program[^\n]+\n\z", errors);
        Assert.Equal(before, _desk.Files().Where(f => !f.StartsWith("restoring", StringComparison.Ordinal)));
    }

    [Fact]
    public async Task Copy_made_beside_the_running_shop_brings_all_back()
    {
        await _desk.Type(Recipe("TagPage.Web copy"));
        await GoBack();
    }

    [Fact]
    public async Task Copy_of_the_stopped_shops_folder_brings_all_back()
    {
        _desk.Stop();
        await _desk.Type(Recipe("cp -a"));
        _desk.Start();
        await GoBack();
    }

    [Fact]
    public async Task Going_back_after_a_power_cut_does_not_mix_in_what_came_since()
    {
        await _desk.Type(Recipe("TagPage.Web copy"));
        _desk.Start().Records.Client(Since);
        await _desk.Type("cp -a data as-the-cut-left-it");
        _desk.Stop();
        await _desk.Type("rm -r data && mv as-the-cut-left-it data");

        await _desk.Type(Recipe("mv data"));

        await IsWhole(_desk.Start());
    }

    [Fact]
    public async Task Copy_that_is_there_already_is_not_written_over()
    {
        await _desk.Type(Recipe("TagPage.Web copy"));
        var before = await _desk.Type("ls -lR --time-style=full-iso safe-copy && cat safe-copy/tagpage.db | cksum");

        var (code, _, errors) = await _desk.Ask("copy", Path.Combine(_desk.Place, "safe-copy"));

        Assert.Equal(1, code);
        Assert.Matches(@"\A[^\n]+ already exists[^\n]+\.\n\z", errors);
        Assert.Equal(before, await _desk.Type("ls -lR --time-style=full-iso safe-copy && cat safe-copy/tagpage.db | cksum"));
    }

    [Fact]
    public async Task Copy_is_the_owners_alone_and_one_that_was_cut_off_is_no_shop()
    {
        await _desk.Type(Recipe("TagPage.Web copy"));
        Assert.Equal("drwx------\ndrwx------\n-rw-------\n-rw-------\n", await _desk.Type("cd safe-copy && stat -c %A . keys keys/links.key tagpage.db"));
        _desk.Stop();

        await _desk.Type("rm safe-copy/tagpage.db\n" + Recipe("mv data"));
        var (code, _, errors) = await _desk.Ask("set-up-link");

        Assert.Equal(1, code);
        Assert.Contains("tagpage.db is missing", errors, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Copy_made_before_a_new_version_goes_back_in_whatever_lies_beside_the_database()
    {
        var shop = _desk.Start();
        shop.Database.CopyTo(Path.Combine(Directory.CreateDirectory(Path.Combine(_desk.Data, "backups")).FullName, "20261125-100000-before-0002-new.db"));
        shop.Records.Client(Since);
        await _desk.Type("cp -a data as-the-cut-left-it");
        _desk.Stop();
        await _desk.Type("rm -r data && mv as-the-cut-left-it data");
        Assert.Contains("tagpage.db-wal", await _desk.Type("ls data"), StringComparison.Ordinal);

        await _desk.Type(Recipe("mkdir database-before").Replace("THE-COPY", "20261125-100000-before-0002-new", StringComparison.Ordinal));

        await IsWhole(_desk.Start());
    }

    [Fact]
    public async Task Other_machine_goes_on_with_everything()
    {
        _desk.Stop();
        await _desk.Type(Recipe("tar -czf"));
        using var other = new OwnersDesk();
        await _desk.Type($"mv tagpage.tar.gz {other.Place}");
        await other.Type(Recipe("tar -xzf"));

        await IsWhole(other.Start());
    }

    [Fact]
    public async Task Lost_password_is_set_anew_beside_the_running_shop()
    {
        var shop = await _desk.Start().OwnedByRuna();
        var printed = await _desk.Type(Recipe("TagPage.Web set-up-link"));
        var runa = shop.Stranger();
        var form = await runa.Open(new Uri(AnyAddress().Match(printed).Value).AbsolutePath);

        await runa.Send(form, ("Input.NewPassword", "seven brown otters swimming"));

        Assert.Equal("/shop", (await shop.Stranger().SignIn(password: "seven brown otters swimming")).Location);
        Assert.Null((await shop.Stranger().SignIn()).Location);
    }

    [Fact]
    public async Task Old_address_goes_on_answering_and_new_labels_carry_the_new_one()
    {
        _desk.Stop();
        using var shop = new TestShop { Folder = _desk.Data };
        shop.Settings["TagPage:Address"] = "https://new.example";

        Assert.Equal(HttpStatusCode.OK, (await shop.Stranger("192.0.2.7", "https://tag.example").Get($"/t/{_tag}")).StatusCode);
        Assert.Equal($"https://new.example/t/{_tag}", shop.Get<Web.Http.PublicAddress>().Of($"/t/{_tag}"));
    }

    private async Task GoBack()
    {
        var running = _desk.Start();
        var link = running.OwnPageLink(running.Records.Client(Since));
        _desk.Stop();
        await _desk.Type(Recipe("mv data"));
        var shop = _desk.Start();
        await IsWhole(shop);
        Assert.Null((await shop.Stranger().Open(link)).Form());
    }

    private async Task IsWhole(TestShop shop)
    {
        Assert.Equal((1, 0), (shop.Records.Count("client", $"name = '{Before}'"), shop.Records.Count("client", $"name = '{Since}'")));
        Assert.Equal("ok", shop.Records.Text("PRAGMA integrity_check"));
        Assert.Contains("Heron Spin", (await shop.Stranger().Open($"/t/{_tag}")).Main, StringComparison.Ordinal);
        await shop.Stranger().Enters(_link);
    }

    private static string Recipe(string beginning) => Recipes.Single(r => r.ReplaceLineEndings(" ").StartsWith(beginning + " ", StringComparison.Ordinal));

    private static string Page() => File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "docs", "bad-day.md"));

    [GeneratedRegex(@"^```\n(.+?)^```$", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Commands();

    [GeneratedRegex(@"https?://\S+")]
    private static partial Regex AnyAddress();
}
