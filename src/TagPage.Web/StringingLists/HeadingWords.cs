using System.Globalization;
using System.Text;

namespace TagPage.Web.StringingLists;

/// <summary>
/// Guesses what columns hold by their headings: plain words and the trade's in English, Spanish, French, German, Italian, Portuguese,
/// Japanese and Chinese (common practice, no source). Guesses are shown and can be corrected before anything is read.
/// </summary>
public static class HeadingWords
{
    // Longer words first where one holds another; a heading is taken by the first that fits.
    private static readonly (ListColumn Column, string[] Words)[] Known =
    [
        (ListColumn.CrossesTension, ["crosses tension", "cross tension", "tension crosses", "tension cross", "tension travers", "tension horizontales", "quer kg", "querspannung", "spannung quer", "tensione orizzontali", "tensao cruzadas", "横糸テンション", "横线磅数"]),
        (ListColumn.TensionUnit, ["unit", "unidad", "unite", "einheit", "unita", "unidade", "単位", "单位", "lb/kg", "kg/lb"]),
        (ListColumn.Tension, ["tension", "spannung", "bespannungsharte", "harte", "gewicht", "tensione", "tensao", "tensione kg", "libras", "kilos", "kg", "kgs", "lb", "lbs", "pounds", "テンション", "磅数", "磅", "张力"]),
        (ListColumn.Gauge, ["string gauge", "gauge", "string thickness", "thickness", "diameter", "calibre", "grosor", "diametro", "jauge", "diametre", "epaisseur", "saitenstarke", "starke", "durchmesser", "dicke", "calibro", "spessore", "bitola", "espessura", "ゲージ", "太さ", "线径", "粗细", "直径"]),
        (ListColumn.Crosses, ["crosses", "cross", "cross string", "crosses string", "horizontales", "cruzadas", "travers", "quersaite", "quer", "orizzontali", "横糸", "クロス", "横线"]),
        (ListColumn.Strings, ["string", "strings", "mains", "main string", "cuerda", "cuerdas", "cordaje", "corde", "cordes", "cordage", "saite", "saiten", "besaitung", "bespannung", "längssaite", "corda", "cordas", "corde verticali", "encordoamento", "ストリング", "ガット", "メイン", "线", "球线", "竖线"]),
        (ListColumn.Day, ["date", "strung", "strung on", "strung date", "day", "fecha", "dia", "encordado el", "jour", "corde le", "datum", "tag", "bespannt am", "data", "giorno", "incordata il", "encordoada em", "日付", "張り日", "日期", "穿线日期"]),
        (ListColumn.Racket, ["racket no", "racket number", "racquet no", "marking", "mark", "colour", "color", "tape", "numero de raqueta", "numero raquette", "schlagernummer", "schlager nr", "farbe", "numero racchetta", "numero raquete", "番号", "编号"]),
        (ListColumn.Frame, ["racket", "racquet", "rackets", "frame", "model", "raqueta", "modelo", "raquette", "cadre", "modele", "schlager", "rahmen", "modell", "racchetta", "telaio", "modello", "raquete", "ラケット", "フレーム", "球拍", "拍框", "型号"]),
        (ListColumn.Phone, ["phone", "tel", "telephone", "mobile", "telefono", "movil", "portable", "telefon", "handy", "cellulare", "telefone", "telemovel", "電話", "电话", "手机"]),
        (ListColumn.Mail, ["email", "e-mail", "mail", "correo", "courriel", "posta", "メール", "邮箱", "电子邮件"]),
        (ListColumn.Player, ["player", "jugador", "jugadora", "joueur", "joueuse", "spieler", "spielerin", "giocatore", "giocatrice", "jogador", "jogadora", "選手", "プレーヤー", "球员"]),
        (ListColumn.Client, ["client", "customer", "name", "who", "cliente", "nombre", "nom", "kunde", "kundin", "nome", "お客様", "顧客", "名前", "氏名", "客户", "姓名"]),
        (ListColumn.Sport, ["sport", "deporte", "disciplina", "sportart", "esporte", "desporto", "競技", "种目", "運動", "运动"]),
        (ListColumn.Price, ["price", "charge", "amount", "cost", "precio", "importe", "prix", "montant", "preis", "betrag", "prezzo", "importo", "preco", "valor", "料金", "価格", "价格", "金额"]),
        (ListColumn.Ticket, ["ticket", "job no", "job number", "no", "nr", "numero de orden", "auftrag", "auftragsnummer", "伝票番号", "单号"]),
        (ListColumn.StrungBy, ["strung by", "stringer", "technician", "encordador", "cordeur", "bespanner", "bespannt von", "incordatore", "encordoador", "ストリンガー", "穿线师"]),
    ];

    private static readonly Dictionary<string, ListColumn> ByWord = Known.SelectMany(k => k.Words.Select(w => (Word: Plain(w), k.Column))).GroupBy(k => k.Word).ToDictionary(g => g.Key, g => g.First().Column);

    /// <summary>One guess a column; what is not known goes into the note, so that nothing is lost.</summary>
    public static IReadOnlyList<ListColumn> Guess(IReadOnlyList<string> headings)
    {
        var guesses = headings.Select(Of).ToList();
        var taken = new HashSet<ListColumn>();
        for (var i = 0; i < guesses.Count; i++)
            if (!guesses[i].Repeats() && !taken.Add(guesses[i]))
                guesses[i] = ListColumn.Note;
        return guesses;
    }

    private static ListColumn Of(string heading)
    {
        var plain = Plain(heading);
        if (ByWord.TryGetValue(plain, out var exact) || ByWord.TryGetValue(Plain(heading.Split('(', '[')[0]), out exact))
            return exact;
        var words = plain.Split(' ');
        return Known.SelectMany(k => k.Words.Select(w => (Word: Plain(w), k.Column))).Where(k => k.Word.Length > 2 && (words.Contains(k.Word) || (k.Word[0] > '\u2E80' && plain.Contains(k.Word, StringComparison.Ordinal))))
            .Select(k => (ListColumn?)k.Column).FirstOrDefault() ?? ListColumn.Note;
    }

    /// <summary>Lower case without accents, marks as blanks: how headings are compared and remembered.</summary>
    public static string Plain(string heading)
    {
        var plain = new StringBuilder();
        foreach (var c in heading.Normalize(NormalizationForm.FormKC).ToLowerInvariant().Normalize(NormalizationForm.FormD))
            if (CharUnicodeInfo.GetUnicodeCategory(c) != UnicodeCategory.NonSpacingMark)
                plain.Append(char.IsLetterOrDigit(c) ? c : ' ');
        return string.Join(' ', plain.ToString().Normalize(NormalizationForm.FormC).Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }
}
