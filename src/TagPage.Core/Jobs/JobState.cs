namespace TagPage.Core.Jobs;

/// <summary>A job's stages at the bench. Cancelled jobs keep their ticket number.</summary>
public enum JobState { Waiting, OnMachine, Strung, Collected, Cancelled }
