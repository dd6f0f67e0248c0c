using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Core.Forecast;
using TagPage.Core.Players;
using TagPage.Core.Rackets;
using TagPage.Core.Text;
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

    public void OnGet([FromQuery(Name = nameof(Times))] string? times, [FromQuery(Name = nameof(Hours))] string? hours, [FromQuery(Name = nameof(Role))] string? role)
    {
        Now = Work(Saved);
        Role = Enum.TryParse<RacketState>(role, out var asked) && Roles.Contains(asked) ? asked : Saved.State == RacketState.Spare ? RacketState.Spare : RacketState.InTurn;
        (Times, Hours) = (times ?? Text(Saved.TimesAWeek), hours ?? Text(Saved.HoursATime));
        if (times is null && hours is null)
            return;
        var readTimes = Read(nameof(Times), times, Play.MaxTimesAWeek, Say.Play.TimesUnlikely);
        var readHours = Read(nameof(Hours), hours, Play.MaxHoursATime, Say.Play.HoursUnlikely);
        if (readTimes is { } timesAWeek && readHours is { } hoursATime)
            Then = Work(Saved.InRole(Role) with { TimesAWeek = timesAWeek, HoursATime = hoursATime });
    }

    private RestringBy Work(OwnPageRacket racket) => racket.WhatIf(clock.Today, shops.Get().StartingValues);

    /// <summary>Null for what is no such number, which its field then says.</summary>
    private decimal? Read(string field, string? typed, int most, string unlikely)
    {
        if (decimal.TryParse(typed?.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var n) && n <= most)
            return n;
        ModelState.AddModelError(field, unlikely.Fill(("most", $"{most}")));
        return null;
    }

    private static string Text(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
