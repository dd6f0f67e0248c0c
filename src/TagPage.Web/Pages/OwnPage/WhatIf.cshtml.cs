using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Records.OwnPages;
using TagPage.Records.Shop;

namespace TagPage.Web.Pages.OwnPage;

/// <summary>What the date would be with other habits. Looking changes nothing, so the questions are in the address.</summary>
public sealed class WhatIfModel(ClientOnFileStore clients, OwnPageRacketStore rackets, ShopStore shops, ShopClock clock) : OwnPageModel(clients)
{
    public static readonly RacketState[] Roles = [RacketState.InTurn, RacketState.Spare];

    public OwnPageRacket Racket { get; private set; } = new();

    public RestringBy Now { get; private set; } = default!;

    /// <summary>Null until something was asked that can be worked out.</summary>
    public RestringBy? Then { get; private set; }

    public string Times { get; private set; } = "";

    public string Hours { get; private set; } = "";

    public RacketState Role { get; private set; }

    public IActionResult OnGet(long id, string? times, string? hours, RacketState? role)
    {
        if (rackets.Get(Me.Id, id) is not { IsMine: true } racket)
            return NotFound();
        Racket = racket;
        Now = Work(racket);
        Role = role is { } asked && Roles.Contains(asked) ? asked : racket.State == RacketState.Spare ? RacketState.Spare : RacketState.InTurn;
        (Times, Hours) = (times ?? Text(racket.TimesAWeek), hours ?? Text(racket.HoursATime));
        if (times is not null && Read(times, Play.MaxTimesAWeek) is { } readTimes && Read(hours, Play.MaxHoursATime) is { } readHours)
            Then = Work(InRole(racket, Role) with { TimesAWeek = readTimes, HoursATime = readHours });
        return Page();
    }

    private RestringBy Work(OwnPageRacket racket) => racket.WhatIf(clock.Today, shops.Get().StartingValues);

    /// <summary>The share of play depends on how many rackets are played regularly or spare, this one among them.</summary>
    private static OwnPageRacket InRole(OwnPageRacket racket, RacketState role) => racket with
    {
        State = role,
        InTurn = racket.InTurn - (racket.State == RacketState.InTurn ? 1 : 0) + (role == RacketState.InTurn ? 1 : 0),
        Spare = racket.Spare - (racket.State == RacketState.Spare ? 1 : 0) + (role == RacketState.Spare ? 1 : 0),
    };

    private static decimal? Read(string? typed, decimal most) =>
        decimal.TryParse(typed?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n <= most ? n : null;

    private static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
