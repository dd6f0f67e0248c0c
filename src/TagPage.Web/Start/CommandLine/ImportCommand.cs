using TagPage.Records.Storage;
using TagPage.Web.Csv;
using TagPage.Web.Import;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Brings a folder of CSV files in, without the web server.</summary>
internal static class ImportCommand
{
    /// <summary>True where all came in, or could.</summary>
    public static bool Run(string[] settings, string folder, bool checkOnly, TextWriter output, TextWriter errors)
    {
        if (!Directory.Exists(folder))
            throw new CannotStartException($"There is no folder {Path.GetFullPath(folder)}.");
        using var app = App.Build(App.CreateBuilder(settings));
        var importer = app.Services.GetRequiredService<Importer>();
        var files = ImportFiles.From(folder);
        var report = checkOnly ? importer.Check(files) : importer.Import(files, FormKey.New());
        List(report.Problems, report.MoreProblems, errors);
        List(report.Notices, report.MoreNotices, output);
        output.WriteLine(!report.IsClean ? "Nothing was saved."
            : checkOnly ? $"This would add {report.Summary}. Nothing was saved."
            : $"Added {report.Summary}.");
        return report.IsClean;
    }

    private static void List(IReadOnlyList<Problem> problems, int more, TextWriter writer)
    {
        foreach (var problem in problems)
            writer.WriteLine(problem);
        if (more > 0)
            writer.WriteLine($"And {more} more.");
    }
}
