using System.Net;
using TagPage.Web.Start;

namespace TagPage.Web.Tests.Cli;

public sealed class ListeningTests
{
    [Theory]
    [InlineData("http://0.0.0.0:5080", "http://localhost:5080", "http://192.168.1.7:5080")]
    [InlineData("http://[::]:5080", "http://localhost:5080", "http://192.168.1.7:5080")]
    [InlineData("http://*:5080", "http://localhost:5080", "http://192.168.1.7:5080")]
    [InlineData("http://localhost:5080", "http://localhost:5080", null)]
    [InlineData("http://127.0.0.1:5080", "http://127.0.0.1:5080", null)]
    [InlineData("http://[::1]:5080", "http://[::1]:5080", null)]
    [InlineData("http://10.0.0.4:5080", "http://10.0.0.4:5080", "http://10.0.0.4:5080")]
    [InlineData("https://bench.example:5443", "https://bench.example:5443", "https://bench.example:5443")]
    public void Phone_is_given_an_address_it_can_reach(string bound, string here, string? outside) =>
        Assert.Equal(new Listening(here, outside), Listening.Of(bound, IPAddress.Parse("192.168.1.7")));

    [Fact]
    public void Machine_without_a_network_is_reached_from_itself_only() =>
        Assert.Equal(new Listening("http://localhost:5080", null), Listening.Of("http://0.0.0.0:5080", lan: null));

    [Theory]
    [InlineData("192.168.1.7", "172.17.0.1", "192.168.1.7+", "203.0.113.9+", "127.0.0.1", "fe80::1")]
    [InlineData("10.1.2.3", "169.254.7.7+", "10.1.2.3")]
    [InlineData("172.31.0.5", "172.32.0.5+", "172.31.0.5")]
    [InlineData("203.0.113.9", "fd00::1+", "203.0.113.9")]
    [InlineData(null, "127.0.0.1", "169.254.1.1+", "fd00::1+")]
    public void Private_address_with_a_way_out_is_chosen_first(string? chosen, params string[] candidates) =>
        Assert.Equal(chosen, LanAddress.Choose(candidates.Select(c => new LanAddress.Candidate(IPAddress.Parse(c.TrimEnd('+')), c.EndsWith('+'))))?.ToString());
}
