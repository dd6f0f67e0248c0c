using TagPage.Labels.Photos;
using TagPage.Records.Condition;
using TagPage.Records.Import;

namespace TagPage.Web.Photos;

/// <summary>Photos that were sent with a form: redrawn at once, and kept until the form is saved.</summary>
public sealed class PhotoDesk(Uploads uploads)
{
    /// <summary>Bytes of a form that holds as many photos as a ticket may, and a little more.</summary>
    public const int MostBytes = (PhotoStore.MostOfJob * Photo.MostBytes) + 5_000_000;

    private const string Small = "-small.jpg", Picture = ".jpg";

    /// <summary>Those that can be kept, and why the others cannot.</summary>
    public static async Task<(IReadOnlyList<PhotoEntry> Photos, IReadOnlyList<string> Faults)> Read(IReadOnlyList<IFormFile> files)
    {
        if (files.Count > PhotoStore.MostOfJob)
            return ([], [$"These are {files.Count} photos. Send up to {PhotoStore.MostOfJob}."]);
        var (photos, faults) = (new List<PhotoEntry>(), new List<string>());
        foreach (var file in files)
        {
            var (photo, fault) = file.Length > Photo.MostBytes ? Photo.TooLarge : Photo.Read(await Bytes(file));
            if (photo is not null)
                photos.Add(new PhotoEntry { Width = photo.Width, Height = photo.Height, Picture = photo.Picture, Small = photo.Small });
            else
                faults.Add($"“{Shown(file.FileName)}” is not kept. {fault}");
        }
        return (photos, faults);
    }

    private static async Task<byte[]> Bytes(IFormFile file)
    {
        using var stream = new MemoryStream((int)file.Length);
        await file.CopyToAsync(stream);
        return stream.ToArray();
    }

    private static string Shown(string name) => name.Length > 40 ? name[..40] + "…" : name;

    /// <summary>Keeps photos for an hour with those of a key; returns the key, a new one where the old one has run out.</summary>
    public string Keep(string? key, IReadOnlyList<PhotoEntry> photos)
    {
        var count = Kept(key)?.Count ?? 0;
        var files = photos.Index().SelectMany(one => Files(count + one.Index, one.Item)).ToDictionary();
        if (key is null || uploads.FolderOf(key) is null)
            return uploads.Keep(files);
        foreach (var (name, bytes) in files)
            uploads.Add(key, name, bytes);
        return key;
    }

    private static IEnumerable<KeyValuePair<string, byte[]>> Files(int index, PhotoEntry photo)
    {
        var name = FormattableString.Invariant($"{index:00}-{photo.Width}-{photo.Height}");
        yield return KeyValuePair.Create(name + Picture, photo.Picture);
        yield return KeyValuePair.Create(name + Small, photo.Small);
    }

    /// <summary>Those of a key, in the order in which they were sent; null where there are none, or no longer.</summary>
    public IReadOnlyList<PhotoEntry>? Kept(string? key) => key is not null && uploads.FolderOf(key) is { } folder
        ? [.. Directory.GetFiles(folder, "*" + Small).Order(StringComparer.Ordinal).Select(Entry)]
        : null;

    private static PhotoEntry Entry(string small)
    {
        var picture = small[..^Small.Length] + Picture;
        var sides = Path.GetFileNameWithoutExtension(picture).Split('-').Select(int.Parse).ToArray();
        return new PhotoEntry { Width = sides[1], Height = sides[2], Picture = File.ReadAllBytes(picture), Small = File.ReadAllBytes(small) };
    }

    public void Remove(string? key)
    {
        if (key is not null)
            uploads.Remove(key);
    }
}
