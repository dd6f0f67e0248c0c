using TagPage.Records.Shop;
using TagPage.Records.Stock;
using TagPage.Web.Http.Forms;

namespace TagPage.Web.Pages.Shop.Stock;

public sealed class StringModel(StockStore store, ShopStore shops, ShopClock clock) : RecordPage<StockRow>
{
    public IReadOnlyList<StockMove> Moves => store.Moves(Id);

    public ShopDetails Shop => shops.Get();

    public DateOnly DayOf(DateTimeOffset instant) => clock.DayOf(instant);

    protected override StockRow? Find(long id) => store.Get(id);
}
