using TagPage.Records.Storage;

namespace TagPage.Records.Tests.Cast;

/// <summary>Browsers in which a code was typed a moment ago.</summary>
internal static class FreshBrowsers
{
    /// <summary>The hash of a session of this client that may do what could hurt until nine past ten.</summary>
    public static string Fresh(this Street street, long client)
    {
        var hash = new string((char)('a' + client), 64);
        street.Records.Change("""
            INSERT INTO own_page_link (client_id, made_by, made_at, expires_at)
            VALUES (@client, 'Owner', '2026-11-25T09:00:00.000Z', '2027-11-25T09:00:00.000Z');
            INSERT INTO own_page_session (id_hash, client_id, link_id, made_at, fresh_until)
            SELECT @hash, client_id, id, made_at, '2026-11-25T10:09:00.000Z' FROM own_page_link WHERE client_id = @client;
            """, new { client, hash });
        return hash;
    }

    /// <summary>Whoever it is; clients in a browser in which a code was just typed.</summary>
    public static Who BeFresh(this Street street, Actor actor) => street.Be(actor) is { ClientId: { } client } ? Who.Client(client, street.Fresh(client)) : street.Be(actor);
}
