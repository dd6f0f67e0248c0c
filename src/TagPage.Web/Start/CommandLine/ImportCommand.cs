using TagPage.Records.Import;
using TagPage.Records.Storage;
using TagPage.Web.Csv;
using TagPage.Web.Import;
using TagPage.Web.Words;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Brings a folder of CSV files in, without the web server.</summary>
internal static class ImportCommand
{
    /// <summary>True where all came in, or could.</summary>
    public static bool Run(string[] settings, string folder, ImportChoices choices, bool checkOnly, TextWriter output, TextWriter errors)
    {
        if (!Directory.Exists(folder))
            throw new CannotStartException($"There is no folder {Path.GetFullPath(folder)}.");
        using var app = App.Build(App.CreateBuilder(settings));
        var importer = app.Services.GetRequiredService<Importer>();
        var files = ImportFiles.From(folder);
        var (report, unsafeBecause) = checkOnly ? (importer.Check(files, choices), null) : importer.BackUpAndImport(files, choices, FormKey.New());
        if (unsafeBecause is { } fault)
            throw new CannotStartException(BackupWords.NotFirst(fault));
        List(report.Problems, report.MoreProblems, errors);
        List([.. report.Undecided.Select(MatchWords.Undecided)], 0, errors);
        if (report.Undecided.Count > 0)
            errors.WriteLine("Say who they are with --matches merge (the same people) or --matches apart (other people), or bring the files in under Settings, where each is asked about.");
        List(report.Notices, report.MoreNotices, output);
        if (report.IsClean)
            Tell(report, choices, output);
        output.WriteLine(!report.IsClean ? "Nothing was saved."
            : checkOnly ? $"This would add {report.Summary}. Nothing was saved."
            : $"Added {report.Summary}.");
        return report.IsClean;
    }

    private static void Tell(ImportReport report, ImportChoices choices, TextWriter output)
    {
        if (report.LeftOpen > 0 && choices.SettledBefore is null)
            output.WriteLine($"{(report.LeftOpen == 1 ? "1 job" : $"{report.LeftOpen} jobs")} strung more than {ImportLimits.DaysUntilSettled} days ago {(report.LeftOpen == 1 ? "is" : "are")} not collected or not paid. --settled-before DAY counts such jobs as both.");
        if (report.Settled is { } settled)
            output.WriteLine($"Counted {settled}.");
        if (report.AlreadyThere is { } there)
            output.WriteLine($"Already there: {there}.");
    }

    private static void List(IReadOnlyList<Problem> problems, int more, TextWriter writer)
    {
        foreach (var problem in problems)
            writer.WriteLine(problem);
        if (more > 0)
            writer.WriteLine($"And {more} more.");
    }
}
