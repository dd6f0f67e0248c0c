namespace TagPage.Web.Http.Forms;

public enum FieldKind { Text, Number, Date, Time, Tel, Mail, Password, Pin, Area, Select, Radio, Check, Files, Photos, Camera }
