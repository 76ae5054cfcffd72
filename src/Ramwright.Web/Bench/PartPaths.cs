using Ramwright.Ladders;

namespace Ramwright.Web.Bench;

/// <summary>Where in the file a part of the press is described.</summary>
internal static class PartPaths
{
    /// <summary>Whether a rung is about a part of the drawing.</summary>
    public static bool Concerns(Rung rung, string part) =>
        rung.IsOf(part)
        || (part == "cylinder" && rung.Group == RungGroup.Cylinder)
        || (part.EndsWith(" joint", StringComparison.Ordinal) && rung.Part.EndsWith(part, StringComparison.Ordinal));

    /// <summary>The nearest path for a part as drawings and rungs name it: <c>upper arm</c> is <c>frame.upper-arm</c>.</summary>
    /// <param name="part">The part.</param>
    /// <param name="isOpenFront">Whether the frame is a column with arms.</param>
    public static string Of(string part, bool isOpenFront)
    {
        bool Says(params ReadOnlySpan<string> words)
        {
            foreach (string word in words)
            {
                if (part.Contains(word, StringComparison.OrdinalIgnoreCase))
                    return true;
            }

            return false;
        }

        if (Says("joint", "weld", "bolt", "pin") && !Says("mount", "flange"))
            return isOpenFront ? "frame.arm-joint" : Says("bed") ? "frame.bed-joint" : "frame.crown-joint";
        if (Says("die") && !Says("holder"))
            return "frame.die-width";
        if (Says("mount"))
            return "cylinder.mount";
        if (Says("relief", "pump", "motor", "stall"))
            return "pump";
        if (Says("hose", "line", "fitting"))
            return "lines";
        if (Says("barrel", "rod", "cylinder", "gland", "piston", "ram") && !Says("tie"))
            return "cylinder";
        if (Says("tie rod"))
            return "frame.rod";
        string first = part.Replace(' ', '-');
        foreach (string member in (ReadOnlySpan<string>)["crown", "bed", "upright", "column", "upper-arm", "lower-arm"])
        {
            if (first.StartsWith(member, StringComparison.OrdinalIgnoreCase))
                return "frame." + member;
        }

        return "frame";
    }
}
