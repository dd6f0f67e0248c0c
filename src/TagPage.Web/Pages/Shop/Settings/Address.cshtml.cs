using System.ComponentModel.DataAnnotations;
using Microsoft.AspNetCore.Mvc;
using Microsoft.AspNetCore.Mvc.RazorPages;
using TagPage.Core.Tags;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;
using TagPage.Web.Labels;

namespace TagPage.Web.Pages.Shop.Settings;

/// <summary>The address that links and labels carry: what it is, where it comes from, and whether this program answers there.</summary>
public sealed class AddressModel(PublicAddress address, AddressStore store, UsedAddressStore used, AddressCheck check, SettingSource sources, ShopClock clock) : PageModel
{
    private static readonly TagCode Sample = TagCode.Parse("0MWF2SBY7KE");

    public sealed record Fields
    {
        [StringLength(AddressText.Longest)]
        public string? Address { get; init; }

        public string? Confirmed { get; init; }
    }

    [BindProperty]
    public Fields Input { get; set; } = new();

    public PublicAddress Address => address;

    /// <summary>Which setting names the address; null where none does, and it can be chosen here.</summary>
    public string? FixedBy => address.IsFixed ? sources.Of(ConfiguredAddress.Setting) : null;

    /// <summary>What the address said that was called; null where none was.</summary>
    public AddressAnswer? Answer { get; private set; }

    public string? Called { get; private set; }

    /// <summary>Addresses that labels may still carry.</summary>
    public IReadOnlyList<(string Base, DateOnly From, DateOnly To)> Earlier =>
        [.. used.EarlierThan(address.Base).Where(a => !PublicAddress.IsLoopback(a.Base)).Select(a => (a.Base, clock.DayOf(a.FirstAt), clock.DayOf(a.LastAt)))];

    /// <summary>What a label carries, with an example in place of a code.</summary>
    public string OnLabels => address.Of("/t/7K2M9Q4TXAV").ToUpperInvariant();

    public void OnGet() => Input = new Fields { Address = address.IsConfigured ? address.Base : null };

    /// <summary>Calls the present address; changes nothing.</summary>
    public async Task<IActionResult> OnPostCheck(CancellationToken cancel)
    {
        OnGet();
        ModelState.Clear();
        await Call(address.Base, cancel);
        return Page();
    }

    public async Task<IActionResult> OnPost(CancellationToken cancel)
    {
        if (address.IsFixed)
            return NotFound();
        if (Wrong(Input.Address) is { } wrong)
            ModelState.AddModelError("Input.Address", wrong);
        if (!ModelState.IsValid)
            return Page();
        var wanted = AddressText.Read(Input.Address)!;
        await Call(wanted, cancel);
        if (this.Asks(Oddities(wanted), Input.Confirmed))
            return Page();
        return this.After(store.Choose(User.AtShop(), wanted), _ => this.GoOn("/shop/settings/address", $"Links and labels now carry {wanted}."));
    }

    private static string? Wrong(string? typed) =>
        AddressText.Read(typed) is not { } wanted ? "Write it as https://tag.example, without a path."
        : TagSquare.Of(wanted, Sample) is null ? "A tag’s square cannot hold this address. Use a name of letters, digits, dots and hyphens."
        : null;

    private async Task Call(string wanted, CancellationToken cancel) => (Answer, Called) = (await check.Call(wanted, cancel), wanted);

    private IEnumerable<Oddity> Oddities(string wanted)
    {
        if (Answer is { } answer and not AddressAnswer.ThisProgram)
            yield return new AddressUnproven(answer);
        if (!wanted.StartsWith("https:", StringComparison.Ordinal))
            yield return new AddressNotHttps();
        if (Old(wanted) is not { } old)
            yield return new AddressForLife();
        else if (old != wanted && store.Carry() is var carried)
            yield return new AddressChanges(old, carried.InUse, carried.Blank);
    }

    /// <summary>What labels carry now; also where a setting named it until the last start.</summary>
    private string? Old(string wanted)
    {
        if (address.IsConfigured)
            return address.Base;
        return used.EarlierThan(wanted) is [var last, ..] ? last.Base : null;
    }
}
