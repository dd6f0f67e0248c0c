namespace TagPage.Records.Labels;

/// <summary>What a racket's label is for.</summary>
public enum LabelPurpose { Done, Return, Measures, Waiting }

/// <summary>How labels come out of the printer.</summary>
public enum LabelPages { OneEach, Strip, Sheet }
