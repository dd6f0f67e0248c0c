using Microsoft.AspNetCore.Mvc.Infrastructure;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Records.Audit;
using TagPage.Web.Tests.Cast;
using TagPage.Web.Words;

namespace TagPage.Web.Tests.Pages;

/// <summary>What the owner reads of what happened.</summary>
public sealed class AuditTests : IDisposable
{
    private readonly TestShop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Owner_reads_who_signed_in_what_was_refused_and_which_settings_were_saved()
    {
        await _shop.OwnedByRuna();
        _shop.Records.Shop();
        await _shop.Stranger().SignIn(password: "three grey herons walking");
        await _shop.Stranger().SignIn(password: "three grey herons standing");
        var runa = _shop.Stranger();
        await runa.SignIn();
        await runa.Send(await runa.Open("/shop/settings/reminders"), ("Input.DaysBetween", "-1"));
        await runa.Send(await runa.Open("/shop/settings/closed"), ("Input.FromOn", "2026-12-24"));

        var lines = (await runa.Open("/shop/audit")).Document.QuerySelectorAll("main li").Select(li => string.Join(' ', li.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)));

        Assert.Equal(
            [
                "Settings saved: Opening hours 25 Nov 2026, 10:00",
                "Signed in, by password 25 Nov 2026, 10:00",
                "Sign-in failed: wrong name or password, 2 times 25 Nov 2026, 10:00",
            ], lines);
    }

    [Fact]
    public void Settings_that_were_saved_are_called_as_settings_calls_them()
    {
        var pages = _shop.Get<IActionDescriptorCollectionProvider>().ActionDescriptors.Items.OfType<PageActionDescriptor>()
            .Select(page => page.ViewEnginePath).Where(page => page.StartsWith("/Shop/Settings/", StringComparison.Ordinal)).Distinct().ToList();

        Assert.True(pages.Count > 15, $"{pages.Count} pages");
        Assert.DoesNotContain(pages.Where(page => page != "/Shop/Settings/Index"), page => AuditWords.Of(AuditEvent.SettingChanged, page["/Shop/".Length..]).Contains('/', StringComparison.Ordinal));
    }

    [Fact]
    public async Task Finders_leave_no_trace_of_themselves_in_it()
    {
        _shop.Records.Shop();
        var tag = _shop.Records.Family().Tag;
        _shop.Records.Agree("Contact");

        await _shop.Stranger().AskForContact(tag);

        Assert.Equal("1101 1", _shop.Records.Text("SELECT event || detail || ' ' || times FROM audit"));
    }
}
