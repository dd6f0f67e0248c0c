using System.ComponentModel.DataAnnotations;
using System.Globalization;
using TagPage.Records.Shop;

namespace TagPage.Web.Http.Forms;

/// <summary>A day from 1970 to 2099; another year is a slip of the hand. Empty passes.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class LikelyYearAttribute : RangeAttribute
{
    public LikelyYearAttribute() : base(typeof(DateOnly), ShopClock.Earliest.ToString("O", CultureInfo.InvariantCulture), "2099-12-31") =>
        (ParseLimitsInInvariantCulture, ConvertValueInInvariantCulture, ErrorMessage) = (true, true, "Check the year.");
}
