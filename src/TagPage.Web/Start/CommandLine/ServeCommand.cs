using TagPage.Records.Storage;
using TagPage.Web.Http;

namespace TagPage.Web.Start.CommandLine;

/// <summary>The shop itself. On a new data folder it also prints a set-up link.</summary>
internal static class ServeCommand
{
    public static Task Run(string[] settings)
    {
        var app = App.Build(App.CreateBuilder(settings), serves: true);
        return Server.Run(app, _ =>
        {
            var output = app.Services.GetRequiredService<TextWriter>();
            output.WriteLine(Announcement.Line("Shop", app.Services.GetRequiredService<PublicAddress>().Of("/")));
            output.WriteLine(Announcement.Line("Records", app.Services.GetRequiredService<DataFolder>().Root));
        });
    }
}
