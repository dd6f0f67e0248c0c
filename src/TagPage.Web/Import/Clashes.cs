using TagPage.Records.Import;
using TagPage.Web.Csv;

namespace TagPage.Web.Import;

/// <summary>What the shop already has, as problems of the files' lines.</summary>
internal static class Clashes
{
    public static Problem Of(ImportClash clash) => clash switch
    {
        ImportClash.Ticket { Job: var job } => new(JobSheet.File, job.Line, JobColumns.Ticket.Name,
            $"The shop already has a job with ticket {job.Ticket}. Remove this line, or give it another number."),
        ImportClash.Tag { Row: var tag } => new(RacketSheet.File, tag.Line, tag.Column,
            $"The shop already has the tag {tag.Code.Display}. Remove it here."),
        ImportClash.LiveTag { Row: var tag } => new(RacketSheet.File, tag.Line, tag.Column,
            "This racket has a live tag already. Move the code to retired_tags, or remove it here and replace the tag on the racket’s page."),
        ImportClash.Number { Racket: var racket } => new(RacketSheet.File, racket.Line, RacketSheet.NumberColumn,
            $"{racket.Player!.Name} already has another racket {racket.Number}. Give this one another number, or correct its sport and frame."),
        ImportClash.Material { Kind: var kind } => new(StringSheet.File, kind.Line, StringSheet.Material.Name,
            "The shop has a string of this name and gauge in another material. Correct the material, or give this string another name."),
        _ => throw new ArgumentOutOfRangeException(nameof(clash)),
    };
}
