using Microsoft.AspNetCore.Mvc;
using TagPage.Records.Events;
using TagPage.Records.Storage;
using TagPage.Web.Http;
using TagPage.Web.Http.Forms;
using TagPage.Web.Http.SignIn;

namespace TagPage.Web.Pages.Desk;

/// <summary>A page of an event's desk, for the shop and the event's helpers; for everybody else there is none.</summary>
public abstract class DeskPage(DeskStore desks, LiveDesks live) : RecordPage<DeskBoard>
{
    protected DeskStore Desks { get; } = desks;

    /// <summary>What is shown is at least as new; taken before it was read.</summary>
    public string Mark { get; private set; } = "";

    public string Home => $"/desk/{Id}";

    protected Who Me => User.AtDesk();

    protected override DeskBoard? Find(long id)
    {
        Mark = live.Mark(id);
        var board = Desks.Get(Me, id);
        ViewData["Board"] = board;
        return board;
    }

    /// <summary>Set where a technician is asked whether a second racket goes on the machine.</summary>
    public StillOnMachine? Second { get; private set; }

    protected IActionResult Taken(Outcome outcome, string address, string sentence)
    {
        Second = (outcome as Outcome.Refused)?.Why as StillOnMachine;
        return Done(outcome, address, sentence);
    }

    protected IActionResult Done(Outcome outcome, string address, string sentence) =>
        this.After(outcome, _ => this.GoOn(address, sentence));
}
