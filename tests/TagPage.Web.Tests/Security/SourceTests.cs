using System.Net;
using Microsoft.AspNetCore.Http;
using TagPage.Web.Http.Limits;

namespace TagPage.Web.Tests.Security;

// Addresses from the ranges kept for documentation: RFC 5737 and RFC 3849.
public sealed class SourceTests
{
    [Theory]
    [InlineData("203.0.113.7", "203.0.113.7")]
    [InlineData("::ffff:203.0.113.7", "203.0.113.7")]
    [InlineData("2001:db8:1:2:3:4:5:6", "2001:db8:1:2::/64")]
    [InlineData("2001:db8:1:2:ffff::1", "2001:db8:1:2::/64")]
    [InlineData("2001:db8:1:3::1", "2001:db8:1:3::/64")]
    [InlineData("fe80::1%3", "fe80::/64")]
    public void Source_is_an_ipv4_address_or_an_ipv6_network_of_64_bits(string address, string source) =>
        Assert.Equal(source, Source.Of(IPAddress.Parse(address)));

    [Fact]
    public void Mark_tells_sources_apart_without_naming_them()
    {
        var marks = new SourceMark();

        Assert.Equal(marks.Of(From("203.0.113.7")), marks.Of(From("203.0.113.7")));
        Assert.NotEqual(marks.Of(From("203.0.113.7")), marks.Of(From("203.0.113.8")));
        Assert.NotEqual(marks.Of(From("203.0.113.7")), new SourceMark().Of(From("203.0.113.7")));
    }

    private static DefaultHttpContext From(string address)
    {
        var context = new DefaultHttpContext();
        context.Connection.RemoteIpAddress = IPAddress.Parse(address);
        return context;
    }
}
