namespace TagPage.Core.Customising;

/// <summary>Where a swing weight comes from: a machine, a pendulum with a stop-watch, or sums.</summary>
public enum SwingSource { Machine, Pendulum, WorkedOut }
