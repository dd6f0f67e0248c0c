using System.Net;
using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using TagPage.Web.Tests.Cast;

namespace TagPage.Web.Tests.Events;

/// <summary>A laptop at an event without internet: it speaks https itself, with a certificate of the shop’s own authority.</summary>
public sealed class LaptopHttpsTests : IDisposable
{
    private readonly EventLaptop _laptop = new();
    private readonly string _certificates = Directory.CreateTempSubdirectory("tagpage-certificates-").FullName;

    public void Dispose()
    {
        _laptop.Dispose();
        Directory.Delete(_certificates, recursive: true);
    }

    [Fact]
    public async Task Tablet_that_trusts_the_authority_joins_the_desk_and_one_that_does_not_is_told_by_its_browser()
    {
        var authority = Certificates();
        var address = await _laptop.Start("https://127.0.0.1:0", $"--Kestrel:Certificates:Default:Path={_certificates}/laptop.crt", $"--Kestrel:Certificates:Default:KeyPath={_certificates}/laptop.key");
        Assert.StartsWith("https://", address, StringComparison.Ordinal);

        using var tablet = Browser(address, authority);
        var visitor = new Visitor(tablet);
        var joined = await visitor.Send(await visitor.Open(_laptop.Link));
        Assert.Contains("Harbour Open", (await visitor.Open(joined.Location!)).Main, StringComparison.Ordinal);

        using var stranger = Browser(address, null);
        await Assert.ThrowsAsync<HttpRequestException>(() => stranger.GetAsync(new Uri(_laptop.Link, UriKind.Relative), TestContext.Current.CancellationToken));
    }

    private static HttpClient Browser(string address, X509Certificate2? trusted)
    {
        var handler = new SocketsHttpHandler { AllowAutoRedirect = false, CookieContainer = new CookieContainer() };
        if (trusted is not null)
            handler.SslOptions.CertificateChainPolicy = new X509ChainPolicy { TrustMode = X509ChainTrustMode.CustomRootTrust, CustomTrustStore = { trusted }, RevocationMode = X509RevocationMode.NoCheck };
        return new HttpClient(handler) { BaseAddress = new Uri(address) };
    }

    /// <summary>What the manual makes with openssl.</summary>
    private X509Certificate2 Certificates()
    {
        var (from, to) = (DateTimeOffset.UtcNow.AddDays(-1), DateTimeOffset.UtcNow.AddDays(60));
        using var authorityKey = RSA.Create(2048);
        var asked = new CertificateRequest("CN=Our event laptop", authorityKey, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        asked.CertificateExtensions.Add(new X509BasicConstraintsExtension(true, false, 0, true));
        asked.CertificateExtensions.Add(new X509KeyUsageExtension(X509KeyUsageFlags.KeyCertSign, true));
        using var authority = asked.CreateSelfSigned(from, to);

        using var key = RSA.Create(2048);
        var laptop = new CertificateRequest("CN=127.0.0.1", key, HashAlgorithmName.SHA256, RSASignaturePadding.Pkcs1);
        var names = new SubjectAlternativeNameBuilder();
        names.AddIpAddress(IPAddress.Loopback);
        laptop.CertificateExtensions.Add(names.Build());
        using var signed = laptop.Create(authority, from, to, [1, 2, 3, 4]);
        File.WriteAllText(Path.Combine(_certificates, "laptop.crt"), signed.ExportCertificatePem());
        File.WriteAllText(Path.Combine(_certificates, "laptop.key"), key.ExportPkcs8PrivateKeyPem());
        return X509CertificateLoader.LoadCertificate(authority.RawData);
    }
}
