using System.Buffers.Binary;
using System.Text;
using SkiaSharp;
using TagPage.Labels.Photos;

namespace TagPage.Labels.Tests.Photos;

public class PhotoTests
{
    private static readonly SKColor[] Corners = [SKColors.Red, SKColors.Lime, SKColors.Blue, SKColors.Yellow];

    /// <summary>Red, lime, blue and yellow quarters: top left, top right, bottom left, bottom right.</summary>
    private static byte[] Picture(int width, int height, SKEncodedImageFormat format = SKEncodedImageFormat.Jpeg)
    {
        using var bitmap = new SKBitmap(width, height);
        using var canvas = new SKCanvas(bitmap);
        for (var i = 0; i < 4; i++)
        {
            using var paint = new SKPaint { Color = Corners[i] };
            canvas.DrawRect(SKRect.Create(i % 2 * width / 2f, i / 2 * height / 2f, width / 2f, height / 2f), paint);
        }
        canvas.Flush();
        using var data = bitmap.Encode(format, 95);
        return data.ToArray();
    }

    /// <summary>
    /// Exif as a phone writes it, made by hand: TIFF head, a first directory with maker and orientation, and one with the place where
    /// it was taken (Exif 2.32: 4.5.2, 4.6.2, tags 271, 274, 34853; GPS tags 1 to 4).
    /// </summary>
    private static byte[] Exif(ushort orientation)
    {
        var tiff = new byte[200];
        "II*\0"u8.CopyTo(tiff);
        BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(4), 8);
        Directory(tiff, 8, (271, 2, 10, 60), (274, 3, 1, orientation), (34853, 4, 1, 80));
        "PETRELCAM\0"u8.CopyTo(tiff.AsSpan(60));
        Directory(tiff, 80, (1, 2, 2, 'N'), (2, 5, 3, 140), (3, 2, 2, 'W'), (4, 5, 3, 164));
        uint[] place = [54, 1, 58, 1, 4242, 100, 1, 1, 36, 1, 3131, 100];
        for (var i = 0; i < place.Length; i++)
            BinaryPrimitives.WriteUInt32LittleEndian(tiff.AsSpan(140 + 4 * i), place[i]);
        return [.. "Exif\0\0"u8, .. tiff];
    }

    private static void Directory(byte[] tiff, int at, params (ushort Tag, ushort Type, uint Count, uint Value)[] entries)
    {
        BinaryPrimitives.WriteUInt16LittleEndian(tiff.AsSpan(at), (ushort)entries.Length);
        foreach (var (index, (tag, type, count, value)) in entries.Index())
        {
            var entry = tiff.AsSpan(at + 2 + 12 * index);
            BinaryPrimitives.WriteUInt16LittleEndian(entry, tag);
            BinaryPrimitives.WriteUInt16LittleEndian(entry[2..], type);
            BinaryPrimitives.WriteUInt32LittleEndian(entry[4..], count);
            BinaryPrimitives.WriteUInt32LittleEndian(entry[8..], value);
        }
    }

    /// <summary>With segments right after its start.</summary>
    private static byte[] With(byte[] jpeg, params (byte Marker, byte[] Body)[] segments) =>
        [.. jpeg[..2], .. segments.SelectMany(s => new byte[] { 0xFF, s.Marker, (byte)((s.Body.Length + 2) >> 8), (byte)(s.Body.Length + 2) }.Concat(s.Body)), .. jpeg[2..]];

    private static Photo Read(byte[] upload)
    {
        var (photo, fault) = Photo.Read(upload);
        Assert.Null(fault);
        return photo!;
    }

    private static List<byte> Markers(byte[] jpeg)
    {
        var found = new List<byte>();
        for (var at = 2; jpeg[at + 1] != 0xDA; at += 2 + BinaryPrimitives.ReadUInt16BigEndian(jpeg.AsSpan(at + 2)))
            found.Add(jpeg[at + 1]);
        return found;
    }

    [Fact]
    public void Place_phone_and_notes_are_gone_from_what_is_kept()
    {
        var sent = With(Picture(640, 480), (0xE1, Exif(1)), (0xE1, [.. "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>Odalys</x:xmpmeta>"u8]), (0xFE, [.. "Odalys at home"u8]));
        Assert.Contains("PETRELCAM", Encoding.Latin1.GetString(sent), StringComparison.Ordinal);
        byte[] latitude = [54, 0, 0, 0, 1, 0, 0, 0, 58, 0, 0, 0];
        Assert.True(sent.AsSpan().IndexOf((ReadOnlySpan<byte>)latitude) > 0);

        var photo = Read([.. sent, .. "PK and what somebody hung on"u8]);

        foreach (var kept in new[] { photo.Picture, photo.Small })
        {
            var text = Encoding.Latin1.GetString(kept);
            Assert.All(["Exif", "PETRELCAM", "Odalys", "xap", "hung on"], word => Assert.DoesNotContain(word, text, StringComparison.Ordinal));
            Assert.True(kept.AsSpan().IndexOf((ReadOnlySpan<byte>)latitude) < 0);
            Assert.All(Markers(kept), marker => Assert.Contains(marker, new byte[] { 0xE0, 0xDB, 0xC0, 0xC4 }));
        }
    }

    /// <summary>Exif 2.32, tag 274: on which side of what is seen the first row lies, and on which the first column.</summary>
    [Theory]
    [InlineData(1, "top", "left")]
    [InlineData(2, "top", "right")]
    [InlineData(3, "bottom", "right")]
    [InlineData(4, "bottom", "left")]
    [InlineData(5, "left", "top")]
    [InlineData(6, "right", "top")]
    [InlineData(7, "right", "bottom")]
    [InlineData(8, "left", "bottom")]
    public void Photo_stands_upright_however_the_phone_was_held(ushort orientation, string row, string column)
    {
        var photo = Read(With(Picture(320, 160), (0xE1, Exif(orientation))));

        var lies = row is "left" or "right";
        Assert.Equal(lies ? (160, 320) : (320, 160), (photo.Width, photo.Height));
        using var seen = SKBitmap.Decode(photo.Picture);
        string[] sides = [row, column];
        AssertCorner(seen, sides, Corners[0]);
        AssertCorner(seen, [row, Opposite(column)], Corners[1]);
        AssertCorner(seen, [Opposite(row), column], Corners[2]);
        AssertCorner(seen, [Opposite(row), Opposite(column)], Corners[3]);
    }

    private static string Opposite(string side) => side switch { "top" => "bottom", "bottom" => "top", "left" => "right", _ => "left" };

    private static void AssertCorner(SKBitmap seen, string[] sides, SKColor colour)
    {
        var pixel = seen.GetPixel(sides.Contains("left") ? 20 : seen.Width - 20, sides.Contains("top") ? 20 : seen.Height - 20);
        Assert.All([(pixel.Red, colour.Red), (pixel.Green, colour.Green), (pixel.Blue, colour.Blue)], pair => Assert.InRange(Math.Abs(pair.Item1 - pair.Item2), 0, 30));
    }

    [Theory]
    [InlineData(SKEncodedImageFormat.Jpeg)]
    [InlineData(SKEncodedImageFormat.Png)]
    [InlineData(SKEncodedImageFormat.Webp)]
    public void Large_photo_becomes_small_in_pixels_and_bytes(SKEncodedImageFormat format)
    {
        var photo = Read(Picture(4000, 3000, format));

        Assert.InRange(photo.Width, 1400, 1600);
        Assert.Equal(0.75, (double)photo.Height / photo.Width, 2);
        Assert.InRange(photo.Picture.Length, 1000, 350_000);
        Assert.InRange(photo.Small.Length, 500, 30_000);
        using var small = SKBitmap.Decode(photo.Small);
        Assert.Equal(320, Math.Max(small.Width, small.Height));
    }

    [Fact]
    public void Noise_stays_within_what_the_records_take()
    {
        using var bitmap = new SKBitmap(3000, 3000);
        var random = new Random(7);
        bitmap.Pixels = [.. Enumerable.Range(0, 9_000_000).Select(_ => new SKColor((uint)random.Next() | 0xFF000000))];
        using var data = bitmap.Encode(SKEncodedImageFormat.Jpeg, 90);

        var photo = Read(data.ToArray());

        Assert.InRange(photo.Picture.Length, 1, 1_000_000);
        Assert.InRange(photo.Small.Length, 1, 100_000);
    }

    [Fact]
    public void What_is_transparent_is_white()
    {
        using var bitmap = new SKBitmap(64, 64);
        using var data = bitmap.Encode(SKEncodedImageFormat.Png, 100);

        using var seen = SKBitmap.Decode(Read(data.ToArray()).Picture);

        Assert.True(seen.GetPixel(32, 32).Red > 250);
    }

    [Theory]
    [InlineData("")]
    [InlineData("no photo at all")]
    [InlineData("<svg xmlns='http://www.w3.org/2000/svg' width='9' height='9'><path d='M0 0h9v9z'/></svg>")]
    [InlineData("<!doctype html><script>alert(1)</script>")]
    [InlineData("GIF89a\u0001\0\u0001\0\0\0\0;")]
    [InlineData("%PDF-1.7")]
    public void What_is_no_photo_is_refused_in_a_sentence(string text) =>
        Assert.Equal((null, "It is no photo that can be read. Send a JPEG, PNG or WebP."), Photo.Read(Encoding.Latin1.GetBytes(text)));

    [Fact]
    public void Photo_of_which_half_arrived_is_refused()
    {
        var whole = Picture(1200, 900);

        Assert.Contains("half of it", Photo.Read(whole[..(whole.Length / 2)]).Fault, StringComparison.Ordinal);
        Assert.NotNull(Photo.Read(whole[..100]).Fault);
        Assert.NotNull(Photo.Read(Picture(1200, 900, SKEncodedImageFormat.Png)[..400]).Fault);
    }

    /// <summary>A head alone that says how large it would be: nothing of that size is ever made room for.</summary>
    [Fact]
    public void Huge_photo_is_refused_by_its_head_alone()
    {
        var jpeg = Picture(64, 64);
        var frame = jpeg.AsSpan().IndexOf(new byte[] { 0xFF, 0xC0 });
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 5), 65000);
        BinaryPrimitives.WriteUInt16BigEndian(jpeg.AsSpan(frame + 7), 65000);
        var before = GC.GetTotalAllocatedBytes();

        var fault = Photo.Read(jpeg).Fault;

        Assert.Equal("It is 65000 × 65000 pixels. Send one of up to 51 million pixels.", fault);
        Assert.True(GC.GetTotalAllocatedBytes() - before < 10_000_000);
    }

    [Fact]
    public void Large_file_is_refused() => Assert.Equal("It has more than 20 MB. Send it smaller.", Photo.Read(new byte[Photo.MostBytes + 1]).Fault);

    [Fact]
    public void Thousand_damaged_photos_are_taken_or_refused_and_nothing_breaks()
    {
        var random = new Random(14);
        var good = new[] { SKEncodedImageFormat.Jpeg, SKEncodedImageFormat.Png, SKEncodedImageFormat.Webp }.Select(format => Picture(90, 60, format)).ToList();
        for (var i = 0; i < 1000; i++)
        {
            var bytes = (byte[])good[i % 3].Clone();
            for (var n = 0; n <= random.Next(8); n++)
                bytes[random.Next(bytes.Length)] = (byte)random.Next(256);
            var (photo, fault) = Photo.Read(bytes);
            Assert.True(photo is null != fault is null);
        }
    }
}
