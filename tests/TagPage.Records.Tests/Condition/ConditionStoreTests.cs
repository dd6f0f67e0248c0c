using TagPage.Core.Rackets;
using TagPage.Records.Condition;
using TagPage.Records.Jobs;
using TagPage.Records.Storage;
using TagPage.Records.Tests.Cast;

namespace TagPage.Records.Tests.Condition;

public sealed class ConditionStoreTests : IDisposable
{
    private readonly Street _street = new();
    private readonly ConditionStore _conditions;
    private readonly PhotoStore _photos;

    public ConditionStoreTests() => (_conditions, _photos) = (new ConditionStore(_street.Database, _street.Time), new PhotoStore(_street.Database, _street.Time));

    public void Dispose() => _street.Dispose();

    private static PhotoEntry Photo(byte last = 0) => new() { Width = 4, Height = 3, Small = [0xFF, 0xD8, 0xFF, last], Picture = [0xFF, 0xD8, 0xFF, 0xE0, last] };

    private static PhotoEntry[] Photos(int count) => [.. Enumerable.Range(0, count).Select(i => Photo((byte)i))];

    [Fact]
    public void What_was_looked_at_is_kept_part_by_part_and_what_was_not_is_left_open()
    {
        _conditions.Note(Who.Shop, _street.Strung, new() { Grommets = PartState.Worn, GrommetsWords = "two split at the top", Grip = PartState.Fine });

        var row = _conditions.OfJob(Who.Shop, _street.Strung)!;
        Assert.Equal([new(RacketPart.Grommets, PartState.Worn, "two split at the top"), new(RacketPart.Grip, PartState.Fine, "")], row.Parts);
        Assert.Equal((1, null), (row.Version, row.Frame));
    }

    [Fact]
    public void Two_tablets_do_not_write_over_each_other()
    {
        _conditions.Note(Who.Shop, _street.Strung, new() { Grip = PartState.Worn });

        _street.Refused<SavedMeanwhile>(() => _conditions.Note(Who.Shop, _street.Strung, new() { Grip = PartState.Fine }));

        Assert.IsType<Outcome.Done>(_conditions.Note(Who.Shop, _street.Strung, new() { Version = 1, Grip = PartState.Fine }));
        Assert.Equal((PartState.Fine, 2), (_conditions.OfJob(Who.Shop, _street.Strung)!.Grip, _conditions.OfJob(Who.Shop, _street.Strung)!.Version));
    }

    [Fact]
    public void Nothing_noted_makes_no_row_and_the_same_again_changes_nothing()
    {
        _conditions.Note(Who.Shop, _street.Strung, new());
        Assert.Equal(0, _street.Records.Count("condition"));

        _conditions.Note(Who.Shop, _street.Strung, new() { Bumper = PartState.Damaged });
        _conditions.Note(Who.Shop, _street.Strung, new() { Version = 1, Bumper = PartState.Damaged });
        Assert.Equal(1, _conditions.OfJob(Who.Shop, _street.Strung)!.Version);
    }

    [Fact]
    public void Who_noted_added_and_removed_stands_with_the_ticket()
    {
        _street.Records.Change("""
            INSERT INTO account (id, name, normalized_name, password_hash, security_stamp, concurrency_stamp, role, made_at)
            VALUES ('bram', 'bram', 'BRAM', '', '', '', 'Bench', '2026-11-25T09:00:00.000Z')
            """);
        var bram = Who.Bench("bram");

        _conditions.Note(bram, _street.Strung, new() { Grip = PartState.Worn });
        _photos.Add(bram, _street.Strung, FormKey.New(), Photos(1));
        _photos.Remove(bram, 1);

        Assert.Equal("Inspected,Photographed,PhotoRemoved", _street.Records.Text("SELECT group_concat(deed) FROM (SELECT deed FROM job_deed WHERE made_by = 'bram' ORDER BY id)"));
    }

    [Fact]
    public void Form_with_photos_that_is_sent_twice_adds_them_once()
    {
        var key = FormKey.New();
        _photos.Add(Who.Shop, _street.Strung, key, Photos(2));

        Assert.IsType<Outcome.Done>(_photos.Add(Who.Shop, _street.Strung, key, Photos(2)));

        Assert.Equal([1L, 2L], _conditions.OfJob(Who.Shop, _street.Strung)!.Photos.Select(photo => photo.Id));
        Assert.Equal([0xFF, 0xD8, 0xFF, 0xE0, 1], _photos.Picture(Who.Shop, 2)!);
        Assert.Equal([0xFF, 0xD8, 0xFF, 1], _photos.Small(Who.Shop, 2)!);
    }

    [Fact]
    public void Ticket_holds_so_many_photos_and_says_how_many_more()
    {
        _photos.Add(Who.Shop, _street.Strung, FormKey.New(), Photos(PhotoStore.MostOfJob - 1));

        var why = _street.Refused<TooManyPhotos>(() => _photos.Add(Who.Shop, _street.Strung, FormKey.New(), Photos(2)));

        Assert.Equal((PhotoStore.MostOfJob, 1), (why.Most, why.Room));
    }

    [Fact]
    public void Racket_shows_each_time_it_came_in_with_something_the_newest_first()
    {
        var (second, third) = (_street.Records.Job(_street.Racket), _street.Records.Job(_street.Racket));
        _street.Records.Change("UPDATE job SET received_on = '2026-11-10' WHERE id = @second; UPDATE job SET received_on = '2026-10-01' WHERE id = @Strung", new { second, _street.Strung });
        _conditions.Note(Who.Shop, _street.Strung, new() { FrameWords = "paint chipped" });
        _photos.Add(Who.Shop, second, FormKey.New(), Photos(1));

        Assert.Equal([second, _street.Strung], _conditions.OfRacket(Who.Shop, _street.Racket).Select(row => row.JobId));
        Assert.DoesNotContain(_conditions.OfRacket(Who.Shop, _street.Racket), row => row.JobId == third);
    }

    [Fact]
    public void Ticket_with_photos_is_not_deleted_and_one_with_a_note_goes_with_it()
    {
        var (job, deletes) = (_street.Records.Job(_street.Racket), new JobDeleteStore(_street.Database));
        _conditions.Note(Who.Shop, job, new() { Grip = PartState.Worn });
        _photos.Add(Who.Shop, job, FormKey.New(), Photos(1));
        _street.Refused<PhotosOnIt>(() => deletes.Delete(Who.Shop, job));

        _photos.Remove(Who.Shop, 1);

        Assert.IsType<Outcome.Done>(deletes.Delete(Who.Shop, job));
        Assert.Equal(0, _street.Records.Count("condition"));
    }
}
