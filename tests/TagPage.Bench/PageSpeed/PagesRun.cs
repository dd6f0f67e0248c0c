using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Web.Http.SignIn;

namespace TagPage.Bench.PageSpeed;

/// <summary>
/// The program, a bare endpoint with the same bytes and headers, and the empty template, one process each, driven in turn
/// with the same load for some rounds. What counts are the ratios: they are taken side by side.
/// </summary>
public static class PagesRun
{
    private const int Rackets = 20_000, Connections = 8, Visitors = 200;

    public static async Task Go(int rounds, TimeSpan time)
    {
        using var shop = new BigShop(Rackets);
        using (var scope = shop.Services.CreateScope())
            await scope.ServiceProvider.GetRequiredService<Owners>().Add(Owner.Name, Owner.Password);
        shop.Close();
        var folder = Directory.CreateTempSubdirectory("tagpage-bench-").FullName;
        try
        {
            using var template = await ServerProcess.Start("template", EmptyTemplate.Build(Path.Combine(folder, "empty")), [], "/");
            using var program = await ServerProcess.Start("program", typeof(Web.Pages.Tag.IndexModel).Assembly.Location, [$"--TagPage:DataFolder={shop.Folder}"], "/healthz/live");
            var saved = Path.Combine(folder, "page");
            await BareEndpoint.Save(new Uri($"http://127.0.0.1:{program.Port}/t/{shop.Codes[0]}"), saved);
            using var bare = await ServerProcess.Start("bare", typeof(PagesRun).Assembly.Location, ["bare", saved], "/");
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
                $"first 200: program {program.FirstAnswer.TotalSeconds:0.00} s, template {template.FirstAnswer.TotalSeconds:0.00} s; memory then: {program.Megabytes:0} MB, {template.Megabytes:0} MB"));
            Ratios(shop, program, bare, template, await Owner.SignIn(program.Port), rounds, time);
            Memory(shop, program);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    private static void Ratios(BigShop shop, ServerProcess program, ServerProcess bare, ServerProcess template, string cookie, int rounds, TimeSpan time)
    {
        var next = 0;
        string Another() => "/t/" + shop.Codes[Interlocked.Increment(ref next) % Rackets];
        var measured = new Dictionary<string, List<double>>();
        void Ratio(string what, (Load.Result Answers, double ProcessorMs) ours, (Load.Result Answers, double ProcessorMs) theirs)
        {
            Note(what, ours.Answers.PerSecond / theirs.Answers.PerSecond);
            Note(what + ", by processor time", theirs.ProcessorMs / ours.ProcessorMs);
        }
        void Note(string what, double value) => (measured.TryGetValue(what, out var list) ? list : measured[what] = []).Add(value);
        for (var round = 0; round < rounds; round++)
        {
            var nothing = bare.Drive(Connections, time, () => "/");
            var empty = template.Drive(Connections, time, () => "/");
            Ratio("tag page kept / bare", program.Drive(Connections, time, () => "/t/" + shop.Codes[0]), nothing);
            Ratio("tag page not kept / template", program.Drive(Connections, time, Another), empty);
            Ratio("found page / template", program.Drive(Connections, time, () => Another() + "/found"), empty);
            Ratio("bench, signed in / template", program.Drive(Connections, time, () => "/shop", cookie), empty);
            Note("owner's page under 200 visitors / alone", Crowded(shop, program.Port, cookie, time));
            Console.WriteLine($"round {round + 1}: bare {nothing.Answers.PerSecond:0}/s, template {empty.Answers.PerSecond:0}/s");
        }
        foreach (var (what, values) in measured)
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-58} {values.Order().ElementAt(values.Count / 2):0.00} ({values.Min():0.00} to {values.Max():0.00})"));
    }

    /// <summary>The median time of the bench's page while visitors look at kept pages, by its median time without them.</summary>
    private static double Crowded(BigShop shop, int port, string cookie, TimeSpan time)
    {
        var alone = Load.Drive(port, 1, time, () => "/shop", cookie);
        var visitors = Task.Run(() => Load.Drive(port, Visitors, 2 * time, () => "/t/" + shop.Codes[Random.Shared.Next(50)]));
        var crowded = Load.Drive(port, 1, time, () => "/shop", cookie);
        visitors.Wait();
        return crowded.MedianMs / alone.MedianMs;
    }

    private static void Memory(BigShop shop, ServerProcess program)
    {
        var pages = TimeSpan.FromMinutes(10);
        Load.Drive(program.Port, Connections, pages, () => "/t/" + shop.Codes[Random.Shared.Next(50)], most: 10_000);
        var before = program.Megabytes;
        Load.Drive(program.Port, Connections, pages, () => "/t/" + shop.Codes[Random.Shared.Next(50)], most: 1_000_000);
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"memory after 10,000 more requests {before:0} MB, after 1,000,000 more {program.Megabytes:0} MB"));
    }
}
