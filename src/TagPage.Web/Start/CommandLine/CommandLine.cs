namespace TagPage.Web.Start.CommandLine;

/// <summary>Does what the command line asks, or says in one sentence why it cannot.</summary>
public static class CommandLine
{
    private const int Failed = 1;
    private const int NotUnderstood = 2;

    /// <summary>Returns the program's exit code: 0 done, 1 failed, 2 the command line was not understood.</summary>
    public static async Task<int> Run(string[] args, TextWriter output, TextWriter errors)
    {
        var arguments = Arguments.Parse(args);
        if (arguments.Wrong is { } wrong)
        {
            await errors.WriteLineAsync($"{wrong}\n\n{Usage.Text}");
            return NotUnderstood;
        }
        try
        {
            return await Do(arguments, output, errors);
        }
        catch (Exception e) when (StartFault.Sentence(e) is { } sentence)
        {
            await errors.WriteLineAsync(sentence);
            return Failed;
        }
    }

    private static async Task<int> Do(Arguments arguments, TextWriter output, TextWriter errors)
    {
        string[] settings = [.. arguments.Settings];
        switch (arguments.Command)
        {
            case Command.Help:
                await output.WriteLineAsync(Usage.Text);
                return 0;
            case Command.Version:
                await output.WriteLineAsync(Usage.Version);
                return 0;
            case Command.Import:
                return ImportCommand.Run(settings, arguments.Folder, arguments.Choices, arguments.CheckOnly, output, errors) ? 0 : Failed;
            case Command.SetUpLink:
                SetUpLinkCommand.Run(settings, output);
                return 0;
            case Command.Copy:
                CopyCommand.Run(settings, arguments.Folder, output);
                return 0;
            case Command.Backup:
                BackupCommand.Run(settings, output);
                return 0;
            case Command.Restore:
                RestoreCommand.Run(settings, arguments.Folder, Console.In, output);
                return 0;
            case Command.Check:
                return await CheckCommand.Run(settings, output) ? 0 : Failed;
            case Command.NewKeys:
                NewKeysCommand.Run(settings, output);
                return 0;
            case Command.Demo:
                await DemoCommand.Run(settings, arguments.NewPassword, arguments.StartOver);
                return 0;
            default:
                await ServeCommand.Run(settings);
                return 0;
        }
    }
}
