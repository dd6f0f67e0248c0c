using TagPage.Web.Start.CommandLine;

namespace TagPage.Web.Tests.Cli;

public sealed class ArgumentsTests
{
    [Theory]
    [InlineData("", Command.Serve)]
    [InlineData("--urls http://localhost:5081", Command.Serve)]
    [InlineData("TagPage:DataFolder=elsewhere", Command.Serve)]
    [InlineData("demo", Command.Demo)]
    [InlineData("demo --urls=http://0.0.0.0:5080 --TagPage:DataFolder x", Command.Demo)]
    [InlineData("import files", Command.Import)]
    [InlineData("set-up-link --TagPage:DataFolder=x", Command.SetUpLink)]
    [InlineData("copy safe-copy --TagPage:DataFolder=x", Command.Copy)]
    [InlineData("backup --TagPage:DataFolder=x", Command.Backup)]
    [InlineData("restore data/backups/one.db", Command.Restore)]
    [InlineData("check", Command.Check)]
    [InlineData("new-keys", Command.NewKeys)]
    [InlineData("--help", Command.Help)]
    [InlineData("demo -h", Command.Help)]
    [InlineData("--version", Command.Version)]
    public void First_word_is_the_command(string line, Command command)
    {
        var arguments = Parse(line);

        Assert.Null(arguments.Wrong);
        Assert.Equal(command, arguments.Command);
    }

    [Fact]
    public void Settings_go_on_to_the_framework_and_own_words_do_not()
    {
        var arguments = Parse("import --check --TagPage:DataFolder=x /srv/files --urls http://localhost:1");

        Assert.Equal("/srv/files", arguments.Folder);
        Assert.True(arguments.CheckOnly);
        Assert.Equal(["--TagPage:DataFolder=x", "--urls", "http://localhost:1"], arguments.Settings);
    }

    [Fact]
    public void Folder_of_an_import_is_not_a_settings_value()
    {
        var arguments = Parse("import --TagPage:DataFolder x files");

        Assert.Equal("files", arguments.Folder);
        Assert.Equal(["--TagPage:DataFolder", "x"], arguments.Settings);
    }

    [Fact]
    public void New_password_belongs_to_the_demo()
    {
        Assert.True(Parse("demo --new-password").NewPassword);
        Assert.NotNull(Parse("--new-password").Wrong);
    }

    [Fact]
    public void Only_the_demo_starts_over()
    {
        Assert.True(Parse("demo --start-over").StartOver);
        Assert.False(Parse("demo").StartOver);
        Assert.NotNull(Parse("--start-over").Wrong);
        Assert.NotNull(Parse("import files --start-over").Wrong);
    }

    [Theory]
    [InlineData("dmeo", "“dmeo” is not a command.")]
    [InlineData("demo now", "“now” is not understood here.")]
    [InlineData("--url http://localhost:5081", "“--url” is not understood here.")]
    [InlineData("--TagPage:Adress=https://tag.example", "“--TagPage:Adress=https://tag.example” is not understood here.")]
    [InlineData("demo --check", "“--check” is not understood here.")]
    [InlineData("--urls", "“--urls” needs a value after it.")]
    [InlineData("--urls --environment x", "“--urls” needs a value after it.")]
    [InlineData("set-up-link now", "“now” is not understood here.")]
    [InlineData("import", "After import, name the folder that holds the files.")]
    [InlineData("import --check", "After import, name the folder that holds the files.")]
    [InlineData("import files --matches", "After --matches, write merge or apart.")]
    [InlineData("import files --matches both", "After --matches, write merge or apart.")]
    [InlineData("import files --settled-before soon", "After --settled-before, write a day as 2027-03-14.")]
    [InlineData("demo --matches merge", "“--matches” is not understood here.")]
    [InlineData("copy", "After copy, name the folder to create.")]
    [InlineData("restore", "After restore, name the backup to go back to.")]
    [InlineData("backup now", "“now” is not understood here.")]
    [InlineData("new-keys now", "“now” is not understood here.")]
    [InlineData("import one two", "“two” is not understood here.")]
    public void Slip_is_told_in_a_sentence(string line, string sentence) => Assert.Equal(sentence, Parse(line).Wrong);

    private static Arguments Parse(string line) => Arguments.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries));
}
