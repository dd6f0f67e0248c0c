namespace TagPage.Records.Import;

/// <summary>Lets the choices take effect on the clients of a batch.</summary>
internal static class ImportDecisions
{
    /// <summary>Marks who is who; returns those of whom it is not decided.</summary>
    public static List<ImportMatch> Apply(IReadOnlyList<ImportMatch> matches, ImportChoices choices)
    {
        var undecided = new List<ImportMatch>();
        foreach (var match in matches)
        {
            var chosen = choices.Of(match);
            if (chosen == ImportChoices.Apart)
                continue;
            if (match.Lookalikes.FirstOrDefault(l => l.Key == chosen) is { } same)
                Merge(match.Client, same);
            else
                undecided.Add(match);
        }
        return undecided;
    }

    private static void Merge(ClientRow client, Lookalike same)
    {
        if (same.ClientId is { } id)
            (client.Id, client.IsOnFile) = (id, true);
        else
            client.SameAs = same.Line;
    }
}
