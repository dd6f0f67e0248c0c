using System.Globalization;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Condition;
using TagPage.Records.Shop;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Words;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>One photo large, and the way to remove it.</summary>
public sealed class PhotoModel(PhotoStore photos, ShopClock clock) : RecordPage<PhotoRow>
{
    public string At => $"{Formats.Day(clock.DayOf(Saved.MadeAt))}, {clock.OnTheWall(Saved.MadeAt).ToString("HH:mm", CultureInfo.InvariantCulture)}";

    protected override PhotoRow? Find(long id) => photos.Get(User.AtShop(), id);

    public IActionResult OnPost() => this.After(photos.Remove(User.AtShop(), Id), job => this.GoOn($"/shop/jobs/{job}", "The photo is removed."));
}
