using System.Diagnostics;
using Dapper;
using Microsoft.Data.Sqlite;
using TagPage.Records.Storage;

namespace TagPage.UnderFire;

/// <summary>Kills the writer again and again on one data folder, and looks after each time whether all it said was written is there once.</summary>
public sealed class Battle(Random random)
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);

    /// <param name="Kills">How often it was killed.</param>
    /// <param name="Told">Writes that it said were done.</param>
    /// <param name="Lost">Of these, not there.</param>
    /// <param name="Doubled">Keys that are there more than once, whether it said so or not.</param>
    /// <param name="Halves">Messages of finders without the email that goes with them: one transaction writes both.</param>
    /// <param name="Faults">What a full check of the database found.</param>
    public sealed record Result(int Kills, int Told, int Lost, int Doubled, int Halves, int Faults)
    {
        public bool IsClean => (Lost, Doubled, Halves, Faults) == (0, 0, 0, 0) && Told > 0;

        public override string ToString() => $"{Kills} kills, {Told} writes acknowledged: {Lost} lost, {Doubled} doubled, {Halves} half written, {Faults} faults of the database";
    }

    public Result Fight(int kills, TextWriter output)
    {
        var result = new Result(0, 0, 0, 0, 0, 0);
        while (result.Kills < kills)
        {
            var folder = new DataFolder(Path.Combine(Path.GetTempPath(), "tagpage-fire-" + Guid.NewGuid().ToString("N")));
            try
            {
                Battlefield.SetUp(folder);
                // A folder of its own for some kills, so that the check of one battle does not outgrow the battle.
                for (var n = 0; n < 20 && result.Kills < kills; n++)
                    result = Add(result, folder, Kill(folder));
            }
            finally
            {
                Directory.Delete(folder.Root, recursive: true);
            }
            output.WriteLine(result);
        }
        return result;
    }

    private List<(string Deed, string Key)> Kill(DataFolder folder)
    {
        var start = new ProcessStartInfo("dotnet") { RedirectStandardOutput = true };
        foreach (var argument in (string[])["exec", typeof(Battle).Assembly.Location, "write", folder.Root])
            start.ArgumentList.Add(argument);
        using var writer = Process.Start(start)!;
        var told = new List<(string, string)>();
        // From the first write on, so that it is killed while it writes and not while it starts.
        using var end = new Timer(_ => writer.Kill());
        while (writer.StandardOutput.ReadLine() is { } line)
        {
            if (line.Split(' ') is [var deed, { Length: 32 } key])
                told.Add((deed, key));
            if (told.Count == 1)
                end.Change(random.Next(1, 300), Timeout.Infinite);
        }
        if (told.Count == 0)
            throw new InvalidOperationException("The writer wrote nothing.");
        writer.WaitForExit(Patience);
        return told;
    }

    private static Result Add(Result so, DataFolder folder, List<(string Deed, string Key)> told)
    {
        using var database = Battlefield.Open(folder);
        return database.Read(c => new Result(so.Kills + 1, so.Told + told.Count,
            so.Lost + Deeds.All.Sum(deed => Lost(c, deed, told)),
            so.Doubled + Deeds.All.Sum(deed => c.ExecuteScalar<int>($"SELECT COUNT(*) FROM (SELECT 1 FROM {deed.Table} WHERE length({deed.Column}) = 32 GROUP BY {deed.Column} HAVING COUNT(*) > 1)")),
            so.Halves + c.ExecuteScalar<int>("SELECT COUNT(*) FROM found_event e WHERE NOT EXISTS (SELECT 1 FROM outbox o WHERE o.id = e.notice_id)"),
            so.Faults + (c.ExecuteScalar<string>("PRAGMA integrity_check(1)") == "ok" ? 0 : 1) + c.Query("PRAGMA foreign_key_check").Count()));
    }

    private static int Lost(SqliteConnection connection, Deeds deed, List<(string Deed, string Key)> told)
    {
        var there = connection.Query<string>($"SELECT {deed.Column} FROM {deed.Table}").ToHashSet();
        return told.Count(t => t.Deed == deed.Name && !there.Contains(t.Key));
    }
}
