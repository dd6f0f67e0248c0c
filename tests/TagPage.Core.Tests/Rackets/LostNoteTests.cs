using TagPage.Core.Rackets;

namespace TagPage.Core.Tests.Rackets;

public sealed class LostNoteTests
{
    private static readonly string[] Names = ["Odalys Ferran", "Željko Brodarac", "María de la Montaña", "鷺沢 澪", "Bo Li"];

    [Theory]
    [InlineData("")]
    [InlineData("Left at court 3 on Sunday. A reward of 20 waits at the desk!")]
    [InlineData("Perdida en la pista de la derecha.")]
    [InlineData("コート3に忘れました。")]
    [InlineData("Violet tape, 12345")]
    public void Note_without_a_way_to_a_person_can_be_shown(string note) => Assert.Null(LostNote.Fault(note, Names));

    [Theory]
    [InlineData("See example.org", LostNoteFault.Link)]
    [InlineData("http://x", LostNoteFault.Link)]
    [InlineData("WWW.example", LostNoteFault.Link)]
    [InlineData("me@home", LostNoteFault.MailSign)]
    [InlineData("me＠home", LostNoteFault.MailSign)]
    [InlineData("Ring 123 456", LostNoteFault.Digits)]
    [InlineData("Ring １２３４５６", LostNoteFault.Digits)]
    [InlineData("Ring ١٢٣٤٥٦", LostNoteFault.Digits)]
    [InlineData("Court 1, 2, 3, 4, 5 or 6", LostNoteFault.Digits)]
    [InlineData("It belongs to odalys", LostNoteFault.Name)]
    [InlineData("ZELJKO's racket", LostNoteFault.Name)]
    [InlineData("Ask for Bo.", LostNoteFault.Name)]
    [InlineData("これは澪のラケットです。鷺沢まで", LostNoteFault.Name)]
    [InlineData("one\ntwo", LostNoteFault.NotPlain)]
    [InlineData("one\u202Etwo", LostNoteFault.NotPlain)]
    [InlineData("Oda\u200Blys", LostNoteFault.NotPlain)]
    public void Note_that_leads_to_a_person_is_refused(string note, LostNoteFault fault) => Assert.Equal(fault, LostNote.Fault(note, Names));

    [Fact]
    public void Note_has_room_for_140_characters()
    {
        Assert.Null(LostNote.Fault(new string('x', 140), Names));
        Assert.Equal(LostNoteFault.TooLong, LostNote.Fault(new string('x', 141), Names));
    }

    [Fact]
    public void Name_inside_another_word_is_no_name() => Assert.Null(LostNote.Fault("Left in the boathouse", Names));
}
