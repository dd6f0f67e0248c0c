namespace TagPage.Web.Forms;

public enum FieldKind { Text, Number, Date, Tel, Mail, Password, Area, Select, Radio, Check, Files }
