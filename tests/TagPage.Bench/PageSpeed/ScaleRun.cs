using System.Globalization;
using Microsoft.Extensions.DependencyInjection;
using TagPage.Web.Http.SignIn;

namespace TagPage.Bench.PageSpeed;

/// <summary>Every list and page a shop uses, in shops of any size, one visitor at a time: how much longer than in the smallest.</summary>
public static class ScaleRun
{
    public static async Task Go(IReadOnlyList<int> sizes, TimeSpan time)
    {
        var first = new Dictionary<string, double>();
        foreach (var rackets in sizes)
        {
            using var shop = new BigShop(rackets);
            using (var scope = shop.Services.CreateScope())
                await scope.ServiceProvider.GetRequiredService<Owners>().Add(Owner.Name, Owner.Password);
            shop.Close();
            using var program = await ServerProcess.Start("program", typeof(Web.Pages.Tag.IndexModel).Assembly.Location, [$"--TagPage:DataFolder={shop.Folder}"], "/healthz/live");
            var cookie = await Owner.SignIn(program.Port);
            Console.WriteLine($"\n{rackets + " rackets",-34}   p50 ms   p95 ms   processor ms   times the smallest");
            foreach (var (what, path) in Pages(shop, rackets))
            {
                program.Drive(1, time / 4, path, cookie);
                var (answers, processor) = program.Drive(1, time, path, cookie);
                var smallest = first.TryGetValue(what, out var known) ? known : first[what] = processor;
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{what,-34} {answers.MedianMs,8:0.0} {answers.P95Ms,8:0.0} {processor,14:0.0} {processor / smallest,12:0.0}"));
            }
        }
    }

    private static IEnumerable<(string What, Func<string> Path)> Pages(BigShop shop, int rackets)
    {
        var next = 0;
        int Another(int most) => 1 + (next = (next + 7919) % most);
        yield return ("tag page, signed in", () => "/t/" + shop.Codes[Another(rackets) - 1]);
        yield return ("bench", () => "/shop");
        yield return ("due list", () => "/shop/due");
        yield return ("reminders for all who are due", () => "/shop/nudges/batch");
        yield return ("racket card", () => $"/shop/rackets/{Another(rackets)}");
        yield return ("client", () => $"/shop/clients/{Another(rackets / 3)}");
        yield return ("player", () => $"/shop/players/{Another(rackets / 2)}");
        yield return ("ticket", () => $"/shop/jobs/{Another(3 * rackets)}");
        yield return ("new job", () => $"/shop/jobs/new?racket={Another(rackets)}");
        yield return ("clients from A to Z", () => "/shop/clients");
        yield return ("payers", () => "/shop/payers");
        yield return ("strings", () => "/shop/strings");
        yield return ("one string", () => "/shop/strings/edit/1");
        yield return ("label of a racket", () => $"/shop/labels/racket/{Another(rackets)}");
        yield return ("reminders", () => "/shop/nudges");
        yield return ("found log", () => "/shop/found");
        yield return ("search by name", () => "/shop/find?q=player%20ka");
        yield return ("search by one letter", () => "/shop/find?q=p");
        yield return ("search by ticket", () => $"/shop/find?q=%23{Another(3 * rackets)}");
        yield return ("search by phone", () => $"/shop/find?q=0{4321 + Another(500):00000}");
    }
}
