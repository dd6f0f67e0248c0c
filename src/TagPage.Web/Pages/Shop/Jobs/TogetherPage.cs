using TagPage.Records.Jobs;
using TagPage.Records.Money;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Shop.Jobs;

/// <summary>A page about all that is at the shop of one client, or of the clients a payer pays for. Its route says {whose}, client or payer, and {id}.</summary>
public abstract class TogetherPage(TogetherStore store) : RecordPage<TogetherStore.Row>
{
    private const string Client = "client", Payer = "payer";

    public Party Party => PartyOf(Id)!;

    public bool IsClient => Whose == Client;

    /// <summary>Where all of it is shown.</summary>
    public string Home => $"/shop/jobs/together/{Whose}/{Id}";

    /// <summary>Where they are on file.</summary>
    public string OnFile => IsClient ? $"/shop/clients/{Id}" : $"/shop/payers/edit/{Id}";

    public string Whose => (string)RouteData.Values["whose"]!;

    protected override TogetherStore.Row? Find(long id) => PartyOf(id) is { } party ? store.Get(User.AtShop(), party) : null;

    private Party? PartyOf(long id) => Whose switch
    {
        Client => Party.Client(id),
        Payer => Party.Payer(id),
        _ => null,
    };
}
