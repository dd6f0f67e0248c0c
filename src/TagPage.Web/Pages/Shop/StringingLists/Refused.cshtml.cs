using System.Text;
using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Import;
using TagPage.Web.Csv;
using TagPage.Web.Http.Forms;
using TagPage.Web.StringingLists;

namespace TagPage.Web.Pages.Shop.StringingLists;

/// <summary>The lines that would not come in, with why, to be corrected and sent again.</summary>
public sealed class RefusedModel(ListDesk desk) : KeyPage<SentList>("key")
{
    protected override SentList? Find(string key) => desk.Get(key);

    public IActionResult OnGet()
    {
        var rows = Saved.Table.Rows.ToDictionary(row => row.Line);
        var refused = desk.Plan(Saved, new ImportChoices { Others = OtherMatches.Merge }).Lines.Where(line => line.State == LineState.Refused);
        var text = SheetText.Write(Saved.Table.Headings.Append("refused because").Select(SheetText.Quoted), refused.Select(line => (IReadOnlyList<object?>)[.. rows[line.Read.Line].Cells.Take(Saved.Table.Headings.Count), string.Join(" ", line.Reasons)]));
        return File((byte[])[.. Encoding.UTF8.Preamble, .. Encoding.UTF8.GetBytes(text)], "text/csv; charset=utf-8", "refused.csv");
    }
}
