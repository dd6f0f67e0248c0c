using TagPage.Records.Import;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Start.CommandLine;

/// <summary>The command line, taken apart: a command word first, its own words next, all else for the framework's configuration.</summary>
public sealed record Arguments
{
    private static readonly string[] Help = ["--help", "-h", "-?", "help"];

    private static readonly Dictionary<string, Command> Commands = new()
    {
        ["demo"] = Command.Demo,
        ["import"] = Command.Import,
        ["set-up-link"] = Command.SetUpLink,
        ["copy"] = Command.Copy,
        ["backup"] = Command.Backup,
        ["restore"] = Command.Restore,
        ["check"] = Command.Check,
        ["new-keys"] = Command.NewKeys,
    };

    public Command Command { get; private init; } = Command.Serve;

    /// <summary>Of the command import: where the files lie; of copy: the folder to be made; of restore: the backup.</summary>
    public string Folder { get; private init; } = "";

    /// <summary>Of the command import: say what would happen and save nothing.</summary>
    public bool CheckOnly { get; private init; }

    /// <summary>Of the command import: what holds for clients who may be on file.</summary>
    public ImportChoices Choices { get; private init; } = new();

    /// <summary>Of the command demo: give its owner a new password.</summary>
    public bool NewPassword { get; private init; }

    /// <summary>Of the command demo: delete its records and begin anew.</summary>
    public bool StartOver { get; private init; }

    /// <summary>Settings, in the forms that the framework reads.</summary>
    public IReadOnlyList<string> Settings { get; private init; } = [];

    /// <summary>What is wrong with the command line, as a sentence; null if it is fine.</summary>
    public string? Wrong { get; private init; }

    public static Arguments Parse(IReadOnlyList<string> args)
    {
        if (args.Any(Help.Contains))
            return new Arguments { Command = Command.Help };
        if (args.Contains("--version"))
            return new Arguments { Command = Command.Version };
        if (args.Count == 0 || IsSetting(args[0]))
            return new Arguments().WithRest(args);
        return Commands.TryGetValue(args[0], out var command)
            ? new Arguments { Command = command }.WithOwnWords([.. args.Skip(1)])
            : new Arguments { Wrong = $"“{args[0]}” is not a command." };
    }

    private Arguments WithOwnWords(List<string> rest)
    {
        var own = this with
        {
            CheckOnly = Command == Command.Import && rest.Remove("--check"),
            NewPassword = Command == Command.Demo && rest.Remove("--new-password"),
            StartOver = Command == Command.Demo && rest.Remove("--start-over"),
        };
        return Command switch
        {
            Command.Import => own.WithChoices(rest).WithFolder(rest, "After import, name the folder that holds the files."),
            Command.Copy => own.WithFolder(rest, "After copy, name the folder to create."),
            Command.Restore => own.WithFolder(rest, "After restore, name the backup to go back to."),
            _ => own.WithRest(rest),
        };
    }

    private Arguments WithChoices(List<string> rest)
    {
        var (matches, settled) = (Take(rest, "--matches"), Take(rest, "--settled-before"));
        if (matches is not (null or "merge" or "apart"))
            return this with { Wrong = "After --matches, write merge or apart." };
        if (settled is not null && DayField.Read(settled) is null)
            return this with { Wrong = "After --settled-before, write a day as 2027-03-14." };
        var others = matches switch { "merge" => OtherMatches.Merge, "apart" => OtherMatches.KeepApart, _ => OtherMatches.Ask };
        return this with { Choices = new ImportChoices { Others = others, SettledBefore = DayField.Read(settled) } };
    }

    /// <summary>Takes an option with its value out of the words; empty where the value is missing, null without the option.</summary>
    private static string? Take(List<string> rest, string option)
    {
        if (rest.FindIndex(word => word.StartsWith(option + "=", StringComparison.Ordinal)) is >= 0 and var joined)
        {
            var value = rest[joined][(option.Length + 1)..];
            rest.RemoveAt(joined);
            return value;
        }
        if (rest.IndexOf(option) is not (>= 0 and var at))
            return null;
        var next = at + 1 < rest.Count ? rest[at + 1] : "";
        rest.RemoveRange(at, Math.Min(2, rest.Count - at));
        return next;
    }

    private Arguments WithFolder(List<string> rest, string missing)
    {
        if (Wrong is not null)
            return this;
        var at = 0;
        while (at < rest.Count && IsSetting(rest[at]))
            at += HasValue(rest[at]) ? 1 : 2;
        if (at >= rest.Count)
            return this with { Wrong = missing };
        var folder = rest[at];
        rest.RemoveAt(at);
        return (this with { Folder = folder }).WithRest(rest);
    }

    private Arguments WithRest(IReadOnlyList<string> rest)
    {
        for (var i = 0; i < rest.Count; i++)
        {
            if (!IsSetting(rest[i]) || !KnownSettings.Contains(NameOf(rest[i])))
                return this with { Wrong = $"“{rest[i]}” is not understood here." };
            if (!HasValue(rest[i]) && (++i == rest.Count || rest[i].StartsWith("--", StringComparison.Ordinal)))
                return this with { Wrong = $"“{rest[i - 1]}” needs a value after it." };
        }
        return this with { Settings = [.. rest] };
    }

    private static bool IsSetting(string arg) => arg.StartsWith("--", StringComparison.Ordinal) || HasValue(arg);

    private static bool HasValue(string arg) => arg.Contains('=', StringComparison.Ordinal);

    private static string NameOf(string arg) => arg.TrimStart('-').Split('=')[0];
}
