using System.Text;
using TagPage.Web.Import;

namespace TagPage.Web.Tests.Import;

/// <summary>A small good set of files that tests spoil in one place.</summary>
internal sealed class Spreadsheet
{
    private readonly Dictionary<string, string> _files = new()
    {
        ["clients.csv"] = """
            client,name,phone,mail
            C1,Odalys Ferran,020 7946 0958,odalys@ferran.example
            C2,Tamsin Quill,,
            """,
        ["players.csv"] = """
            player,client,name,junior,times_a_week,hours_a_time,hitting,rule,every_weeks
            P1,C1,Pim,yes,2,1.5,hard,,
            P2,C2,Tamsin,no,1,1,,every_weeks,12
            """,
        ["strings.csv"] = """
            string,name,material,gauge_mm
            S1,Heron Spin,polyester,1.25
            S2,Heron Soft,multifilament,1.30
            """,
        ["rackets.csv"] = """
            racket,player,number,state,sport,frame,head_size,mains,crosses,length_cm,tag,retired_tags
            R1,P1,1,in_turn,tennis,Pellmore Meadow 98,98,16,19,68.5,0MWF2SBY7KE,W3K21JB5FH1 VMFQQHM1MWF
            R2,P1,2,sold,tennis,Pellmore Meadow 98,98,16,19,68.5,,
            """,
        ["specs.csv"] = """
            racket,measured_on,weight_g,stiffness,stiffness_scale
            R1,2026-01-05,318.5,64,frame bench
            """,
        ["jobs.csv"] = """
            ticket,racket,state,mains_string,crosses_string,mains_tension,crosses_tension,tension_unit,received_on,strung_on,collected_on,price,reading,instrument,ended_on,ended_how
            901,R1,collected,S1,S2,52,50,lb,2026-09-01,2026-09-02,2026-09-03,24.50,57,bench gauge,2026-11-20,wear
            902,R1,waiting,S1,,52,,lb,2026-11-24,,,24.50,,,,
            """,
    };

    public static IEnumerable<string> Names => new Spreadsheet()._files.Keys;

    public string this[string file]
    {
        get => _files[file];
        set => _files[file] = value;
    }

    public Spreadsheet Without(string file)
    {
        _files.Remove(file);
        return this;
    }

    /// <summary>Replaces a piece of text that is in the file exactly once.</summary>
    public Spreadsheet With(string file, string text, string instead)
    {
        Assert.Equal(2, _files[file].Split(text).Length);
        _files[file] = _files[file].Replace(text, instead, StringComparison.Ordinal);
        return this;
    }

    /// <summary>Calls a racket by a key that a download uses.</summary>
    public Spreadsheet Keyed(string key, long id)
    {
        foreach (var file in new[] { "rackets.csv", "jobs.csv" })
            _files[file] = _files[file].Replace($"{key},", $"{id},", StringComparison.Ordinal);
        return this;
    }

    /// <summary>Puts a cell of a line (2 is the first under the header) to something else, adding the column where it is missing.</summary>
    public Spreadsheet Cell(string file, int line, string column, string value)
    {
        var lines = _files[file].Split('\n').Select(l => l.Split(',').ToList()).ToList();
        var index = lines[0].IndexOf(column);
        if (index < 0)
        {
            index = lines[0].Count;
            for (var i = 0; i < lines.Count; i++)
                lines[i].Add(i == 0 ? column : "");
        }
        lines[line - 1][index] = value;
        _files[file] = string.Join('\n', lines.Select(l => string.Join(',', l)));
        return this;
    }

    public ImportFiles ToFiles()
    {
        var files = new ImportFiles();
        foreach (var (name, text) in _files)
            Assert.True(files.TryAdd(name, Encoding.UTF8.GetBytes(text)));
        return files;
    }
}
