using Microsoft.Extensions.Configuration;
using TagPage.Web.Http;
using TagPage.Web.Start;
using TagPage.Web.Start.CommandLine;
using TagPage.Web.Start.Demo;

namespace TagPage.Web.Tests.Cli;

public sealed class DemoLinesTests
{
    private static readonly Listening Everywhere = new("http://localhost:5080", "http://192.168.1.7:5080");
    private static readonly Listening HereOnly = new("http://localhost:5080", null);

    [Fact]
    public void Demo_on_this_machine_names_its_pages_and_says_how_a_phone_gets_there() => Assert.Equal(
        [
            "Shop       http://localhost:5080/",
            "Sign in    http://localhost:5080/account/sign-in  name runa, password abcd",
            "As helper  http://localhost:5080/account/sign-in  name bram, password efgh",
            "Tag page   http://localhost:5080/t/0MWF2SBY7KE",
            "Found page http://localhost:5080/t/3CKZ477SBMG/found",
            "Reminder   http://localhost:5080/n/7-abc",
            "Own page   http://localhost:5080/my/9-def",
            "Only this machine can connect. To scan with a phone on the same network, start with --urls http://0.0.0.0:5080",
        ],
        Lines(HereOnly, "abcd"));

    [Fact]
    public void Demo_in_the_network_names_the_address_a_phone_reaches_and_keeps_signing_in_here() => Assert.Equal(
        [
            "Shop       http://192.168.1.7:5080/",
            "Sign in    http://localhost:5080/account/sign-in  name runa, the password printed at the first start (demo --new-password makes another)",
            "As helper  http://localhost:5080/account/sign-in  name bram, the password printed at the first start (demo --new-password makes another)",
            "Tag page   http://192.168.1.7:5080/t/0MWF2SBY7KE",
            "Found page http://192.168.1.7:5080/t/3CKZ477SBMG/found",
            "Reminder   http://192.168.1.7:5080/n/7-abc",
            "Own page   http://localhost:5080/my/9-def",
            "Signing in and clients’ own pages need https from another device; on this machine the addresses above work.",
        ],
        Lines(Everywhere, null));

    [Fact]
    public void Configured_https_address_is_used_for_everything() => Assert.Equal(
        [
            "Shop       https://tag.example/",
            "Sign in    https://tag.example/account/sign-in  name runa, password abcd",
            "As helper  https://tag.example/account/sign-in  name bram, password efgh",
            "Tag page   https://tag.example/t/0MWF2SBY7KE",
            "Found page https://tag.example/t/3CKZ477SBMG/found",
            "Reminder   https://tag.example/n/7-abc",
            "Own page   https://tag.example/my/9-def",
        ],
        Lines(Everywhere, "abcd", "https://tag.example"));

    private static IEnumerable<string> Lines(Listening listening, string? password, string? configured = null)
    {
        var address = new PublicAddress(new ConfiguredAddress(new ConfigurationBuilder().AddInMemoryCollection([new("TagPage:Address", configured)]).Build()), () => null);
        address.UseListening(listening.FromOutside ?? listening.AtThisMachine);
        return DemoCommand.Lines(listening, address, "0MWF2SBY7KE", "3CKZ477SBMG", "/n/7-abc", "/my/9-def", password is null ? null : new DemoPeople.Passwords(password, "efgh"));
    }
}
