using TagPage.Web.Setup;

namespace TagPage.Web.Start.CommandLine;

/// <summary>Says what is wrong with a setup, also beside the running shop.</summary>
internal static class CheckCommand
{
    /// <summary>True where everything works; what only could be better counts as that.</summary>
    public static async Task<bool> Run(string[] settings, TextWriter output)
    {
        ExistingShop.Demand(settings);
        using var app = App.Build(App.CreateBuilder(settings));
        var findings = await app.Services.GetRequiredService<SetupCheck>().All(isServing: false, CancellationToken.None);
        foreach (var finding in findings)
            output.WriteLine($"{finding.Mark} {finding.What}: {finding.Sentence}");
        return findings.All(f => f.State != SetupState.Over);
    }
}
