namespace TagPage.Core.Jobs;

/// <summary>A job's way over the bench. Cancelled jobs keep their ticket number.</summary>
public enum JobState { Waiting, OnMachine, Strung, Collected, Cancelled }
