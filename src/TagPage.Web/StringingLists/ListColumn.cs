namespace TagPage.Web.StringingLists;

/// <summary>What a column of a list says about a stringing.</summary>
public enum ListColumn
{
    /// <summary>Becomes a line of the job's note, with its heading.</summary>
    Note,
    LeaveOut,
    Client,
    Phone,
    Mail,
    Player,
    Frame,
    Racket,
    Sport,
    Day,
    Strings,
    Crosses,
    Gauge,
    Tension,
    CrossesTension,
    TensionUnit,
    Price,
    Ticket,
    StrungBy,
}

internal static class ListColumns
{
    public static readonly ListColumn[] Needed = [ListColumn.Client, ListColumn.Day];

    /// <summary>May be given to several columns.</summary>
    public static bool Repeats(this ListColumn column) => column is ListColumn.Note or ListColumn.LeaveOut;

    public static string Name(this ListColumn column) => column switch
    {
        ListColumn.Note => "goes into the job’s note",
        ListColumn.LeaveOut => "is left out",
        ListColumn.Client => "client",
        ListColumn.Phone => "client’s phone",
        ListColumn.Mail => "client’s email",
        ListColumn.Player => "player, if not the client",
        ListColumn.Frame => "racket: maker and model",
        ListColumn.Racket => "racket: its number or tape colour",
        ListColumn.Sport => "sport",
        ListColumn.Day => "day it was strung",
        ListColumn.Strings => "string, or mains / crosses",
        ListColumn.Crosses => "string of the crosses",
        ListColumn.Gauge => "gauge of the string",
        ListColumn.Tension => "tension, or mains/crosses",
        ListColumn.CrossesTension => "tension of the crosses",
        ListColumn.TensionUnit => "unit of the tension",
        ListColumn.Price => "price",
        ListColumn.Ticket => "ticket number",
        ListColumn.StrungBy => "who strung it",
        _ => throw new ArgumentOutOfRangeException(nameof(column)),
    };
}
