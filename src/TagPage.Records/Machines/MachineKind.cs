namespace TagPage.Records.Machines;

/// <summary>How a stringing machine pulls: a weight on a lever, a spring that locks out, a motor that goes on pulling.</summary>
public enum MachineKind { DropWeight, Crank, ElectronicPull }
