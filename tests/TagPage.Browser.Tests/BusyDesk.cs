using TagPage.Core.Jobs;
using TagPage.Records.Events;
using TagPage.Records.Jobs;
using TagPage.Records.Shop;
using TagPage.Records.Storage;

namespace TagPage.Browser.Tests;

/// <summary>Rackets at the desk of the demo's event: waiting, late, on a machine and ready.</summary>
internal static class BusyDesk
{
    public static void Fill(Stage stage)
    {
        var soon = stage.Get<ShopClock>().Minute.AddMinutes(10);
        TakeIn(stage, "Tove Alling", soon, insist: true);
        TakeIn(stage, "Pim Orsay", null, junior: true);
        TakeIn(stage, "Edda Brink", null);
        TakeIn(stage, "Ilse Marrow", soon.AddMinutes(70));
        var moves = stage.Get<DeskMoveStore>();
        Done(moves.Take(Who.Shop, 1, 2, 1));
        Done(moves.Strung(Who.Shop, 1, 2));
        Done(moves.Take(Who.Shop, 1, 3, 1));
        Done(moves.PutOnCourt(Who.Shop, 1, 4, true));
    }

    /// <summary>More rackets than the board has lines for, in every one of its columns.</summary>
    public static void Crowd(Stage stage)
    {
        var soon = stage.Get<ShopClock>().Minute.AddMinutes(10);
        var moves = stage.Get<DeskMoveStore>();
        foreach (var at in Enumerable.Range(0, 27))
        {
            var number = TakeIn(stage, "Tove Alling", soon, insist: true);
            if (at < 20)
                Done(moves.Take(Who.Shop, 1, number, 1, asSecond: true));
            if (at < 13)
                Done(moves.Strung(Who.Shop, 1, number));
        }
    }

    public static int TakeIn(Stage stage, string name, DateTime? neededBy, bool junior = false, bool insist = false) => (int)Done(stage.Get<IntakeStore>().Add(Who.Shop, 1, new IntakeEntry
    {
        FormKey = FormKey.New(),
        Team = "Norden",
        NeededBy = neededBy,
        Insist = insist,
        Visitor = new VisitorEntry { Name = name, Junior = junior, Frame = "Pellmore Meadow 98" },
        Order = new JobEntry { MainsId = stage.Get<StringPickStore>().Choices()[0].Id, MainsTension = 52, CrossesTension = 50, MainsSuppliedBy = Supplier.Client },
    }));

    private static long Done(Outcome outcome) => Assert.IsType<Outcome.Done>(outcome).Id;
}
