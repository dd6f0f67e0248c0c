using System.Globalization;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the date would be with other habits. Looking changes nothing, so the questions stand in the address.</summary>
public sealed class WhatIfModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ShopStore shops, ShopClock clock) : OwnRecordPage<OwnPageRacket>(clients)
{
    public static readonly RacketState[] Roles = [RacketState.InTurn, RacketState.Spare];

    public RestringBy Now { get; private set; } = default!;

    /// <summary>Null until something was asked that can be worked out.</summary>
    public RestringBy? Then { get; private set; }

    public string Times { get; private set; } = "";

    public string Hours { get; private set; } = "";

    public RacketState Role { get; private set; }

    protected override OwnPageRacket? Find(long id) => rackets.Get(Me.Id, id) is { IsMine: true } racket ? racket : null;

    public void OnGet(string? times, string? hours, RacketState? role)
    {
        Now = Work(Saved);
        Role = role is { } asked && Roles.Contains(asked) ? asked : Saved.State == RacketState.Spare ? RacketState.Spare : RacketState.InTurn;
        (Times, Hours) = (times ?? Text(Saved.TimesAWeek), hours ?? Text(Saved.HoursATime));
        if (times is not null && Read(times, Play.MaxTimesAWeek) is { } readTimes && Read(hours, Play.MaxHoursATime) is { } readHours)
            Then = Work(Saved.InRole(Role) with { TimesAWeek = readTimes, HoursATime = readHours });
    }

    private RestringBy Work(OwnPageRacket racket) => racket.WhatIf(clock.Today, shops.Get().StartingValues);

    private static decimal? Read(string? typed, decimal most) =>
        decimal.TryParse(typed?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n <= most ? n : null;

    private static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
