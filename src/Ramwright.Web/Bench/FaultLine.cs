using Ramwright.Files;

namespace Ramwright.Web.Bench;

/// <summary>A fault in the words of the command line, on one line.</summary>
internal static class FaultLine
{
    public static string Found(PlacedFault fault) => fault.Found + (fault.Wanted.Length > 0 || fault.Nearest is not null ? ";" : "");

    public static string Wanted(PlacedFault fault)
    {
        string wanted = fault.Nearest is null ? fault.Wanted : $"{fault.Wanted}; nearest: {fault.Nearest}";
        return wanted.Length > 0 ? "wanted: " + wanted : "";
    }
}
