using Microsoft.Data.Sqlite;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Faults;

/// <summary>What cannot be this shop's records is refused at the start with one sentence, and not a byte of it changes.</summary>
[Long]
public sealed class StartRefusalTests : IDisposable
{
    private readonly OwnersDesk _desk = new();

    public StartRefusalTests()
    {
        var shop = _desk.Start();
        shop.Records.Shop();
        shop.Records.Family();
        _ = shop.Get<TagPage.Records.Outbox.LinkTokens>();
        _desk.Stop();
    }

    public void Dispose() => _desk.Dispose();

    [Fact]
    public async Task Sound_shop_starts()
    {
        var (code, output, errors) = await _desk.Ask("set-up-link");

        Assert.Equal((0, ""), (code, errors));
        Assert.Contains("/account/set-up/", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Missing_database_beside_keys_is_no_new_shop()
    {
        File.Delete(_desk.Database);

        await Refused("tagpage.db is missing");

        Assert.False(File.Exists(_desk.Database));
    }

    [Fact]
    public async Task Empty_database_beside_keys_is_no_new_shop()
    {
        await File.WriteAllBytesAsync(_desk.Database, [], TestContext.Current.CancellationToken);

        await Refused("tagpage.db is empty");
    }

    [Fact]
    public async Task Journal_without_its_database_is_no_new_shop()
    {
        File.Move(_desk.Database, _desk.Database + "-wal");
        Directory.Delete(Path.Combine(_desk.Data, "keys"), recursive: true);

        await Refused("tagpage.db is missing");
    }

    [Fact]
    public async Task Other_programs_database_is_left_to_it()
    {
        File.Delete(_desk.Database);
        Change("CREATE TABLE recipe (name TEXT NOT NULL); INSERT INTO recipe VALUES ('Plum cake');");

        await Refused("tagpage.db belongs to another program");
    }

    [Fact]
    public async Task Other_programs_database_is_left_to_it_in_a_folder_without_keys()
    {
        Directory.Delete(Path.Combine(_desk.Data, "keys"), recursive: true);
        Change("PRAGMA application_id = 7");

        await Refused("tagpage.db belongs to another program");
    }

    [Fact]
    public async Task Text_file_is_no_database()
    {
        await File.WriteAllTextAsync(_desk.Database, string.Concat(Enumerable.Repeat("Dear diary,\n", 900)), TestContext.Current.CancellationToken);

        await Refused("tagpage.db is not a database");
    }

    [Theory]
    [InlineData("client")]
    [InlineData("racket")]
    public async Task Damaged_page_is_found_before_anything_is_written(string table)
    {
        await Overwrite((Number($"SELECT rootpage FROM sqlite_schema WHERE name = '{table}'") - 1) * Number("PRAGMA page_size"));

        await Refused("tagpage.db is damaged");
    }

    [Theory]
    [InlineData(0.5)]
    [InlineData(0.99)]
    [InlineData(0.001)]
    public async Task Truncated_database_is_refused(double kept)
    {
        await using (var file = new FileStream(_desk.Database, FileMode.Open))
            file.SetLength((long)(file.Length * kept));

        await Refused("tagpage.db is ");
    }

    [Theory]
    [InlineData("links.key")]
    [InlineData("finders.key")]
    [InlineData("key-11111111-2222-3333-4444-555555555555.xml")]
    public async Task Cut_key_is_refused(string name)
    {
        await File.WriteAllTextAsync(Path.Combine(_desk.Data, "keys", name), "<key id=", TestContext.Current.CancellationToken);

        await Refused(name + " is damaged");
    }

    [Fact]
    public async Task Newer_programs_database_is_left_as_it_is()
    {
        Change("INSERT INTO migration (name, applied_at) VALUES ('9999-newer.sql', '2026-11-25T10:00:00.000Z')");

        await Refused("made by a newer TagPage");
    }

    /// <summary>As versions before kept it, which did not note how the tables were made.</summary>
    private const string OldMigrations = """
        DROP TABLE migration;
        CREATE TABLE migration (name TEXT PRIMARY KEY, applied_at TEXT NOT NULL) STRICT, WITHOUT ROWID;
        INSERT INTO migration VALUES ('0001-records.sql', '2026-11-25T10:00:00.000Z');
        ALTER TABLE client DROP COLUMN second_name;
        """;

    [Fact]
    public async Task Database_with_other_tables_than_this_programs_is_left_as_it_is()
    {
        Change(OldMigrations);

        await Refused("tagpage.db was made by another version of TagPage");
    }

    [Fact]
    public async Task Tables_without_a_record_of_how_they_were_made_are_left_as_they_are()
    {
        Change("DROP TABLE migration");

        await Refused("tagpage.db was made by another version of TagPage");
    }

    [Fact]
    public async Task Demo_of_another_version_is_told_how_to_start_over()
    {
        Change("INSERT INTO demo (id, day) VALUES (1, '2026-11-25');" + OldMigrations);

        await Refused("demo --start-over");
    }

    [Fact]
    public async Task Journal_of_other_records_beside_a_copy_is_not_mixed_into_it()
    {
        var shop = _desk.Start();
        var copy = Path.Combine(_desk.Place, "copy.db");
        shop.Database.CopyTo(copy);
        shop.Records.Client("Ilse Marrow");
        await _desk.Type("cp data/tagpage.db-wal wal");
        _desk.Stop();
        await _desk.Type("cp copy.db data/tagpage.db && mv wal data/tagpage.db-wal");

        await Refused("tagpage.db-wal");
    }

    [Theory]
    [InlineData("chmod -R a-w data", "cannot be written")]
    [InlineData("chmod a-w data/tagpage.db", "tagpage.db is read-only")]
    [InlineData("chmod a-r data/tagpage.db", "tagpage.db cannot be opened")]
    public async Task Folder_or_file_that_this_user_may_not_write_is_refused_and_stays_so(string lines, string sentence)
    {
        Assert.SkipWhen(OperatingSystem.IsWindows() || (lines.Contains("a-r ", StringComparison.Ordinal) && !Environment.IsPrivilegedProcess), "The test itself could not look at the file.");
        await _desk.Type($"chmod a+rx . && if [ $(id -u) = 0 ]; then chown -R {Nobody.Id} data; fi && {lines}");
        var modes = await _desk.Type("ls -lR data");

        await Refused(sentence, () => Task.FromResult(Nobody.Does(() => _desk.Ask("set-up-link").GetAwaiter().GetResult())));

        Assert.Equal(modes, await _desk.Type("ls -lR data"));
    }

    private Task Refused(string sentence) => Refused(sentence, () => _desk.Ask("set-up-link"));

    private async Task Refused(string sentence, Func<Task<(int Code, string Output, string Errors)>> start)
    {
        var before = _desk.Files();

        var (code, output, errors) = await start();

        Assert.Equal((1, ""), (code, output));
        Assert.Contains(sentence, errors, StringComparison.Ordinal);
        Assert.Matches(@"\A[^\n]+\.\n\z", errors);
        Assert.Equal(before, _desk.Files());
    }

    private async Task Overwrite(long offset)
    {
        await using var file = new FileStream(_desk.Database, FileMode.Open) { Position = offset };
        file.Write(Enumerable.Repeat((byte)0x5A, 64).ToArray());
    }

    private void Change(string sql)
    {
        using var connection = Open();
        using var command = new SqliteCommand("PRAGMA journal_mode = DELETE;" + sql, connection);
        command.ExecuteNonQuery();
    }

    private long Number(string sql)
    {
        using var connection = Open();
        using var command = new SqliteCommand(sql, connection);
        return (long)command.ExecuteScalar()!;
    }

    private SqliteConnection Open()
    {
        var connection = new SqliteConnection($"Data Source={_desk.Database};Pooling=False");
        connection.Open();
        return connection;
    }
}
