namespace TagPage.Core.Customising.Planning;

/// <summary>One way of changing a frame in pieces that can be cut and weighed, as a <see cref="Judge"/> sees it.</summary>
/// <param name="Grams">At each of its places, and then off each of its removable pieces.</param>
/// <param name="After">What it measures then.</param>
/// <param name="Missed">Of what was given, as measuring tells it.</param>
/// <param name="Mass">What its grams have to win.</param>
/// <param name="Work">What its pieces have to win.</param>
/// <param name="Off">Sum of what is missed, and of its squares.</param>
internal sealed record Way(double[] Grams, Body After, double Missed, double Mass, double Work, (double Sum, double Squared) Off);
