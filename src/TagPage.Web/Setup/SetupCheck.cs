using TagPage.Records.Backups;
using TagPage.Records.Shop;
using TagPage.Records.Storage;
using TagPage.Records.Troubles;
using TagPage.Web.Http;
using TagPage.Web.Mail;
using TagPage.Web.Words;

namespace TagPage.Web.Setup;

/// <summary>Looks at everything around the program that an owner may have set up wrong, and says in plain words what it found.</summary>
public sealed class SetupCheck(PublicAddress address, AddressCheck call, MailProbe mail, MailSettings mailbox, ShopStore shops, DataFolder data, BackupStore backups, TroubleStore troubles, DatabaseCheck records, ShopClock clock)
{
    /// <summary>Nothing was there before this program was written.</summary>
    private static readonly DateTimeOffset Beginning = new(2026, 11, 1, 0, 0, 0, TimeSpan.Zero);

    /// <param name="isServing">This very process answers at the address; else another one may.</param>
    /// <param name="cancel">When nobody waits any more.</param>
    public async Task<IReadOnlyList<SetupFinding>> All(bool isServing, CancellationToken cancel)
    {
        records.LookClosely();
        var state = backups.State();
        var found = troubles.All(state);
        return
        [
            await Address(isServing, cancel),
            Https(),
            await Mail(cancel),
            OnTheBench("Records", found.FirstOrDefault(t => t is DatabaseDamaged)) ?? Records(),
            OnTheBench("Backups", found.FirstOrDefault(t => t is BackupFailed or BackupOld)) ?? Backups(state),
            OnTheBench("Second folder", found.FirstOrDefault(t => t is SecondBackupFailed)) ?? Second(state),
            OnTheBench("Disk", found.FirstOrDefault(t => t is DiskFilling)) ?? new("Disk", SetupState.Good, $"{BackupWords.Size(DiskRoom.Free(data))} free."),
            Clock(clock.Now, clock.OnTheWall(clock.Now), [.. backups.List().Select(b => b.MadeAt)], shops.Get().TimeZone),
        ];
    }

    /// <summary>What the bench tells is told here in the same words.</summary>
    private SetupFinding? OnTheBench(string what, Trouble? trouble)
    {
        if (trouble is null)
            return null;
        var words = TroubleWords.Of(trouble, at => BackupWords.At(clock.OnTheWall(at)));
        return new(what, trouble.IsGrave ? SetupState.Over : SetupState.Soon, $"{words.What} {words.ToDo}");
    }

    private async Task<SetupFinding> Address(bool isServing, CancellationToken cancel)
    {
        const string what = "Web address";
        if (!address.IsConfigured || address.IsOnlyHere)
            return new(what, SetupState.Soon, $"No address is set that others could reach: tags would carry {address.Base}. Choose one under Settings → Web address before you print tags.");
        var answer = isServing ? await call.Call(address.Base, cancel) : await call.CallAny(address.Base, cancel);
        return answer == AddressAnswer.ThisProgram
            ? new(what, SetupState.Good, $"{address.Base} answers, as seen from this machine. Open it once with a phone that is not on your network.")
            : new(what, SetupState.Over, $"{address.Base}: {AddressWords.Finding(answer)} {(isServing ? "" : "If the shop is not running right now, start it and check again. ")}“Publish” in the manual says how to make an address lead here.");
    }

    private SetupFinding Https() => address.IsHttps
        ? new("Https", SetupState.Good, "The address begins with https, so phones trust it and signing in works from anywhere.")
        : new("Https", SetupState.Soon, "The address does not begin with https: phones show a warning, and signing in works on this machine only. Put a proxy with a certificate in front; “Publish” in the manual says how.");

    private async Task<SetupFinding> Mail(CancellationToken cancel)
    {
        const string what = "Email";
        if (!mailbox.HasServer)
            return new(what, SetupState.Soon, $"No mail server is set: emails become files in {Path.Combine(data.Root, "mail")} and reach nobody. “Email” in the manual says what to set.");
        if (shops.Get().Mail is null)
            return new(what, SetupState.Over, "The shop has no email address, so nothing can be sent. Add one under Settings → The shop.");
        return await mail.WhyNot(cancel) is { } why
            ? new(what, SetupState.Over, why)
            : new(what, SetupState.Good, $"{mailbox.Host} lets the program in. Send yourself a test email under Settings → The program to see that it arrives.");
    }

    private SetupFinding Records() => new DriveInfo(data.Root).DriveFormat is var drive && NetworkDrives.Contains(drive)
        ? new("Records", SetupState.Over, $"{data.Root} is on a network drive ({drive}), where records can get damaged. Move the data folder to a disk of this machine.")
        : new("Records", SetupState.Good, $"They are in {data.Root}. All of them were checked just now and are undamaged.");

    private static readonly string[] NetworkDrives = ["nfs", "nfs4", "cifs", "smb", "smb2", "smbfs", "fuse.sshfs", "9p"];

    private SetupFinding Backups(BackupState state) =>
        File.Exists(data.BackupsPath) ? new("Backups", SetupState.Over, $"{data.BackupsPath} is a file, where the folder for backups should be. Move it away.")
        : Directory.Exists(data.BackupsPath) && !FolderProbe.IsWritable(data.BackupsPath) ? new("Backups", SetupState.Over, $"{data.BackupsPath} cannot be written. Give write permission to the user the program runs as.")
        : state.LastGood is not { } last ? new("Backups", SetupState.Soon, "There is none yet. Make one under Settings → Backups.")
        : new("Backups", SetupState.Good, $"The last one is from {BackupWords.At(clock.OnTheWall(last))}.");

    private static SetupFinding Second(BackupState state) => state.Second is not { } second
        ? new("Second folder", SetupState.Soon, "None is set: if this machine breaks or is stolen, its backups go with it. Choose one under Settings → Backups.")
        : !FolderProbe.IsWritable(second.Folder) ? new("Second folder", SetupState.Over, $"{second.Folder} is not there or cannot be written. If it is on a separate drive, plug that in.")
        : new("Second folder", SetupState.Good, $"{second.Folder} can be written.");

    /// <summary>No other clock is asked: what is on file tells whether this one went back.</summary>
    public static SetupFinding Clock(DateTimeOffset now, DateTimeOffset wall, IReadOnlyList<DateTimeOffset> written, string zone) =>
        now < Beginning ? new("Clock", SetupState.Over, $"This machine’s clock says {BackupWords.At(wall)}. Set it, or better, let the network set it.")
        : written.Any(at => at > now.AddHours(1)) ? new("Clock", SetupState.Over, $"This machine’s clock says {BackupWords.At(wall)}, but something on file is dated later. The clock was wrong then or is wrong now: check it and set it.")
        : new("Clock", SetupState.Good, $"It is {BackupWords.At(wall)} in {zone.Replace('_', ' ')}. If that is wrong, set this machine’s clock, or the time zone under Settings → The shop.");
}
