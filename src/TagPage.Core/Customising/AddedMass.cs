namespace TagPage.Core.Customising;

/// <summary>A small mass on a frame, both sides of a pair counted together.</summary>
/// <param name="Grams">Below zero where it is taken away.</param>
/// <param name="AtCm">Distance from the butt in cm.</param>
/// <param name="OffAxisCm">Distance from the frame's long axis in cm.</param>
public readonly record struct AddedMass(double Grams, double AtCm, double OffAxisCm = 0)
{
    /// <summary>By how much it changes the moment of inertia about the long axis, in kg·cm²: m·y². Not the twist weight itself, which nobody has measured.</summary>
    public double TwistChange => Grams / 1000 * OffAxisCm * OffAxisCm;
}
