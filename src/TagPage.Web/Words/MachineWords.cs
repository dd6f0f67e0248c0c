using System.Globalization;
using TagPage.Records.Machines;

namespace TagPage.Web.Words;

/// <summary>What the shop reads of its machines.</summary>
public static class MachineWords
{
    /// <summary>Like "+1.5 %".</summary>
    public static string Deviation(CheckRow check) => Math.Round(check.Deviation, 1).ToString("+0.0;−0.0;0.0", CultureInfo.InvariantCulture) + " %";
}
