using System.Diagnostics;
using System.Globalization;
using TagPage.Records.Storage;
using TagPage.Records.StringingLists;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Tests.Import;

namespace TagPage.Web.Tests.StringingLists;

/// <summary>A long list, and somebody who saves forms meanwhile. LIST_LINES=20000 measures the length that is promised in 30 s.</summary>
public sealed class ListSpeedTests(ITestOutputHelper output)
{
    private static readonly int Lines = int.Parse(Environment.GetEnvironmentVariable("LIST_LINES") ?? "1000", CultureInfo.InvariantCulture);

    [Fact]
    public void Long_list_comes_in_while_others_write()
    {
        using var shop = new TestShop();
        ImportedShop.SetUp(shop);
        var text = OldLists.List([.. Enumerable.Range(0, Lines).Select(i => $"Client {i / 5};Frame {i % 2};{new DateOnly(2019, 1, 1).AddDays(i % 2500):yyyy-MM-dd};String {i % 40} 1.25;{48 + (i % 12)}/50")]);
        var keys = OldLists.Plan(shop, text).Plan.Strings.Select(q => q.Key).ToList();
        var clock = Stopwatch.StartNew();
        var plan = OldLists.Plan(shop, text, s => OldLists.Polyester(s, keys) with { SettledBefore = new DateOnly(2026, 1, 1) }).Plan;
        output.WriteLine($"checked after {clock.Elapsed}");
        var list = ((Outcome.Done)shop.Get<StringingListStore>().Begin(Who.Shop, new StringingListEntry { FormKey = FormKey.New(), Lines = [.. plan.Lines.Select(l => l.Write!)], Headings = "[]" })).Id;
        output.WriteLine($"taken after {clock.Elapsed}");

        var longest = WhileOthersWrite(shop, () => shop.Get<StringingListWorker>().Round());
        output.WriteLine($"{Lines} lines in after {clock.Elapsed}; another write took {longest} at most");
        Assert.Equal(Lines, shop.Records.Count("job"));
        Assert.True(Lines < 20_000 || clock.Elapsed < TimeSpan.FromSeconds(30), $"{clock.Elapsed}");

        clock.Restart();
        Assert.IsType<Outcome.Done>(shop.Get<TakeBackStore>().Begin(Who.Shop, list));
        output.WriteLine($"looked at after {clock.Elapsed}");
        longest = WhileOthersWrite(shop, () => shop.Get<StringingListWorker>().Round());
        output.WriteLine($"taken back after {clock.Elapsed}; another write took {longest} at most");
        Assert.Equal(0, shop.Records.Count("client"));
    }

    private static TimeSpan WhileOthersWrite(TestShop shop, Action work)
    {
        var longest = TimeSpan.Zero;
        using var done = new CancellationTokenSource();
        var other = Task.Run(async () =>
        {
            while (!done.IsCancellationRequested)
            {
                var one = Stopwatch.StartNew();
                shop.Records.Change("UPDATE shop SET town = 'Ferrygate'");
                longest = one.Elapsed > longest ? one.Elapsed : longest;
                await Task.Delay(20);
            }
        }, TestContext.Current.CancellationToken);
        work();
        done.Cancel();
        other.Wait(TestContext.Current.CancellationToken);
        return longest;
    }
}
